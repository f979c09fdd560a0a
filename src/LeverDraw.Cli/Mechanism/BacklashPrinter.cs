using System.Globalization;
using LeverDraw.Cli.Reporting;
using LeverDraw.Mechanism;
using LeverDraw.Mechanism.Statistics;
using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Units;

namespace LeverDraw.Cli.Mechanism;

/// <summary>A backlash report as text.</summary>
internal sealed class BacklashPrinter(TextWriter to, BacklashReport report, LengthWords lengths, bool colour)
{
    private const int ShownCures = 8;

    public void Print()
    {
        to.WriteLine(report.Setup.Name);
        to.WriteLine($"  {report.Setup.Lever.Name}; {report.Setup.Pin.Name}; {report.Setup.Plane.Name}");
        to.WriteLine();
        to.WriteLine("Lost turns of the nut");
        foreach (string line in Headlines())
            to.WriteLine("  " + line);
        to.WriteLine();
        new TerminalTable(
            ["gap", ">typical " + lengths.Units, ">least", ">most", ">turns", ">share", ">" + lengths.LittleInWords + " more costs"],
            [.. report.Shares.Select(s => (IReadOnlyList<string>)[s.Gap.Words(), lengths.Number(s.Typical), lengths.Number(s.Worst.Min), lengths.Number(s.Worst.Max), Turns(s.Turns), Percent(s.Share), Turns(CostOf(report.Linkage.Motion.FactorOf(s.Gap)))])]).Write(to, colour);
        foreach (GapShare binding in report.Shares.Where(s => s.Worst.Min < Length.Zero))
            to.WriteLine($"  The {binding.Gap.Words()} may bind: file or ream to suit.");
        to.WriteLine();
        foreach (string line in Mechanics())
            to.WriteLine("  " + line);
        to.WriteLine();
        PrintTolerances();
        PrintTravel();
        if (!report.Cures.IsEmpty)
            PrintCures();
    }

    private IEnumerable<string> Headlines()
    {
        yield return Named("as found", report.Now);
        if (report.AllNew is { } fresh)
            yield return Named("all parts new", fresh);
        if (report.Target is { } target)
            yield return "wanted".PadRight(15) + Turns(target);
        if (report.Now.Exact is null)
            yield return "The lever binds or loses contact at mid-travel: only the formula's number can be told.";
        else if (report.Now.GapsAreSmall)
            yield return $"Small gaps: the lever leans {Lean}° either way of the middle, and both ways of reckoning give the same within 0.001 turn.";
        else
            yield return $"The exact number is meant: the lever leans {Lean}° either way of the middle, and the formula, which is for small gaps, may be off by {Turns3(report.Now.LeftOut)} turn.";
    }

    private string Lean => report.Now.Lean.Degrees.ToString("0.0", CultureInfo.InvariantCulture);

    private static string Named(string name, LostTurns lost) =>
        name.PadRight(15) + Turns(lost.Meant) + (lost.Exact is { } ? "  (exactly " + Turns3(lost.Meant) + ", by the formula " + Turns3(lost.Formula) + ")" : "  (by the formula)");

    private IEnumerable<string> Mechanics()
    {
        Linkage linkage = report.Linkage;
        Bearing bearing = linkage.Bearing;
        yield return $"Arms: nut {Size(linkage.NutArm)}, iron {Size(linkage.IronArm)}, ratio {Number(linkage.Motion.Slot)}; the pin's play counts {Number(linkage.Motion.Pivot)} times.";
        yield return $"One turn moves the iron {Size(linkage.TravelPerTurn)} along the bed, {Size(linkage.DepthPerTurn)} in depth.";
        yield return $"Tongue: stands {Size(bearing.StandOut)} over the iron, {Size(bearing.Thickness)} thick where it bears, {Size(bearing.Land)} of full thickness left" + (bearing.IsThin ? $" (too little: {Size(Bearing.LeastLand)} are wanted)." : ".");
        double off = report.Setup.Lever.Part.Side.Tongue.Along.Angle - ((Math.PI / 2) - linkage.StudAngle.Radians);
        if (Math.Abs(off) > Math.PI / 360)
            yield return $"The sweep differs by {Angle.FromRadians(-off).Degrees.ToString("0.0", CultureInfo.InvariantCulture)}° from the angle between stud and bed: the travel is lopsided.";
        yield return $"Side play: the fork's tips swing {Size(report.SidePlay)} across.";
    }

