using System.Globalization;
using LeverDraw.Diagnostics;
using LeverDraw.Profiles;
using LeverDraw.Units;

namespace LeverDraw.Parts.AdjustingLever.Foundry;

/// <summary>Joint, undercut and draft. An investment pattern leaves its mould by melting, so there they concern the wax's die only and are not told.</summary>
internal static class MouldFindings
{
    /// <summary>Least draft of sand castings outside, degrees (one iron foundry's guide, 1 to 3).</summary>
    private const double LeastDraft = 1;

    public static IEnumerable<Diagnostic> Of(PatternLever pattern, IFieldValues values)
    {
        CastingLever casting = pattern.Casting;
        if (casting.Plan.Process == Tolerancing.Allowances.MouldingProcess.Investment)
            yield break;
        PartingCandidate parting = MouldParting.Of(casting);
        SourceOf at = new(values);
        if (!parting.Draws)
            yield return DiagnosticCatalogue.Undercut.At(at[CastingFields.Parting], CastingFields.Parting.Name, Words(parting), Mm(parting.Locked), parting.LockedWhere);
        if (!parting.SplitFits.IsEmpty)
            yield return DiagnosticCatalogue.PartingThroughFit.At(at[CastingFields.Parting], CastingFields.Parting.Name, Words(parting), string.Join(" and ", parting.SplitFits));

        PatternDraft draft = PatternDraft.Of(pattern, parting);
        if (draft.Walls.MaxBy(w => w.Depth) is { } deepest && deepest.Angle.Degrees < LeastDraft - 1e-9 && casting.Plan.Process.Sand)
            yield return DiagnosticCatalogue.DraftSmall.At(at[LeverFields.Draft], LeverFields.Draft.Name, Degrees(deepest.Angle), Mm(deepest.Depth), Degrees(Angle.FromDegrees(LeastDraft)), "iron foundry guide, 1 to 3 degrees");
        if (draft.Of(draft.Machined).MaxBy(w => w.Taken) is { } most && casting.Plan.Stock.Head > Length.Zero && most.Taken > Length.Zero)
            yield return DiagnosticCatalogue.DraftOnFitFace.At(at[CastingFields.DraftSense], CastingFields.DraftSense.Name, Degrees(most.Angle), Mm(most.Depth), FoundrySizes.Head(casting.Finished).Name, Mm(most.Added + most.Taken));
    }

    internal static string Words(PartingCandidate parting) => parting.Name switch
    {
        CastingFields.HeadMiddle => "a flat joint through the head's middle",
        CastingFields.ArmBack => "a flat joint at the arms' back",
        CastingFields.AlongMiddle => "a joint that follows the lever's middle",
        CastingFields.AlongBack => "a joint that follows the lever's back",
        MouldParting.PinMiddle => "a joint in the fork's mid-plane",
        _ => "a joint level with the pivot",
    };

    private static string Degrees(Angle angle) => angle.Degrees.ToString("0.##", CultureInfo.InvariantCulture) + "°";

    private static string Mm(Length length) => LeverFindings.Mm(length.Millimetres);

    private readonly record struct SourceOf(IFieldValues Values)
    {
        public SourcePosition this[FieldSpec field] => Values.PositionOf(field);
    }
}
