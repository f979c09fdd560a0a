using System.Collections.Immutable;
using LeverDraw.Mechanism.Setups;
using LeverDraw.Mechanism.Statistics;
using LeverDraw.Tolerancing;
using LeverDraw.Units;

namespace LeverDraw.Mechanism;

/// <summary>What is asked beside the setup itself.</summary>
/// <param name="Draws">Of the simulation, two or more.</param>
public sealed record BacklashQuestion(long Draws = 1_000_000, ulong Seed = 1, SizeSpread Spread = SizeSpread.Normal, double? Target = null)
{
    public const int TravelPoints = 9;
}

/// <summary>One state of the mechanism in a few numbers.</summary>
/// <param name="Formula">Lost turns by the formula; <paramref name="Exact"/> by the rigid solution, null when that binds or loses contact.</param>
/// <param name="Lean">How far the lever leans either way of the middle.</param>
/// <param name="LeftOut">What the formula leaves out, turns: <see cref="Linkage.LeftOut"/>.</param>
public sealed record LostTurns(string Name, double Formula, double? Exact, Angle Lean, double LeftOut)
{
    /// <summary>Gaps are small when the formula leaves out no more than this; it and the exact solution then agree within a thousandth of a turn (measured over random levers, see the tests).</summary>
    public const double MostLeftOut = 0.0008;

    /// <summary>Numbers nearer to each other are the same for a reader, turns.</summary>
    public const double Apart = 0.005;

    /// <summary>The one that is meant: the exact one where there is one.</summary>
    public double Meant => Exact ?? Formula;

    public bool GapsAreSmall => LeftOut <= MostLeftOut;

    /// <summary>A reader would see that the formula, to which the gaps' turns add up, is off: the two read otherwise.</summary>
    public bool Differ => Exact is { } exact && Words.Turns(exact) != Words.Turns(Formula);

    public static LostTurns Of(string name, Linkage linkage)
    {
        ArgumentNullException.ThrowIfNull(linkage);
        return new LostTurns(name, linkage.Turns(linkage.Idle), linkage.ExactIdle() is { } idle ? linkage.Turns(idle) : null, linkage.Lean, linkage.LeftOut);
    }
}

/// <summary>Everything that is to be said of a setup's lost motion.</summary>
/// <param name="Now">As it was found.</param>
/// <param name="AllNew">Every part as drawn; null when those do not work together.</param>
/// <param name="Cures">Every set of the parts that have a price, cheapest first; empty when none has one.</param>
/// <param name="Cheapest">The cheapest that reaches the target; null when none does, or none is asked for.</param>
public sealed record BacklashReport(
    Setup Setup,
    LostTurns Now,
    LostTurns? AllNew,
    ImmutableArray<GapShare> Shares,
    ToleranceStudy Tolerances,
    SimulationResult Simulation,
    ImmutableArray<TravelPoint> Travel,
    Length SidePlay,
    double? Target,
    ImmutableArray<Cure> Cures,
    Cure? Cheapest)
{
    public Linkage Linkage => Setup.Linkage;

    public static BacklashReport Of(Setup setup, BacklashQuestion question)
    {
        ArgumentNullException.ThrowIfNull(setup);
        ArgumentNullException.ThrowIfNull(question);
        Linkage linkage = setup.Linkage;
        ToleranceStudy tolerances = ToleranceStudy.Of(linkage);
        double? target = question.Target ?? setup.Target;
        ImmutableArray<Cure> cures = setup.Prices.IsEmpty ? [] : Mechanism.Cures.All(setup);
        return new BacklashReport(
            setup,
            LostTurns.Of("as found", linkage),
            Linkage.Of(setup.AllNew) is { GoesTogether: true } fresh ? LostTurns.Of("all parts new", fresh) : null,
            GapShare.Of(linkage),
            tolerances,
            tolerances.Simulate(linkage, question.Spread, question.Draws, question.Seed, target),
            TravelPoint.Over(linkage, BacklashQuestion.TravelPoints),
            Mechanism.SidePlay.Of(linkage),
            target,
            cures,
            target is { } wanted ? Mechanism.Cures.Cheapest(cures, wanted) : null);
    }

    /// <summary>In turns.</summary>
    public (double Least, double Most) InTurns(SizeLimits idle) => (Linkage.Turns(idle.Min), Linkage.Turns(idle.Max));
}