    private void PrintTolerances()
    {
        (double least, double most) = report.InTurns(report.Tolerances.WorstCase);
        (double low, double high) = report.InTurns(report.Tolerances.RootSumSquare);
        SimulationResult s = report.Simulation;
        to.WriteLine("What the limits allow, turns, by the formula");
        to.WriteLine($"  worst case            {Turns(least)} to {Turns(most)}");
        to.WriteLine($"  root sum square       {Turns(low)} to {Turns(high)}");
        to.WriteLine($"  19 of 20 drawn        {Turns(s.LowEnd.Value)} to {Turns(s.HighEnd.Value)}  ({s.Draws.ToString("N0", CultureInfo.InvariantCulture)} draws, seed {s.Seed.ToString(CultureInfo.InvariantCulture)}, {(s.Spread == SizeSpread.Normal ? "normal, limits at 3 standard deviations" : "even between the limits")})");
        to.WriteLine($"  mean of the draws     {s.Mean.Value.ToString("0.0000", CultureInfo.InvariantCulture)} (95 % sure: {s.Mean.Low.ToString("0.0000", CultureInfo.InvariantCulture)} to {s.Mean.High.ToString("0.0000", CultureInfo.InvariantCulture)})");
        if (s.Over is { } over)
            to.WriteLine($"  more than wanted      {Share(over)}");
        if (s.Binding.Value > 0)
            to.WriteLine($"  binding               {Share(s.Binding)}");
        Contributor[] varying = [.. report.Tolerances.Contributors.Where(c => c.Varies).OrderByDescending(c => c.Variance)];
        if (varying.Length == 0)
            return;
        new TerminalTable(
            ["size", ">least " + lengths.Units, ">most " + lengths.Units, ">turns per " + lengths.LittleInWords, ">of the variance"],
            [.. varying.Select(c => (IReadOnlyList<string>)[c.Name, lengths.Number(c.Limits.Min), lengths.Number(c.Limits.Max), Signed(CostOf(c.Factor)), Percent(c.Variance)])]).Write(to, colour);
        to.WriteLine();
    }

    private void PrintTravel()
    {
        to.WriteLine("Over the nut's travel, solved exactly");
        new TerminalTable(
            [">nut from mid " + lengths.Units, ">lever turned", ">turns lost", ">iron " + lengths.Units + " per turn", ">depth " + lengths.Units + " per turn"],
            [.. report.Travel.Select(t => (IReadOnlyList<string>)[
                (t.Nut > Length.Zero ? "+" : "") + lengths.Number(t.Nut, fewer: 1),
                t.Turn is { } turn ? (turn.Degrees + 0.0).ToString("0.0", CultureInfo.InvariantCulture) + "°" : "",
                t.IdleTurns is { } idle ? (t.Binds ? "binds" : Turns(idle)) : t.Turn is null ? "no contact" : "leaves the slot",
                t.PerTurn is { } per ? lengths.Number(per) : "",
                t.DepthPerTurn is { } depth ? lengths.Number(depth) : ""])]).Write(to, colour);
    }

    private void PrintCures()
    {
        to.WriteLine();
        string money = report.Setup.Money.Length > 0 ? " " + report.Setup.Money : "";
        if (report.Target is { } target)
        {
            to.WriteLine(report.Cheapest is { } cheapest
                ? $"Cheapest way to {Turns(target)} turns or less: {Parts(cheapest)}{(cheapest.Parts.IsEmpty ? "" : ", " + Number(cheapest.Price) + money)}: from {Turns(report.Now.Meant)} to {Turns(cheapest.Turns!.Value)}."
                : $"No set of the priced parts comes down to {Turns(target)} turns.");
        }

        to.WriteLine("What may be replaced");
        // Sets that cost more and help no more than another are left out.
        Cure[] worth = [.. report.Cures.Where(c => c.Turns is { } t && !report.Cures.Any(o => o.Turns is { } u && ((o.Price < c.Price && u <= t) || (o.Price == c.Price && u < t))))];
        new TerminalTable(
            ["new", ">price" + money, ">turns lost", ">gained"],
            [.. worth.Take(ShownCures).Select(c => (IReadOnlyList<string>)[Parts(c), Number(c.Price), Turns(c.Turns!.Value), Turns(report.Now.Meant - c.Turns!.Value)])]).Write(to, colour);
        to.WriteLine("  A pin without a new lever is one of the next size, the hole reamed to suit.");
        to.WriteLine("  " + Cautions.Pins);
    }

    public static string Parts(Cure cure) => cure.Parts.IsEmpty ? "nothing" : string.Join(", ", cure.Parts.Select(p => p.Word()));

    private static string Share(Estimate share) =>
        $"{(share.Value * 100).ToString("0.00", CultureInfo.InvariantCulture)} % of the draws ({(share.Low * 100).ToString("0.00", CultureInfo.InvariantCulture)} to {(share.High * 100).ToString("0.00", CultureInfo.InvariantCulture)})";

    private double CostOf(double factor) => report.Linkage.Turns(lengths.Little * factor);

    private string Size(Length length) => lengths.InSentence(length);

    private static string Turns(double turns) => turns.ToString("0.00", CultureInfo.InvariantCulture);

    private static string Turns3(double turns) => turns.ToString("0.000", CultureInfo.InvariantCulture);

    private static string Signed(double turns) => turns.ToString("+0.000;-0.000;0.000", CultureInfo.InvariantCulture);

    private static string Number(double number) => number.ToString("0.##", CultureInfo.InvariantCulture);

    private static string Percent(double share) => (share * 100).ToString("0", CultureInfo.InvariantCulture) + " %";
}
