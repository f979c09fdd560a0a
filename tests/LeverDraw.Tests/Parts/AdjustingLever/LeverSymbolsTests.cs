using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Drafting.Symbols;
using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Profiles;
using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Parts.AdjustingLever;

/// <summary>Datums, tolerances and textures on the finished lever's sheet. Values: common practice, no source; what they hang on: design of the sheets (A the hole's axis, B the head's mid-plane, C the tongue's).</summary>
public class LeverSymbolsTests
{
    public static TheoryData<string> Levers => [.. SheetMaker.Levers];

    [Theory]
    [MemberData(nameof(Levers))]
    public void Sheet_Defaults_StateEverySymbolOnItsFeature(string name)
    {
        PlotSheet sheet = SheetMaker.Draw(name, SheetMaker.Options("A3"));
        Assert.Equal(["⟂", "⌀0.05", "B", "A", "Ra 1.6"], Symbols(sheet, LeverFields.HoleDiameter));
        bool bosses = SheetMaker.Lever(name).Boss is not null;
        Assert.Equal(["B", "Ra 3.2"], Symbols(sheet, bosses ? "boss.over_both" : LeverFields.HeadWidth.Name));
        Assert.Equal(bosses, Symbols(sheet, LeverFields.HeadWidth).Length == 0);
        Assert.Equal(["⌯", "0.2", "B"], Symbols(sheet, LeverFields.ForkGap));
        Assert.Empty(Symbols(sheet, LeverFields.TongueWidth));
        Assert.Equal(["⌯", "0.1", "A", "C", "Ra 3.2"], Symbols(sheet, LeverFields.TongueThickness));
        Assert.Equal(["⌖", "0.2", "A", "C", "Ra 1.6"], Symbols(sheet, LeverFields.PadThickness));
    }

    /// <summary>Every datum a frame names is a letter that stands on the sheet, once.</summary>
    [Theory]
    [MemberData(nameof(Levers))]
    public void Sheet_DatumLetters_StandOnceEach(string name)
    {
        PlotSheet sheet = SheetMaker.Draw(name, SheetMaker.Options("A3"));
        // The tongue's view has the arrowhead of its turn.
        Assert.Equal(3, sheet.Items.OfType<PlotFill>().Count(f => f.Role == LineRole.Symbol && f.View != "tongue"));
    }

    /// <summary>Signs and notes agree: every face that the casting has stock on (LeverStock) carries the bar, the general sign is the circle, and the note names the only exception.</summary>
    [Theory]
    [MemberData(nameof(Levers))]
    public void Sheet_MachinedFaces_CarrySignsAndTheRestIsForbidden(string name)
    {
        SheetContent content = SheetMaker.Content(name, SheetMaker.Options("A3"));
        Lever lever = SheetMaker.Lever(name);
        string[] signed = [.. content.Views.SelectMany(v => v.Annotations).Where(a => a.Label.Texture?.Process == TextureProcess.Removal).Select(a => a.Name).Order(StringComparer.Ordinal)];
        string[] expected = [lever.Boss is null ? "head.width" : "boss.over_both", "hole.diameter", "pads.thickness", "tongue.thickness"];
        // A bulb's thickness is its nose's diameter.
        Assert.Equal([.. expected.Concat(lever.Forms.Tongue == LeverFields.Bulb ? [] : ["tongue.nose"]).Order(StringComparer.Ordinal)], signed);
        Assert.Equal(TextureProcess.NoRemoval, content.Signs!.Rest.Process);
        Assert.Contains("MACHINE SIGNED FACES UP TO FILLETS; FORK'S GAP IF NOT HELD AS CAST, Ra 3.2.", content.Notes);
    }

    [Fact]
    public void Sheet_ParallelTongue_SignsItsEndAndCorners()
    {
        ValueBag values = DemoLevers.Middle().With(LeverFields.TongueForm, LeverFields.Parallel);
        Annotation[] nose = [.. SheetMaker.Content(SheetMaker.Around("lever", values), SheetMaker.Options("A3")).Views.Single(v => v.Id == "nose").Annotations];
        Assert.Equal("Ra 3.2", Assert.Single(nose.OfType<SurfaceTexture>()).Sign.Text);
        Assert.Equal("Ra 3.2", nose.Single(a => a.Name == LeverFields.NoseRadius.Name).Label.Texture?.Text);
    }

    /// <summary>Without a tolerance the gap is as cast like the rest; another toleranced size is named in general.</summary>
    [Fact]
    public void Notes_CastSizes_AreMachinedOnlyIfToleranced()
    {
        Assert.Contains("MACHINE SIGNED FACES UP TO FILLETS.", SheetMaker.Content(SheetMaker.Around("lever", DemoLevers.Middle().With(LeverFields.ForkGap, 14)), SheetMaker.Options("A3")).Notes);
        ValueBag width = DemoLevers.Middle().With(LeverFields.ForkGap, 14).With(LeverFields.ArmWidth, 5.2, 0.1);
        Assert.Contains("MACHINE SIGNED FACES UP TO FILLETS; OTHER TOLERANCED SIZES IF NOT HELD AS CAST, Ra 3.2.", SheetMaker.Content(SheetMaker.Around("lever", width), SheetMaker.Options("A3")).Notes);
    }

