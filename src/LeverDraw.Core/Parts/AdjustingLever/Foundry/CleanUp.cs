using System.Collections.Immutable;
using LeverDraw.Diagnostics;
using LeverDraw.Profiles;
using LeverDraw.Standards;
using LeverDraw.Tolerancing;
using LeverDraw.Tolerancing.Allowances;
using LeverDraw.Units;

namespace LeverDraw.Parts.AdjustingLever.Foundry;

/// <summary>One size through the states, forward to the pattern and back again.</summary>
/// <param name="Casting">Nominal, as cast.</param>
/// <param name="PlusMinus">Casting tolerance; null when the table gives none for this grade and size.</param>
/// <param name="Grade">DCTG.</param>
/// <param name="Pattern">Rapping taken off, before draft.</param>
/// <param name="Expected">Limits the pattern's casting stays within: tolerance and the uncertainty of the contraction together.</param>
/// <param name="Master">Null without a working pattern of metal.</param>
/// <param name="LeastStock">On each machined face in the worst case; negative when it may not clean up. Null for a size left as cast.</param>
/// <param name="MostStock">On each machined face when everything is as large as it may be, draft included.</param>
public sealed record StateSizes(
    FoundrySize Size,
    Length Casting,
    Length? PlusMinus,
    int Grade,
    Length Pattern,
    SizeLimits Expected,
    Length? Master,
    Length? LeastStock,
    Length? MostStock);

/// <summary>The table of finished, casting and pattern sizes, and whether every machined face cleans up.</summary>
public static class CleanUp
{
    public static ImmutableArray<StateSizes> Table(PatternLever pattern)
    {
        ArgumentNullException.ThrowIfNull(pattern);
        CastingLever casting = pattern.Casting;
        MasterPatternLever? master = casting.Plan.PatternMetal is { } metal ? MasterPatternLever.Of(pattern, metal.BookRate) : null;
        return [.. FoundrySizes.Of(casting.Finished).Select(size => Row(pattern, master, size))];
    }

    /// <summary>A face that may not clean up, with the missing millimetres.</summary>
    public static IEnumerable<Diagnostic> Findings(PatternLever pattern, IFieldValues values)
    {
        ArgumentNullException.ThrowIfNull(values);
        foreach (StateSizes row in Table(pattern))
        {
            if (row.Size.Kind != FoundrySizeKind.Outside || row.LeastStock is not { } least || least.Millimetres >= -1e-6)
                continue;
            SizeField field = FieldOf(row.Size.Group);
            yield return DiagnosticCatalogue.MayNotCleanUp.At(values.PositionOf(field), field.Name, row.Size.Name, LeverFindings.Mm(-least.Millimetres),
                LeverFindings.Mm(row.Casting.Millimetres), LeverFindings.Mm((row.Casting - row.Expected.Min).Millimetres), LeverFindings.Mm(row.Size.FinishedMost.Millimetres));
        }
    }

    internal static SizeField FieldOf(MachinedFaces group) => group switch
    {
        MachinedFaces.Head => CastingFields.HeadAllowance,
        MachinedFaces.Pads => CastingFields.PadAllowance,
        _ => CastingFields.TongueAllowance,
    };

    private static StateSizes Row(PatternLever pattern, MasterPatternLever? master, FoundrySize size)
    {
        FoundryPlan plan = pattern.Casting.Plan;
        Length casting = size.MeasureOn(pattern.Casting.Shape), onPattern = pattern.SizeOf(size, casting), back = pattern.CastingFrom(size, onPattern);
        Answer<Length> half = plan.Tolerance.PlusMinus(casting, size.IsWall);
        Length tolerance = half.IsGiven ? half.Value : Length.Zero;
        // A larger contraction than reckoned leaves the casting smaller.
        Length below = back * (plan.Rates.MostAbove / pattern.FactorOf(size)), above = back * (plan.Rates.MostBelow / pattern.FactorOf(size));
        SizeLimits expected = new(back - tolerance - below, back + tolerance + above);
        (Length? least, Length? most) = size is { Kind: FoundrySizeKind.Outside, Faces: > 0 }
            ? ((expected.Min - size.FinishedMost - (2 * DraftTaken(pattern, size))) / size.Faces, (expected.Max - size.FinishedLeast + (2 * DraftAdded(pattern, size))) / size.Faces)
            : ((Length?)null, (Length?)null);
        return new StateSizes(size, casting, half.IsGiven ? half.Value : null, plan.Tolerance.GradeOf(casting, size.IsWall), onPattern, expected, master?.SizeOf(onPattern), least, most);
    }

    /// <summary>What draft leaves more to machine at the joint.</summary>
    private static Length DraftAdded(PatternLever pattern, FoundrySize size) => size.Group != MachinedFaces.Head
        ? Length.Zero
        : PatternDraft.Of(pattern, MouldParting.Of(pattern.Casting)).AddedToMachined;

    /// <summary>What draft takes off each machined side face: none with plus draft, which adds.</summary>
    private static Length DraftTaken(PatternLever pattern, FoundrySize size) => size.Group != MachinedFaces.Head
        ? Length.Zero
        : PatternDraft.Of(pattern, MouldParting.Of(pattern.Casting)).TakenFromMachined;
}
