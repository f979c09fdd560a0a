using System.Collections.Immutable;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Units;

namespace LeverDraw.Mechanism.Fitting;

/// <summary>Whether a lever goes into a plane.</summary>
public enum FitVerdict
{
    GoesIn,
    WithPlay,
    DoesNotGo,
}

/// <summary>A lever on its pin tried in a plane, contact by contact.</summary>
/// <param name="Turns">Lost turns of the nut, sizes typical; null when the parts do not go together or not work.</param>
public sealed record LeverFit(string Lever, string Plane, FitVerdict Verdict, ImmutableArray<FitContact> Contacts, double? Turns)
{
    /// <summary>Every contact that is not simply good, in words.</summary>
    public ImmutableArray<string> Reasons => [.. Contacts.Where(c => c.Reason.Length > 0 && (Verdict != FitVerdict.DoesNotGo || c.State == FitState.Fails)).Select(c => c.Reason)];

    /// <summary>Contacts with more play than they should have, in words; rework that makes a lever go leaves them as they are.</summary>
    public ImmutableArray<string> Play => [.. Contacts.Where(c => c.State == FitState.Loose).Select(c => c.Reason)];

    /// <summary>What would have to be done; null when something cannot be done.</summary>
    public ImmutableArray<string>? Rework
    {
        get
        {
            FitContact[] failing = [.. Contacts.Where(c => c.State is FitState.Fails)];
            return failing.Any(c => c.Rework is null) ? null : [.. failing.Select(c => c.Rework!).Where(r => r.Length > 0).Distinct()];
        }
    }

    public string Word => Verdict switch
    {
        FitVerdict.GoesIn => "goes in",
        FitVerdict.WithPlay => "goes in with play",
        _ => "does not go",
    };
}

/// <summary>A lever on the pin that belongs to it.</summary>
public sealed record FittedLever(string Name, string Number, Parts.AdjustingLever.Lever Lever, Parts.PivotPin.Pin Pin);

/// <summary>Levers against planes.</summary>
public sealed record FitMatrix(ImmutableArray<string> Levers, ImmutableArray<string> Planes, ImmutableArray<LeverFit> Fits)
{
    /// <param name="units">Of the reasons.</param>
    public static FitMatrix Of(ImmutableArray<FittedLever> levers, ImmutableArray<Parts.HostPlanes.HostPlane> planes, ShownUnits units = ShownUnits.Millimetres) =>
        new([.. levers.Select(l => l.Name)], [.. planes.Select(p => p.Name)], [.. planes.SelectMany(p => levers.Select(l => FitTrial.Of(l, p, new LengthWords(units))))]);

    public LeverFit Of(string lever, string plane) => Fits.First(f => f.Lever == lever && f.Plane == plane);

    /// <summary>For a lever that does not go: the one of the others that goes into the same plane with the fewest lost turns; null when none goes.</summary>
    public LeverFit? Alternative(LeverFit fit)
    {
        ArgumentNullException.ThrowIfNull(fit);
        return fit.Verdict != FitVerdict.DoesNotGo
            ? null
            : Fits.Where(f => f.Plane == fit.Plane && f.Verdict != FitVerdict.DoesNotGo).OrderBy(f => f.Verdict).ThenBy(f => f.Turns ?? double.PositiveInfinity).FirstOrDefault();
    }
}
