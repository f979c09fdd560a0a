using System.Globalization;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Writers;

namespace LeverDraw.Tests.Writers;

public class DeterminismTests
{
    public static TheoryData<string> Formats => ["svg", "dxf", "pdf", "png"];

    [Theory]
    [MemberData(nameof(Formats))]
    public void Write_TwiceAndUnderOtherCultures_GivesTheSameBytes(string format)
    {
        IDrawingWriter writer = DrawingWriters.Find(format)!;
        PlotSheet sheet = SampleSheets.Everything();
        byte[] first = Bytes.Of(writer, sheet);
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            foreach (string culture in new[] { "de-DE", "fr-FR", "ar-SA", "" })
            {
                CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
                Assert.Equal(first, Bytes.Of(writer, SampleSheets.Everything()));
            }
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }

        // The culture switch is real: otherwise this test could not fail.
        Assert.Equal(',', 1.5.ToString(CultureInfo.GetCultureInfo("de-DE"))[1]);
    }

    [Fact]
    public void All_Formats_AreTheFourNamed() =>
        Assert.Equal(["svg", "dxf", "pdf", "png"], DrawingWriters.All.Select(w => w.Format));

    [Fact]
    public void Find_UnknownFormat_IsNull() => Assert.Null(DrawingWriters.Find("bmp"));
}
