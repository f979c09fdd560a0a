using LeverDraw.Diagnostics;
using LeverDraw.Standards;
using LeverDraw.Tolerancing;
using LeverDraw.Units;

namespace LeverDraw.Lookups;

/// <summary>Limits of hole and shaft of a fit, and what lies between them.</summary>
public static class FitLookup
{
    private static readonly LookupInput _size = new("SIZE", "Nominal size, in mm or with its unit: 3.06, \"9/64 in\"");
    private static readonly LookupInput _fit = new("FIT", "Hole zone, slash, shaft zone: H8/f7");

    public static Lookup Entry { get; } = new("fit", "Limits of hole and shaft, clearance, kind of fit", "fit 3.06 H8/f7", [_size, _fit], Find);

    private static Checked<LookupAnswer> Find(LookupRequest request)
    {
        Length? size = request.Size(_size);
        FitLimits limits = default;
        _ = request.Take(Fit.Parse(request.Text(_fit) ?? ""), out Fit fit) && size is not null && request.Take(fit.On(size.Value), out limits);
        return request.Answer(() => Answer(size!.Value, fit, limits));
    }

    private static LookupAnswer Answer(Length nominal, Fit fit, FitLimits limits)
    {
        Certainty howSure = (Certainty)Math.Max((int)ZoneRows.HowSure(fit.Hole, nominal), (int)ZoneRows.HowSure(fit.Shaft, nominal));
        LookupRow Follows(string name, LookupValue value, string note = "") => new(name, value, howSure, [], note);
        string Sign(Length clearance) => clearance < Length.Zero ? "negative: interference" : "";
        return new LookupAnswer(fit.Text + " on " + ZoneRows.Both(nominal),
        [
            ZoneRows.Limits("hole", fit.Hole, nominal, limits.Hole),
            ZoneRows.Limits("shaft", fit.Shaft, nominal, limits.Shaft),
            Follows("least clearance", LookupValue.Size(limits.MinClearance), Sign(limits.MinClearance)),
            Follows("most clearance", LookupValue.Size(limits.MaxClearance), Sign(limits.MaxClearance)),
            Follows("kind of fit", LookupValue.Word(limits.Kind switch
            {
                FitKind.Clearance => "clearance",
                FitKind.Interference => "interference",
                _ => "transition",
            })),
        ]);
    }
}
