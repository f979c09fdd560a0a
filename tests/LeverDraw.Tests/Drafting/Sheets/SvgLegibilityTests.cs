using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Tests.Support;
using LeverDraw.Writers.Svg;
using NetTopologySuite.Geometries;

namespace LeverDraw.Tests.Drafting.Sheets;

/// <summary>The same question asked of the written file: no line, arc or arrowhead comes nearer to the hull of a piece of lettering than its pen.</summary>
public class SvgLegibilityTests
{
    /// <summary>Beside half the letters' pen, millimetres; the file rounds to 0.0001.</summary>
    private const double Least = 0.049;

    public static TheoryData<string> Profiles => [.. SheetMaker.Profiles, .. SheetMaker.Foundry];

    [Theory]
    [MemberData(nameof(Profiles))]
    public void Write_ShippedProfile_NoLineStrikesLettering(string profile)
    {
        var faults = new List<string>();
        faults.AddRange(FaultsOf(SheetMaker.Draw(profile, SheetMaker.Options("A4", ShownUnits.MillimetresAndInches))));
        faults.AddRange(FaultsOf(SheetMaker.Draw(profile, SheetMaker.Options("A3"))));
        Assert.True(faults.Count == 0, string.Join("\n", faults));
    }

    private static IEnumerable<string> FaultsOf(PlotSheet sheet)
    {
        using var file = new MemoryStream();
        new SvgWriter().Write(sheet, file);
        file.Position = 0;
        SvgInk ink = SvgInk.Read(file);
        Assert.Equal(sheet.Items.OfType<PlotText>().Count(), ink.Lettering.Count);
        var letters = ink.Lettering.Select(l => (l.Label, l.Pen, Hull: new MultiPoint([.. l.Points.Select(p => new Point(p.X, p.Y))]).ConvexHull())).ToArray();
        LineString[] lines = [.. ink.Lines.Where(l => l.Length > 1).Select(l => new LineString([.. l.Select(p => new Coordinate(p.X, p.Y))]))];
        Assert.NotEmpty(lines);
        for (int i = 0; i < letters.Length; i++)
        {
            (string label, double pen, var hull) = letters[i];
            double reach = (pen / 2) + Least;
            Envelope near = hull.EnvelopeInternal.Copy();
            near.ExpandBy(reach);
            if (lines.Any(l => near.Intersects(l.EnvelopeInternal) && hull.IsWithinDistance(l, reach)))
                yield return "a line strikes \"" + label + "\"";
            for (int j = 0; j < i; j++)
            {
                if (near.Intersects(letters[j].Hull.EnvelopeInternal) && hull.Intersects(letters[j].Hull))
                    yield return "\"" + label + "\" meets \"" + letters[j].Label + "\"";
            }
        }
    }
}
