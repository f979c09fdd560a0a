using System.Collections.Immutable;
using LeverDraw.Diagnostics;
using LeverDraw.Drafting.Completeness;
using LeverDraw.Parts;
using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Parts;

/// <summary>The sheets of the shipped profiles fix their parts exactly once; and the check is sharp: each size left out, or freed of its brackets, is told by name.</summary>
public sealed class DimensionedExactlyTests
{
    public static TheoryData<string> Profiles => [.. SheetMaker.Profiles];

    [Theory]
    [MemberData(nameof(Profiles))]
    public void Sheet_OfAShippedProfile_FixesItsPartExactlyOnce(string name) =>
        Assert.Empty(DimensioningFindings.Of(Built(name)).Select(d => d.Message));

    [Theory]
    [MemberData(nameof(Profiles))]
    public void Sheet_WithoutAnyOneFullSize_LeavesTheShapeFree(string name)
    {
        // A fillet that loses its own size falls under the general note.
        ParametricSheet sheet = Sheet(name);
        string[] silent = [.. Places(sheet, SizeStanding.Full).Where(i => Dimensioning.Of(With(sheet, s => s.RemoveAt(i))).IsExact).Select(i => Sizes(sheet)[i].Name)];
        Assert.DoesNotContain(silent, n => !n.StartsWith("blends.fillet", StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Profiles))]
    public void Sheet_WithAnyFullSizeInBrackets_IsToldThatTheyAreWrong(string name)
    {
        ParametricSheet sheet = Sheet(name);
        foreach (int i in Places(sheet, SizeStanding.Full))
        {
            SheetSize size = Sizes(sheet)[i];
            Dimensioning found = Dimensioning.Of(With(sheet, s => s.SetItem(i, s[i] with { Standing = SizeStanding.Reference })));
            Assert.True(found.WronglyBracketed.Contains(size.Name) || size.Name.StartsWith("blends.fillet", StringComparison.Ordinal), size.Name);
        }
    }

    [Theory]
    [MemberData(nameof(Profiles))]
    public void Sheet_WithAnyReferenceFreedOfItsBrackets_IsToldThatItRepeats(string name)
    {
        ParametricSheet sheet = Sheet(name);
        foreach (int i in Places(sheet, SizeStanding.Reference))
        {
            SheetSize size = Sizes(sheet)[i];
            Dimensioning found = Dimensioning.Of(With(sheet, s => s.SetItem(i, s[i] with { Standing = SizeStanding.Full })));
            Assert.Contains(found.Repeated, set => set.Contains(size.Name));
        }
    }

    [Fact]
    public void Sheet_WithoutTheLengthOfTheArms_SaysSo()
    {
        ParametricSheet sheet = Sheet("levers/middle");
        // The reach of the arms, in brackets, would be told as wrongly bracketed.
        Diagnostic told = Assert.Single(DimensioningFindings.Of("finished", Dimensioning.Of(With(sheet, s => s.RemoveAll(x => x.Name is "arms.length" or "arms.end_from_axis"))), SourcePosition.WholeFile("x.toml")));
        Assert.Equal("The finished sheet leaves the shape free: no size on it holds 'arms.length'.", told.Message);
        Assert.Equal(Severity.Error, told.Severity);
    }

    [Fact]
    public void Sheet_WithTheWidthOverBothArmsInFull_NamesTheChain()
    {
        ParametricSheet sheet = Sheet("levers/middle");
        int at = Sizes(sheet).Select(s => s.Name).ToList().IndexOf("fork.outside");
        Dimensioning found = Dimensioning.Of(With(sheet, s => s.SetItem(at, s[at] with { Standing = SizeStanding.Full })));
        Assert.Equal(["arms.width", "fork.gap", "fork.outside"], Assert.Single(found.Repeated).Order());
    }

    [Fact]
    public void Sheet_OfALeverWithRoundsThatTakeUpTheirFaces_FixesItExactlyOnce()
    {
        ValueBag values = DemoLevers.Middle().With(LeverFields.TongueForm, LeverFields.Parallel).With(LeverFields.TongueThickness, 4).With(LeverFields.NoseRadius, 2)
            .With(LeverFields.ArmWidth, 5).With(LeverFields.ArmEndCorner, 2.5).With(LeverFields.ForkGap, 14).With(LeverFields.CrotchRadius, 7);
        Assert.Empty(Told(values));
    }

    [Fact]
    public void Sheet_OfALeverWithAMarkOnItsHead_FixesItExactlyOnce() =>
        Assert.Empty(Told(DemoLevers.Middle().With(LeverFields.MarkPlace, LeverFields.HeadFace).With(LeverFields.MarkText, "T").With(LeverFields.MarkLetterHeight, 1.2)));

    [Fact]
    public void Sheet_OfALeverWithSharpCornersOnly_FixesItExactlyOnce() =>
        Assert.Empty(Told(DemoLevers.Middle().Without(LeverFields.FootFillet).With(LeverFields.Fillet, 0).With(LeverFields.EdgeRound, 0).With(LeverFields.PadEndCorner, 0)));

    private static IEnumerable<string> Told(ValueBag values) =>
        DimensioningFindings.Of(PartKinds.Lever.Build(SheetMaker.Around("lever", values)).Value!).Select(d => d.Message);

    private static BuiltPart Built(string name) =>
        PartKinds.All.Single(k => k.Name == SheetMaker.Profile(name).Kind).Build(SheetMaker.Profile(name)).Value!;

    /// <summary>Samples are kept: the sheet is asked again and again at the same places.</summary>
    private static ParametricSheet Sheet(string name)
    {
        ParametricSheet sheet = Built(name).Sheets[0].Parametric!()!;
        Dictionary<string, ShapeSample?> kept = [];
        return sheet with
        {
            At = p =>
            {
                string key = string.Join(' ', p.Select(BitConverter.DoubleToInt64Bits));
                if (!kept.TryGetValue(key, out ShapeSample? sample))
                    kept[key] = sample = sheet.At(p);
                return sample;
            },
        };
    }

    private static ImmutableArray<SheetSize> Sizes(ParametricSheet sheet) => sheet.Here.Sizes;

    /// <summary>Sizes of a standing that change with the shape (a size of zero is a form in words).</summary>
    private static IEnumerable<int> Places(ParametricSheet sheet, SizeStanding standing) =>
        Enumerable.Range(0, Sizes(sheet).Length).Where(i => Sizes(sheet)[i].Standing == standing && Sizes(sheet)[i].Value != 0);

    private static ParametricSheet With(ParametricSheet sheet, Func<ImmutableArray<SheetSize>, ImmutableArray<SheetSize>> change) =>
        sheet with { Here = sheet.Here with { Sizes = change(sheet.Here.Sizes) }, At = p => sheet.At(p) is { } sample ? sample with { Sizes = change(sample.Sizes) } : null };
}
