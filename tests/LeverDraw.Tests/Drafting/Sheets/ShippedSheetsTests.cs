using LeverDraw.Diagnostics;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Drafting.TitleBlocks;
using LeverDraw.Geometry;
using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Drafting.Sheets;

/// <summary>Every shipped profile on every paper people have, in every choice of units and both projections: it draws, and one can read it.</summary>
public class ShippedSheetsTests
{
    private static readonly string[] Papers = ["A4", "A3", "A2", "letter", "tabloid"];

    public static TheoryData<string, string> ProfilesAndPapers()
    {
        var data = new TheoryData<string, string>();
        foreach (string profile in SheetMaker.Profiles)
        {
            foreach (string paper in Papers)
                data.Add(profile, paper);
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(ProfilesAndPapers))]
    public void Compose_AnyUnitsAndProjection_DrawsALegibleSheet(string profile, string paper)
    {
        Box2D frame = SheetMaker.Frame(paper);
        var faults = new List<string>();
        foreach (ShownUnits units in Enum.GetValues<ShownUnits>())
        {
            foreach (ProjectionMethod projection in Enum.GetValues<ProjectionMethod>())
            {
                Checked<PlotSheet> drawn = SheetMaker.TryDraw(profile, SheetMaker.Options(paper, units, projection));
                string sheet = $"{profile} {paper} {units} {projection}: ";
                if (drawn.Value is not { } plot)
                    faults.AddRange(drawn.Diagnostics.Select(d => sheet + d.Message));
                else
                    faults.AddRange(Legibility.Faults(plot, frame).Concat(PartsApart.Faults(plot, frame)).Select(f => sheet + f));
            }
        }

        Assert.True(faults.Count == 0, string.Join("\n", faults));
    }
}