    // 0.05, 0.1, 0.2 mm are .00197, .00394, .00787 in: never a wider zone. Edges: .00787 up, .01575 down.
    [Fact]
    public void Sheet_TwoUnits_SaysFramesAndEdgesInBoth()
    {
        SheetContent content = SheetMaker.Content("levers/middle", SheetMaker.Options("A3", ShownUnits.MillimetresAndInches));
        Assert.Contains(content.Notes, n => n.Contains("FRAMES: 0.05 [.0019], 0.1 [.0039], 0.2 [.0078].", StringComparison.Ordinal));
        Assert.Equal(new EdgeSign("−0.2 [−.008]", "−0.4 [−.015]"), content.Signs!.Edges);
        Assert.DoesNotContain(SheetMaker.Content("levers/middle", SheetMaker.Options("A3")).Notes, n => n.Contains("FRAMES", StringComparison.Ordinal));
    }

    [Fact]
    public void Sheet_Zeros_LeaveTheSignsAway()
    {
        ValueBag values = DemoLevers.Middle().With(LeverFields.HoleSquareness, 0).With(LeverFields.PadSymmetry, 0).With(LeverFields.PadPosition, 0).With(LeverFields.TonguePosition, 0)
            .With(LeverFields.HoleTexture, 0).With(LeverFields.PadTexture, 0).With(LeverFields.TongueTexture, 0).With(LeverFields.HeadTexture, 0);
        PlotSheet sheet = SheetMaker.TryDrawLever(values, SheetMaker.Options("A3")).Value!;
        Assert.DoesNotContain(sheet.Items.OfType<PlotText>().Where(t => t.View is not null), t => t.Text is "⟂" or "⌯" or "⌖" || t.Text.StartsWith("Ra", StringComparison.Ordinal));
        Assert.Equal(["A"], Symbols(sheet, LeverFields.HoleDiameter));
    }

    /// <summary>What the pads' position refers to is boxed; without the frame it would be a size nothing limits.</summary>
    [Theory]
    [InlineData(0.2, true)]
    [InlineData(0, false)]
    public void Sheet_PadPosition_BoxesSweepAndPadShift(double zone, bool boxed)
    {
        ValueBag values = DemoLevers.Rare().With(LeverFields.PadPosition, zone);
        Label[] labels = [.. SheetMaker.Content(SheetMaker.Around("lever", values), SheetMaker.Options("A3")).Views.SelectMany(v => v.Annotations).Where(a => a.Name is "tongue.sweep" or "arms.pad_shift").Select(a => a.Label)];
        Assert.Equal(2, labels.Length);
        Assert.All(labels, l => Assert.Equal((boxed, false), (l.Boxed, l.IsReference)));
    }

    /// <summary>0.05 mm is 0.0019685 in: rounded down, never a wider zone.</summary>
    [Fact]
    public void Zone_Inches_AreNeverWider()
    {
        PlotSheet sheet = SheetMaker.Draw("levers/middle", SheetMaker.Options("A3", ShownUnits.Inches));
        Assert.Contains("⌀.0019", Symbols(sheet, LeverFields.HoleDiameter));
    }

    [Fact]
    public void Pin_Side_StatesItsTextureOnceAndZeroNone()
    {
        PlotSheet sheet = SheetMaker.Draw("pins/early", SheetMaker.Options("A4"));
        Assert.Single(sheet.Items.OfType<PlotText>(), t => t.Text == "Ra 0.8");
        Assert.Contains(sheet.Items.OfType<PlotText>(), t => t.Text == "1:48");
        PlotSheet bare = SheetMaker.TryDrawPin(RandomPins.Draw(new Dice(1)).With(LeverDraw.Parts.PivotPin.PinFields.SideTexture, 0), SheetMaker.Options("A3")).Value!;
        // The general signs beside the notes belong to no view.
        Assert.DoesNotContain(bare.Items, i => i.Role == LineRole.Symbol && i.View is not null);
        Assert.Contains(bare.Items, i => i.Role == LineRole.Symbol);
    }

    private static string[] Symbols(PlotSheet sheet, FieldSpec field) => Symbols(sheet, field.Name);

    private static string[] Symbols(PlotSheet sheet, string name)
    {
        PlotDimension[] all = [.. sheet.Dimensions.Where(d => d.Name == name)];
        string[] own = [.. all.SelectMany(d => d.Text.Split('\n'))];
        return [.. sheet.Items.OfType<PlotText>().Where(t => all.Any(d => d.Id == t.Owner) && !own.Contains(t.Text)).Select(t => t.Text).OrderBy(t => t.StartsWith("Ra", StringComparison.Ordinal))];
    }
}
