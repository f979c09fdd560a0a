using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;
using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Parts.AdjustingLever.Sheets;

/// <summary>Where sizes of the shipped levers stand on the finished sheet, A4 and A3 in millimetres.</summary>
public class FinishedLeverPlacesTests
{
    public static IEnumerable<object[]> Sheets =>
        from lever in SheetMaker.Levers
        from paper in (string[])["A3", "A4"]
        select new object[] { lever, paper };

    /// <summary>It lay on the tongue, which is wider at its foot than at the nose.</summary>
    [Theory]
    [MemberData(nameof(Sheets))]
    public void TongueLength_StandsClearOfTheTongue(string name, string paper)
    {
        PlotSheet sheet = SheetMaker.Draw(name, SheetMaker.Options(paper));
        PlotDimension size = sheet.Dimensions.Single(d => d.Name == "tongue.length");
        PlotView side = sheet.Views.Single(v => v.Id == "side");
        // The measured points and a point of the dimension line; the line runs as long as the size beside them.
        Vector2D along = (size.Points[1] - size.Points[0]).Unit(), aside = along.Left * along.Left.Dot(size.Points[2] - size.Points[0]);
        var line = new LineEdge(size.Points[0] + aside, size.Points[1] + aside);
        Contour outline = side.Outlines[0].Contour.Transformed(side.ToPaper);
        double nearest = outline.Edges.SelectMany(Along).Min(p => Along(line).Min(p.DistanceTo));
        Assert.InRange(nearest, 1.5, 40);
    }

    private static IEnumerable<Point2D> Along(Edge edge) => Enumerable.Range(0, 41).Select(i => edge.PointAt(i / 40.0));

    /// <summary>An arrow at the crest of the raised mark would give the thickness over it.</summary>
    [Theory]
    [MemberData(nameof(Sheets))]
    public void ArmThickness_StandsBesideTheRaisedMark(string name, string paper)
    {
        Lever lever = SheetMaker.Lever(name);
        if (MarkProud.OnArmBetween(lever) is not { } mark)
            return;
        PlotSheet sheet = SheetMaker.Draw(name, SheetMaker.Options(paper));
        Transform2D toPaper = sheet.Views.Single(v => v.Id == "side").ToPaper;
        double low = toPaper.Apply(new Point2D(0, mark.From)).Y, high = toPaper.Apply(new Point2D(0, mark.To)).Y;
        PlotDimension size = sheet.Dimensions.Single(d => d.Name == "arms.thickness");
        Assert.All(size.Points, p => Assert.True(p.Y < low || p.Y > high, name));
    }

    /// <summary>At 1:1 bosses of half a millimetre and a hole's taper are lost in the lines' width.</summary>
    [Theory]
    [MemberData(nameof(Sheets))]
    public void Section_StandsAtTwiceFullSizeOrLarger(string name, string paper) =>
        Assert.InRange(SheetMaker.Draw(name, SheetMaker.Options(paper)).Views.Single(v => v.Id == "section").ToPaper.Scale, 2, 20);
}
