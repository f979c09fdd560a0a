using LeverDraw.Drafting.Plotting;

namespace LeverDraw.Tests.Drafting.Plotting;

// Line group 0.5 of ISO 128-2: wide 0.5, narrow 0.25, lettering and symbols 0.35 (reference 10e, grouping from memory); frame 0.7 (10b, from memory). Dashes in widths as 10f: 02 is 12 3, 04 is 24 3 0.5 3, 05 is 24 3 0.5 3 0.5 3.
public class PensTests
{
    [Theory]
    [InlineData(LineRole.Outline, 0.5, "")]
    [InlineData(LineRole.Edge, 0.5, "")]
    [InlineData(LineRole.Section, 0.5, "")]
    [InlineData(LineRole.CuttingPlane, 0.5, "")]
    [InlineData(LineRole.OverlayA, 0.5, "")]
    [InlineData(LineRole.RaisedMark, 0.25, "")]
    [InlineData(LineRole.Hidden, 0.25, "3 0.75")]
    [InlineData(LineRole.Centre, 0.25, "6 0.75 0.125 0.75")]
    [InlineData(LineRole.Phantom, 0.25, "6 0.75 0.125 0.75 0.125 0.75")]
    [InlineData(LineRole.Parting, 0.25, "6 0.75 0.125 0.75")]
    [InlineData(LineRole.OverlayB, 0.25, "6 0.75 0.125 0.75 0.125 0.75")]
    [InlineData(LineRole.Hatch, 0.25, "")]
    [InlineData(LineRole.Dimension, 0.25, "")]
    [InlineData(LineRole.Frame, 0.7, "")]
    [InlineData(LineRole.Symbol, 0.35, "")]
    [InlineData(LineRole.Table, 0.35, "")]
    [InlineData(LineRole.TitleBlock, 0.35, "")]
    [InlineData(LineRole.Allowance, 0.35, "")]
    public void Of_Role_IsItsLineKind(LineRole role, double width, string dashes)
    {
        Pen pen = Pens.Of(role);
        Assert.Equal(width, pen.Width);
        Assert.Equal(dashes, string.Join(' ', pen.Dashes.Select(d => d.ToString(System.Globalization.CultureInfo.InvariantCulture))));
    }

    // ISO 3098 type B: a tenth of the height.
    [Theory]
    [InlineData(1.8, 0.18)]
    [InlineData(2.5, 0.25)]
    [InlineData(3.5, 0.35)]
    [InlineData(5, 0.5)]
    public void LetteringWidth_Height_IsATenth(double height, double width) => Assert.Equal(width, Pens.LetteringWidth(height), 12);
}
