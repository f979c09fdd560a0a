using LeverDraw.Diagnostics;
using LeverDraw.Profiles;
using LeverDraw.Tolerancing.Allowances;

namespace LeverDraw.Parts.AdjustingLever.Foundry;

/// <summary>The contraction per axis: a measured trial before the foundry's figure before the book's.</summary>
internal static class FoundryRates
{
    public static AxisRates Of(IFieldValues values, FoundryMetal metal, List<Diagnostic> found)
    {
        ContractionRate rate = metal.BookRate;
        string stated = values.Get(CastingFields.Contraction);
        if (stated.Length > 0)
        {
            if (ContractionText.Parse(stated) is { } read)
                rate = read;
            else
                found.Add(DiagnosticCatalogue.BadContraction.At(values.PositionOf(CastingFields.Contraction), CastingFields.Contraction.Name, stated));
        }

        return new AxisRates(
            Trial(values, CastingFields.TrialPatternX, CastingFields.TrialCastingX, found) ?? rate,
            Trial(values, CastingFields.TrialPatternN, CastingFields.TrialCastingN, found) ?? rate,
            Trial(values, CastingFields.TrialPatternZ, CastingFields.TrialCastingZ, found) ?? rate);
    }

    private static ContractionRate? Trial(IFieldValues values, SizeField patternField, SizeField castingField, List<Diagnostic> found)
    {
        SizeValue? pattern = values.Find(patternField), casting = values.Find(castingField);
        if (pattern is null && casting is null)
            return null;
        if (pattern is null || casting is null)
        {
            (SizeField there, SizeField missing) = pattern is null ? (castingField, patternField) : (patternField, castingField);
            found.Add(DiagnosticCatalogue.TrialIncomplete.At(values.PositionOf(there), there.Name, there.Name, missing.Name));
            return null;
        }

        double value = (pattern.Nominal / casting.Nominal) - 1;
        if (value is >= 0 and < 0.05)
            return ContractionRate.Trial(pattern.Nominal, casting.Nominal, values.Get(CastingFields.TrialUncertainty).Nominal);
        found.Add(DiagnosticCatalogue.TrialImpossible.At(values.PositionOf(castingField), castingField.Name, patternField.Name, castingField.Name, Math.Round(value * 100, 2)));
        return null;
    }
}
