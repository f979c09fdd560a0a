using System.Collections.Concurrent;
using System.Globalization;
using LeverDraw.Diagnostics;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Geometry;
using LeverDraw.Parts;
using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Parts.AdjustingLever.Foundry;
using LeverDraw.Parts.PivotPin;
using LeverDraw.Profiles;
using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Drafting.Sheets;

/// <summary>Sheets of random sound parts. Seeds are counted up from 1, so a failure names its part and comes again. <c>LEVERDRAW_RANDOM_SHEETS</c> sets how many on A3; a fifth of that on A4 in both units, where most has to be tried.</summary>
public class RandomSheetsTests
{
    private static int Count =>
        int.TryParse(Environment.GetEnvironmentVariable("LEVERDRAW_RANDOM_SHEETS"), NumberStyles.None, CultureInfo.InvariantCulture, out int count) ? count : 400;

    [Fact]
    public void Lever_Random_DrawsALegibleSheet() =>
        AllLegible(Count, RandomLevers.Draw, v => LeverPart.Build(v).Ok, v => SheetMaker.TryDrawLever(v, SheetMaker.Options("A3")));

    [Fact]
    public void Pin_Random_DrawsALegibleSheet() =>
        AllLegible(Count, RandomPins.Draw, v => PinPart.Build(v).Ok, v => SheetMaker.TryDrawPin(v, SheetMaker.Options("A3")));

    /// <summary>Narrow paper and long texts: what is drawn can be read. A sheet that finds no room says so and is no fault here.</summary>
    [Fact]
    public void Lever_RandomOnA4InBothUnits_IsLegibleWhereDrawn() =>
        AllLegible(Count / 5, RandomLevers.Draw, v => LeverPart.Build(v).Ok, v => SheetMaker.TryDrawLever(v, SheetMaker.Options("A4", ShownUnits.MillimetresAndInches)), "A4", mustDraw: false);

    [Fact]
    public void Pin_RandomOnA4InBothUnits_IsLegibleWhereDrawn() =>
        AllLegible(Count / 5, RandomPins.Draw, v => PinPart.Build(v).Ok, v => SheetMaker.TryDrawPin(v, SheetMaker.Options("A4", ShownUnits.MillimetresAndInches)), "A4", mustDraw: false);

    /// <summary>An eighth as many of the foundry's sheets: each with its own outline, table and marks.</summary>
    [Theory]
    [InlineData("casting")]
    [InlineData("pattern")]
    public void Foundry_Random_DrawsALegibleSheet(string sheet) => AllLegible(
        Count / 8,
        RandomLevers.Draw,
        v => LeverPart.Build(v) is { Ok: true } lever && FoundryRoad.Casting(lever.Value, Cast(v)).Ok,
        v => PartKinds.Lever.Build(Cast(v)).Value!.Find(sheet)!.Content(SheetMaker.Options("A3")).Then(content => SheetComposer.Compose(content, SheetMaker.Options("A3"))));

    private static Profile Cast(ValueBag values) => SheetMaker.Around("lever", values.Copy()
        .With(CastingFields.Process, "green-sand").With(CastingFields.ToleranceGrade, "7").With(CastingFields.AllowanceGrade, CastingFields.Filing));

    private static void AllLegible(int count, Func<Dice, ValueBag> draw, Func<ValueBag, bool> isSound, Func<ValueBag, Checked<PlotSheet>> compose, string paper = "A3", bool mustDraw = true)
    {
        Box2D frame = SheetMaker.Frame(paper);
        int[] seeds = [.. Enumerable.Range(1, int.MaxValue - 1).Where(seed => isSound(draw(new Dice(seed)))).Take(count)];
        int unplaced = 0;
        var faults = new ConcurrentBag<(int Seed, string Fault)>();
        System.Threading.Tasks.Parallel.ForEach(seeds, seed =>
        {
            Checked<PlotSheet> sheet = compose(draw(new Dice(seed)));
            if (!sheet.Ok)
                Interlocked.Increment(ref unplaced);
            List<string> own = sheet.Value is { } plot
                ? [.. Legibility.Faults(plot, frame), .. PartsApart.Faults(plot, frame)]
                : mustDraw ? [.. sheet.Diagnostics.Select(d => d.Message)] : [];
            foreach (string fault in own)
                faults.Add((seed, fault));
        });
        int bad = faults.Select(f => f.Seed).Distinct().Count();
        Assert.True(bad == 0, string.Create(CultureInfo.InvariantCulture, $"{bad} of {count}, {unplaced} not drawn\n") + string.Join("\n", faults.Order().Take(100).Select(f => string.Create(CultureInfo.InvariantCulture, $"seed {f.Seed}: {f.Fault}"))));
        // Hardly any part may be too large for narrow paper, or the test looks at nothing.
        Assert.True(unplaced <= count / 10, string.Create(CultureInfo.InvariantCulture, $"{unplaced} of {count} not drawn"));
    }
}
