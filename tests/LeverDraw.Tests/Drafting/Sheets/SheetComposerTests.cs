using LeverDraw.Diagnostics;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Standards;
using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Drafting.Sheets;

public class SheetComposerTests
{
    [Fact]
    public void Compose_ScaleFarTooLarge_IsToldWithPaperScaleAndReason()
    {
        SheetOptions options = SheetMaker.Options("A4") with { Scale = new DrawingScale(50, 1) };
        Checked<PlotSheet> sheet = SheetMaker.TryDraw("levers/early", options);
        Assert.False(sheet.Ok);
        Diagnostic told = Assert.Single(sheet.Diagnostics);
        Assert.Equal("LD501", told.Code);
        Assert.Contains("A4 at 50:1", told.Message, StringComparison.Ordinal);
        Assert.EndsWith("need more room.", told.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Compose_EntryTooLongForTheTitleBlock_IsToldByItsCaption()
    {
        SheetOptions options = SheetMaker.Options("A4");
        SheetContent content = SheetMaker.Content("pins/early", options);
        content = content with { Title = content.Title with { DrawingNumber = new string('W', 60) } };
        Diagnostic told = Assert.Single(SheetComposer.Compose(content, options).Diagnostics);
        Assert.Equal("LD501", told.Code);
        Assert.Contains("DRAWING NUMBER", told.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Compose_ScaleAsked_IsTheSheetsScaleAndLettered()
    {
        PlotSheet sheet = SheetMaker.Draw("levers/late", SheetMaker.Options("A3") with { Scale = new DrawingScale(1, 1) });
        Assert.Equal(1, sheet.MainScale);
        Assert.Contains(sheet.Items.OfType<PlotText>(), t => t.Text == "1:1");
        Assert.All(sheet.Views.Where(v => v.IsMain), v => Assert.Equal(1, v.ToPaper.Scale));
    }

    [Fact]
    public void Compose_NoPaperAsked_TakesOneWhereItIsAtLeastTwiceFullSize()
    {
        foreach (string profile in SheetMaker.Profiles)
            Assert.True(SheetMaker.Draw(profile, new SheetOptions()).MainScale >= 2, profile);
    }

    [Fact]
    public void Compose_NoPaperAsked_TakesOneThatIsEasyToRead()
    {
        foreach (string profile in SheetMaker.Profiles)
        {
            PlotSheet sheet = SheetMaker.Draw(profile, new SheetOptions());
            string begins = SheetMaker.Content(profile, new SheetOptions()).Notes[0][..12];
            Assert.InRange(sheet.Items.OfType<PlotText>().First(t => t.Text.StartsWith(begins, StringComparison.Ordinal)).Height, 2.5, 3.5);
            Assert.All(sheet.Views.Where(v => v.Id is "nose" or "pad"), v => Assert.True(v.ToPaper.Scale > sheet.MainScale, profile + ", " + v.Id));
        }
    }

    [Fact]
    public void Compose_LargeSheet_IsAboveTwiceFullSizeOnlyInItsOwnLettering()
    {
        PlotSheet[] larger = [.. SheetMaker.Profiles.SelectMany(p => new[] { "A3", "A2", "tabloid" }, (p, paper) => SheetMaker.Draw(p, SheetMaker.Options(paper))).Where(s => s.MainScale > 2)];
        Assert.NotEmpty(larger);
        Assert.All(larger, s => Assert.InRange(s.LetteringHeight, 3.5, 5));
    }

    [Fact]
    public void Compose_Twice_IsTheSameInk()
    {
        PlotSheet a = SheetMaker.DrawAnew("levers/rare", SheetMaker.Options("A4", ShownUnits.InchesAndMillimetres));
        PlotSheet b = SheetMaker.DrawAnew("levers/rare", SheetMaker.Options("A4", ShownUnits.InchesAndMillimetres));
        Assert.Equal(a.Items.Select(Legibility.BoxOf), b.Items.Select(Legibility.BoxOf));
        Assert.Equal(a.Dimensions.Select(d => (d.Id, d.TextMiddle)), b.Dimensions.Select(d => (d.Id, d.TextMiddle)));
    }

    [Fact]
    public void Views_NotAtTheMainScale_SayTheirOwn()
    {
        foreach (string profile in SheetMaker.Levers)
        {
            PlotSheet sheet = SheetMaker.Draw(profile, SheetMaker.Options("A3"));
            foreach (PlotView view in sheet.Views.Where(v => !v.IsMain))
            {
                // The tongue's view stands turned: between its letter and its scale are the sign and the angle.
                string caption = view.Title + "  (" + view.ToPaper.Scale.ToString("0.##", System.Globalization.CultureInfo.InvariantCulture) + ":1)";
                Assert.Contains(sheet.Items.OfType<PlotText>(), t => t.View == view.Id && t.Text == (view.Id == "tongue" ? caption.Replace("G", "40°", StringComparison.Ordinal) : caption));
            }
        }
    }
}
