using CsCheck;
using LeverDraw.Drafting.Lettering;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Tests.Drafting.Lettering;

public class StrokeLetteringProperties
{
    private static readonly Gen<string> AnyText = Gen.String;
    private static readonly Gen<string> Figures = Gen.String[Gen.Char["0123456789HEDN"], 1, 12];

    [Fact]
    public void WidthOf_Joined_IsSumWithOneGap() =>
        Gen.Select(Figures, Figures, Gen.Double[1.8, 20]).Sample((one, two, height) =>
            Math.Abs(StrokeLettering.WidthOf(one + two, height)
                - StrokeLettering.WidthOf(one, height) - (0.2 * height) - StrokeLettering.WidthOf(two, height)) < 1e-9 * height);

    [Fact]
    public void WidthOf_AnyText_IsTheComposedWidthAndScalesWithHeight() =>
        Gen.Select(AnyText, Gen.Double[1.8, 20]).Sample((text, height) =>
        {
            PlotText plot = StrokeLettering.Compose(text, default, height);
            double width = StrokeLettering.WidthOf(text, height);
            return plot.Width == width && Math.Abs(width - (height * StrokeLettering.WidthOf(text, 1))) < 1e-9 * (1 + width);
        });

    [Fact]
    public void Compose_Turned_KeepsGlyphsAndTurnsTheCorners() =>
        Gen.Select(Figures, Gen.Double[-3, 3]).Sample((text, angle) =>
        {
            Point2D anchor = new(12, 34);
            PlotText straight = StrokeLettering.Compose(text, anchor, 3.5);
            PlotText turned = StrokeLettering.Compose(text, anchor, 3.5, angle);
            (double sin, double cos) = Math.SinCos(angle);
            return straight.Glyphs.SequenceEqual(turned.Glyphs)
                && InkBox.Corners(straight).Zip(InkBox.Corners(turned)).All(pair =>
                {
                    Vector2D v = pair.First - anchor;
                    Point2D expected = anchor + new Vector2D((v.X * cos) - (v.Y * sin), (v.X * sin) + (v.Y * cos));
                    return expected.DistanceTo(pair.Second) < 1e-9;
                });
        });
}
