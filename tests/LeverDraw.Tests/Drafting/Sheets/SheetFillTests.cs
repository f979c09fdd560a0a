using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Drafting.TitleBlocks;
using LeverDraw.Geometry;
using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Drafting.Sheets;

/// <summary>Bars on the looks of every shipped sheet, measured on the finished ink (docs/adr/0006-layout.md).</summary>
public class SheetFillTests
{
    /// <summary>Stated for the worst sheet: a lever in both units on A4 or letter, where labels are longest. Most sheets have no dimension lines that cross and no more than two leaders that cross anything.</summary>
    private const int DimensionLineCrossings = 2, LeaderCrossings = 15;

    /// <summary>Of one leader with the part's outlines, its end left out: once at most, as into a section to the hole's wall.</summary>
    private const int OutlineCrossings = 1;

    private const double EmptiestShare = 0.25, FullestShare = 0.75;

    public static TheoryData<string> Papers => ["A4", "A3", "A2", "letter", "tabloid"];

    [Theory]
    [MemberData(nameof(Papers))]
    public void Compose_ShippedProfile_FillsAQuarterToThreeQuartersOfTheField(string paper) =>
        OnEvery(paper, (sheet, _) => SheetFill.Of(sheet, SheetMaker.Frame(paper)).Share is var share && (share < EmptiestShare || share > FullestShare) ? string.Create(System.Globalization.CultureInfo.InvariantCulture, $"fill {share:0.00}") : null);

    [Theory]
    [MemberData(nameof(Papers))]
    public void Compose_ShippedProfile_CrossesDimensionLinesAndLeadersLittle(string paper) =>
        OnEvery(paper, (sheet, _) => LineCrossings.Count(sheet) is var count && (count.DimensionLines > DimensionLineCrossings || count.Leaders > LeaderCrossings) ? count.ToString() : null);

    /// <summary>Point 17 of docs/drawing-check.md, on the two sizes that are looked at.</summary>
    [Theory]
    [InlineData("A3", ShownUnits.Millimetres)]
    [InlineData("A3", ShownUnits.Inches)]
    [InlineData("A3", ShownUnits.MillimetresAndInches)]
    [InlineData("A4", ShownUnits.Millimetres)]
    [InlineData("A4", ShownUnits.Inches)]
    [InlineData("A4", ShownUnits.MillimetresAndInches)]
    [InlineData("letter", ShownUnits.Inches)]
    [InlineData("tabloid", ShownUnits.Inches)]
    public void Compose_ShippedProfile_LeadersRunAlongNoLineAndCrossThePartLittle(string paper, ShownUnits units)
    {
        string[] faults = [.. SheetMaker.Profiles.SelectMany(p => LeaderLines.Faults(SheetMaker.Draw(p, SheetMaker.Options(paper, units)), OutlineCrossings).Select(f => $"{p} {paper} {units}: {f}"))];
        Assert.True(faults.Length == 0, string.Join("\n", faults));
    }

    /// <summary>A pin's leaders come from outside: none crosses its outline, wherever it is drawn.</summary>
    [Theory]
    [MemberData(nameof(Papers))]
    public void Compose_ShippedPin_LeadersComeFromOutside(string paper)
    {
        foreach (ShownUnits units in Enum.GetValues<ShownUnits>())
        {
            foreach (string pin in SheetMaker.Profiles.Where(p => p.StartsWith("pins/", StringComparison.Ordinal)))
            {
                PlotSheet sheet = SheetMaker.Draw(pin, SheetMaker.Options(paper, units));
                Box2D part = sheet.Items.OfType<PlotLoop>().First(l => l.View == "long" && l.Owner is null).Contour.Box;
                foreach (PlotDimension said in sheet.Dimensions.Where(d => d.Name is "pin.crown_radius" or "pin.chamfer" or "pin.taper"))
                    Assert.False(part.Contains(said.TextMiddle), $"{pin} {paper} {units}: {said.Name} stands inside the pin");
            }
        }
    }

    [Fact]
    public void Share_BlankSheet_IsNothing()
    {
        PlotSheet sheet = SheetMaker.Draw("pins/late", SheetMaker.Options("A4"));
        Assert.Equal(0, SheetFill.Of(sheet with { Items = [] }, SheetMaker.Frame("A4")).Share);
    }

    private static void OnEvery(string paper, Func<PlotSheet, ShownUnits, string?> fault)
    {
        var faults = new List<string>();
        foreach (string profile in SheetMaker.Profiles)
        {
            foreach (ShownUnits units in (ShownUnits[])[ShownUnits.Millimetres, ShownUnits.Inches, ShownUnits.MillimetresAndInches])
            {
                foreach (ProjectionMethod projection in Enum.GetValues<ProjectionMethod>())
                {
                    if (fault(SheetMaker.Draw(profile, SheetMaker.Options(paper, units, projection)), units) is { } found)
                        faults.Add($"{profile} {paper} {units} {projection}: {found}");
                }
            }
        }

        Assert.True(faults.Count == 0, string.Join("\n", faults));
    }
}
