using System.Globalization;
using LeverDraw.Diagnostics;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Geometry;
using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Parts.PivotPin;
using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Drafting.Sheets;

/// <summary>Sheets of random sound parts. Seeds are counted up from 1, so a failure names its part and comes again. <c>LEVERDRAW_RANDOM_SHEETS</c> sets how many.</summary>
public class RandomSheetsTests
{
    private static int Count =>
        int.TryParse(Environment.GetEnvironmentVariable("LEVERDRAW_RANDOM_SHEETS"), NumberStyles.None, CultureInfo.InvariantCulture, out int count) ? count : 60;

    [Fact]
    public void Lever_Random_DrawsALegibleSheet() =>
        AllLegible(RandomLevers.Draw, v => LeverPart.Build(v).Ok, v => SheetMaker.TryDrawLever(v, SheetMaker.Options("A3")));

    [Fact]
    public void Pin_Random_DrawsALegibleSheet() =>
        AllLegible(RandomPins.Draw, v => PinPart.Build(v).Ok, v => SheetMaker.TryDrawPin(v, SheetMaker.Options("A3")));

    /// <summary>Narrow paper and long texts: what is drawn can be read. A sheet that finds no room says so and is no fault here.</summary>
    [Fact]
    public void Lever_RandomOnA4InBothUnits_IsLegibleWhereDrawn() =>
        AllLegible(RandomLevers.Draw, v => LeverPart.Build(v).Ok, v => SheetMaker.TryDrawLever(v, SheetMaker.Options("A4", ShownUnits.MillimetresAndInches)), "A4", mustDraw: false);

    private static void AllLegible(Func<Dice, ValueBag> draw, Func<ValueBag, bool> isSound, Func<ValueBag, Checked<PlotSheet>> compose, string paper = "A3", bool mustDraw = true)
    {
        Box2D frame = SheetMaker.Frame(paper);
        int bad = 0, unplaced = 0, drawn = 0;
        var faults = new List<string>();
        for (int seed = 1; drawn < Count; seed++)
        {
            ValueBag values = draw(new Dice(seed));
            if (!isSound(values))
                continue;
            drawn++;
            Checked<PlotSheet> sheet = compose(values);
            List<string> own = sheet.Value is { } plot
                ? [.. Legibility.Faults(plot, frame), .. SheetRoom.Faults(plot, frame)]
                : mustDraw ? [.. sheet.Diagnostics.Select(d => d.Message)] : [];
            if (own.Count == 0)
                continue;
            bad++;
            unplaced += sheet.Ok ? 0 : 1;
            faults.AddRange(own.Select(f => string.Create(CultureInfo.InvariantCulture, $"seed {seed}: {f}")));
        }

        Assert.True(bad == 0, string.Create(CultureInfo.InvariantCulture, $"{bad} of {drawn}, {unplaced} of them not drawn\n") + string.Join("\n", faults));
    }
}
