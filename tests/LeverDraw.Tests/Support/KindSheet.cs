using System.Collections.Immutable;
using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Dimensions;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Drafting.TitleBlocks;
using LeverDraw.Drafting.Views;
using LeverDraw.Geometry;
using LeverDraw.Profiles;
using LeverDraw.Units;

namespace LeverDraw.Tests.Support;

/// <summary>An invented stepped plate that carries one dimension of each kind.</summary>
internal static class KindSheet
{
    /// <summary>Steps of the upper edge, from the left end, mm: two of them too narrow for arrows.</summary>
    public static readonly double[] Steps = [12, 13, 14.5, 16, 30, 44];

    public static PlotSheet Draw(string paper, ShownUnits units = ShownUnits.Millimetres, Func<DimensionText, IEnumerable<Annotation>>? annotations = null)
    {
        SheetOptions options = SheetMaker.Options(paper, units);
        var text = new DimensionText(units);
        var view = new ViewSource("plate", null)
        {
            Outlines = [new PlotOutline("plate", Plate())],
            Annotations = [.. (annotations ?? All)(text)],
        };
        SheetContent content = new("kinds", PartState.Finished, view, [], [], [], ["ONE OF EACH."], new TitleBlock("Thessaby & Crake (invented)", "PLATE", "", "TC-X-02", "A", "", "", "", "TEST", "Steel", "", "ISO 2768-m", "mm", "1 of 1", false));
        var drawn = SheetComposer.Compose(content, options);
        Assert.True(drawn.Ok, string.Join("; ", drawn.Diagnostics.Select(d => d.Message)));
        return drawn.Value!;
    }

    public static DimensionRun Run(RunForm form, DimensionText text, DimensionSides sides, double direction = 0)
    {
        double before = 0;
        var members = ImmutableArray.CreateBuilder<RunMember>();
        foreach (double step in Steps)
        {
            double value = form == RunForm.Chain ? step - before : step;
            members.Add(new RunMember(FormattableString.Invariant($"{form}.{members.Count}"), value, text.Size(Length.FromMillimetres(value)), new Point2D(step, 20 - (members.Count % 2))));
            before = step;
        }

        return new DimensionRun(form, new Point2D(0, 20), direction, members.ToImmutable()) { Sides = sides };
    }

    private static IEnumerable<Annotation> All(DimensionText text)
    {
        yield return Run(RunForm.Chain, text, DimensionSides.Left);
        yield return Run(RunForm.Baseline, text, DimensionSides.Right);
        yield return LinearDimension.Aligned("aligned", text.Size(new SizeValue(Length.FromMillimetres(25), new DeviationTolerance(Length.FromMillimetres(0.1), Length.FromMillimetres(-0.05)))), new Point2D(0, 0), new Point2D(20, 15));
        yield return new LinearDimension("basic", 20, text.Basic(Length.FromMillimetres(20)), new Point2D(0, 0), new Point2D(0, 20), Math.PI / 2) { Sides = DimensionSides.Left };
        yield return new ArcLengthDimension("arc", 10 * Math.PI / 2, text.ArcLength(new SizeValue(Length.FromMillimetres(10 * Math.PI / 2))), Corner);
    }

    /// <summary>A quarter of radius 10 at the lower right.</summary>
    private static ArcEdge Corner => new(new Point2D(34, 10), 10, -Math.PI / 2, Math.PI / 2);

    private static Contour Plate()
    {
        var edges = new List<Edge> { new LineEdge(new(0, 0), new(34, 0)), Corner };
        Point2D at = new(44, 10);
        void To(double x, double y)
        {
            var next = new Point2D(x, y);
            if ((next - at).Length > 1e-9)
                edges.Add(new LineEdge(at, next));
            at = next;
        }

        To(44, 20 - ((Steps.Length - 1) % 2));
        for (int i = Steps.Length - 1; i >= 0; i--)
        {
            double height = 20 - (i % 2);
            To(Steps[i], height);
            To(i == 0 ? 0 : Steps[i - 1], height);
        }

        To(0, 0);
        return Contour.Of([.. edges]);
    }
}
