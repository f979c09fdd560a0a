using LeverDraw.Drafting.Completeness;

namespace LeverDraw.Tests.Drafting.Completeness;

/// <summary>Answers known by counting: a plate with a hole has five freedoms.</summary>
public sealed class DimensioningTests
{
    public static TheoryData<string> EachOfFive => [.. PlateWithHole.Five];

    [Fact]
    public void Of_FiveSizes_IsExact()
    {
        Dimensioning found = PlateWithHole.Check(PlateWithHole.Five);
        Assert.True(found.IsExact);
        Assert.Equal(5, found.Freedoms);
    }

    [Theory]
    [MemberData(nameof(EachOfFive))]
    public void Of_OneLeftOut_NamesIt(string left)
    {
        Dimensioning found = PlateWithHole.Check(PlateWithHole.Five.Remove(left));
        Assert.Equal([left], Assert.Single(found.Free).AsEnumerable());
        Assert.Empty(found.Repeated);
    }

    [Fact]
    public void Of_TwoLeftOut_NamesEachByItself() =>
        Assert.Equal(["height", "hole_x"], PlateWithHole.Check(["width", "hole_y", "hole_diameter"]).Free.Select(f => Assert.Single(f)).Order());

    [Fact]
    public void Of_ChainWithOneOpenEnd_NamesWhatMovesTogether()
    {
        // The hole is held from the right edge, the right edge from nowhere.
        Dimensioning found = PlateWithHole.Check(["height", "hole_from_right", "hole_y", "hole_diameter"]);
        Assert.Equal(["hole_x", "width"], Assert.Single(found.Free).Order());
    }

    [Fact]
    public void Of_DiagonalToo_NamesTheTriangleOnly()
    {
        Dimensioning found = PlateWithHole.Check(PlateWithHole.Five.Add("diagonal"));
        Assert.Equal(["diagonal", "height", "width"], Assert.Single(found.Repeated).Order());
        Assert.Empty(found.Free);
    }

    [Fact]
    public void Of_DiagonalInsteadOfHeight_IsExact() =>
        Assert.True(PlateWithHole.Check(["width", "diagonal", "hole_x", "hole_y", "hole_diameter"]).IsExact);

    [Fact]
    public void Of_SizeTwice_NamesItTwice() =>
        Assert.Equal(["width", "width"], Assert.Single(PlateWithHole.Check(PlateWithHole.Five.Add("width")).Repeated).AsEnumerable());

    [Fact]
    public void Of_TwoRepetitions_AreToldApart()
    {
        Dimensioning found = PlateWithHole.Check(PlateWithHole.Five.Add("diagonal").Add("wall_below"));
        Assert.Equal(["diagonal,height,width", "hole_diameter,hole_y,wall_below"], found.Repeated.Select(s => string.Join(',', s.Order())).Order());
    }

    [Fact]
    public void Of_OneShortAndOneOver_TellsBoth()
    {
        // As many sizes as freedoms: counting alone would pass it.
        Dimensioning found = PlateWithHole.Check(["width", "height", "diagonal", "hole_x", "hole_y"]);
        Assert.Equal(["hole_diameter"], Assert.Single(found.Free).AsEnumerable());
        Assert.Equal(3, Assert.Single(found.Repeated).Length);
    }

    [Fact]
    public void Of_DiagonalInBrackets_IsExact() =>
        Assert.True(PlateWithHole.Check([.. PlateWithHole.Five.Select(n => (n, SizeStanding.Full)), ("diagonal", SizeStanding.Reference)]).IsExact);

    [Fact]
    public void Of_BracketsRoundASizeThatNothingElseHolds_AreWrong()
    {
        Dimensioning found = PlateWithHole.Check([.. PlateWithHole.Five.Select(n => (n, n == "height" ? SizeStanding.Reference : SizeStanding.Full))]);
        Assert.Equal(["height"], found.WronglyBracketed.AsEnumerable());
        // The brackets are the fault: no size is missing.
        Assert.Empty(found.Free);
    }

    [Fact]
    public void Of_NoteWhereNothingElseHolds_Holds() =>
        Assert.True(PlateWithHole.Check([.. PlateWithHole.Five.Select(n => (n, n == "height" ? SizeStanding.General : SizeStanding.Full))]).IsExact);

    [Fact]
    public void Of_NoteBesideASize_IsNoRepetition() =>
        Assert.True(PlateWithHole.Check([.. PlateWithHole.Five.Select(n => (n, SizeStanding.Full)), ("height", SizeStanding.General)]).IsExact);

    [Fact]
    public void Of_AngleAndOneDistanceToTheHole_IsExact() =>
        Assert.True(PlateWithHole.Check(["width", "height", "hole_x", "hole_angle", "hole_diameter"]).IsExact);

    [Fact]
    public void Of_SizeThatShapesNothing_IsNeitherShortNorOver() =>
        Assert.True(PlateWithHole.Check(PlateWithHole.Five.Add("thread_pitch")).IsExact);

    [Fact]
    public void Of_ParameterThatShapesNothing_NeedsNoSize()
    {
        ParametricSheet sheet = PlateWithHole.Sheet([.. PlateWithHole.Five.Select(n => (n, SizeStanding.Full))], [new ShapeParameter("casting.draft", 0.03, 0.1)]);
        Assert.True(Dimensioning.Of(sheet).IsExact);
        Assert.Equal(5, Dimensioning.Of(sheet).Freedoms);
    }

    [Fact]
    public void Of_PartThatCanGrowOneWayOnly_IsJudgedOnThatSide()
    {
        ParametricSheet sheet = PlateWithHole.Sheet([.. PlateWithHole.Five.Select(n => (n, SizeStanding.Full))], [], p => p[0] > 30 ? "none" : "plate");
        Assert.True(Dimensioning.Of(sheet).IsExact);
    }

    [Fact]
    public void Of_FormThatChangesBothWays_IsNotGuessed()
    {
        ParametricSheet sheet = PlateWithHole.Sheet([.. PlateWithHole.Five.Select(n => (n, SizeStanding.Full))], [], p => p[0] > 30 ? "wide" : p[0] < 30 ? "narrow" : "just so");
        Dimensioning found = Dimensioning.Of(sheet);
        Assert.False(found.IsExact);
        Assert.Contains("'width'", found.Unclear, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_TwoParametersAllButAlike_IsNotGuessed()
    {
        // The second moves the shape as the first does, but for five parts in a million.
        static ShapeSample At(System.Collections.Immutable.ImmutableArray<double> p) => new("", [p[0] + p[1], 5e-6 * p[1]], []);
        ParametricSheet sheet = new([new("a", 1), new("b", 1)], At([1, 1]), At);
        Assert.NotNull(Dimensioning.Of(sheet).Unclear);
    }
}
