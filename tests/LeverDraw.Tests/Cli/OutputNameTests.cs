using LeverDraw.Cli.Drawing;
using LeverDraw.Drafting.Plotting;

namespace LeverDraw.Tests.Cli;

public sealed class OutputNameTests
{
    [Theory]
    [InlineData("profiles/levers/middle.toml", "svg", SheetUnit.Millimetre, false, "middle.finished.svg")]
    [InlineData("MIDDLE.TOML", "pdf", SheetUnit.Inch, false, "MIDDLE.finished.pdf")]
    [InlineData("middle.toml", "dxf", SheetUnit.Millimetre, false, "middle.finished.mm.dxf")]
    [InlineData("middle.toml", "dxf", SheetUnit.Inch, false, "middle.finished.in.dxf")]
    [InlineData("middle.toml", "dxf", SheetUnit.Inch, true, "middle.finished.outline.in.dxf")]
    [InlineData("middle.toml", "svg", SheetUnit.Inch, true, "middle.finished.svg")]
    [InlineData("v1.2.toml", "png", SheetUnit.Millimetre, false, "v1.2.finished.png")]
    [InlineData("no-extension", "png", SheetUnit.Millimetre, false, "no-extension.finished.png")]
    [InlineData(".toml", "png", SheetUnit.Millimetre, false, ".toml.finished.png")]
    public void Of_ProfileAndSheet_SaysBothAndInDxfTheUnit(string profile, string extension, SheetUnit unit, bool outlines, string expected) =>
        Assert.Equal(expected, OutputName.Of(profile, "finished", extension, unit, outlines));
}
