using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Drafting.TitleBlocks;
using LeverDraw.Geometry;
using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Drafting.Sheets;

/// <summary>What paper, units and projection may change, and what not.</summary>
public class SheetUnitsTests
{
    public static TheoryData<string> Profiles => [.. SheetMaker.Profiles, .. SheetMaker.Foundry];

    [Theory]
    [MemberData(nameof(Profiles))]
    public void Paper_LargerSheet_LeavesEveryDimensionTextAlone(string profile)
    {
        PlotSheet small = SheetMaker.Draw(profile, SheetMaker.Options("A4"));
        PlotSheet large = SheetMaker.Draw(profile, SheetMaker.Options("A2"));
        Assert.True(large.Width > small.Width && large.MainScale >= small.MainScale);
        // A size may stand in another view where paper is small, and a casting's tolerances in the table alone.
        Assert.Equal(small.Dimensions.Select(d => (d.Name, Said(d), d.Value)).Order(), large.Dimensions.Select(d => (d.Name, Said(d), d.Value)).Order());

        string Said(PlotDimension d) => profile.EndsWith(":casting", StringComparison.Ordinal) ? d.Text.Split(" ±")[0] : d.Text;
    }

    [Theory]
    [MemberData(nameof(Profiles))]
    public void Units_AnyChoice_CarryTheSameValues(string profile)
    {
        (string, string, PlotDimensionKind, double)[][] sheets =
            [.. Enum.GetValues<ShownUnits>().Select(u => SheetMaker.Draw(profile, SheetMaker.Options("A3", u)).Dimensions.Select(d => (d.Id, d.Name, d.Kind, d.Value)).Order().ToArray())];
        Assert.All(sheets, s => Assert.Equal(sheets[0], s));
    }

    [Theory]
    [InlineData(ShownUnits.Millimetres, SheetUnit.Millimetre)]
    [InlineData(ShownUnits.Inches, SheetUnit.Inch)]
    [InlineData(ShownUnits.MillimetresAndInches, SheetUnit.Millimetre)]
    [InlineData(ShownUnits.InchesAndMillimetres, SheetUnit.Inch)]
    public void Units_FirstOne_IsTheSheets(ShownUnits units, SheetUnit expected) =>
        Assert.Equal(expected, SheetMaker.Draw("pins/early", SheetMaker.Options("A4", units)).Unit);

    [Theory]
    [MemberData(nameof(Profiles))]
    public void Projection_Other_SaysTheSameAndSwapsTheSideViews(string profile)
    {
        PlotSheet third = SheetMaker.Draw(profile, SheetMaker.Options("A3"));
        PlotSheet first = SheetMaker.Draw(profile, SheetMaker.Options("A3", projection: ProjectionMethod.FirstAngle));
        Assert.Equal(third.Dimensions.Select(d => (d.Id, d.Text)).Order(), first.Dimensions.Select(d => (d.Id, d.Text)).Order());
        // Third angle: what is seen from the right stands at the right. First angle: at the left.
        (string front, string right) = profile.StartsWith("levers/", StringComparison.Ordinal) ? ("fork", "side") : ("long", "right-end");
        Assert.True(X(third, right) > X(third, front));
        Assert.True(X(first, right) < X(first, front));
    }

    [Theory]
    [MemberData(nameof(Profiles))]
    public void ProjectedViews_OnAnySheet_StandOnOneLevel(string profile)
    {
        PlotSheet sheet = SheetMaker.Draw(profile, SheetMaker.Options("A3"));
        double[] levels = [.. sheet.Views.Where(v => v.Id is "fork" or "side" or "long" or "right-end").Select(v => v.ToPaper.Translation.Y)];
        Assert.True(levels.Length >= 2);
        Assert.All(levels, y => Assert.Equal(levels[0], y, 1e-9));
    }

    private static double X(PlotSheet sheet, string view) =>
        sheet.Items.Where(i => i.View == view && i.Owner is null && i.Role is LineRole.Outline or LineRole.Edge)
            .Where(i => i.View == view)
            .Aggregate(Box2D.Empty, (box, item) => box.Union(Legibility.BoxOf(item))).Centre.X;
}
