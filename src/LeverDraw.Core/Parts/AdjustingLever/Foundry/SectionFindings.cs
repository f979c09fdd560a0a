using System.Collections.Immutable;
using System.Globalization;
using LeverDraw.Diagnostics;
using LeverDraw.Geometry;
using LeverDraw.Profiles;
using LeverDraw.Standards;
using LeverDraw.Tolerancing.Allowances;
using LeverDraw.Units;

namespace LeverDraw.Parts.AdjustingLever.Foundry;

/// <summary>Thin and abrupt sections, the hot spot in the head, and fillets.</summary>
internal static class SectionFindings
{
    /// <summary>Modulus of a section by that of its neighbour above which it wants feeding (common practice, no source).</summary>
    private const double MostModulusRatio = 1.2;

    /// <summary>Fillets inside corners are flagged below this (common practice, no source).</summary>
    private static readonly Length _leastFillet = Length.FromMillimetres(1);

    public static IEnumerable<Diagnostic> Of(CastingLever casting, IFieldValues values)
    {
        Lever lever = casting.Shape;
        Length arm = lever.Sizes[LeverFields.ArmThickness].Nominal, head = lever.Sizes[LeverFields.HeadDepth].Nominal;
        foreach (Diagnostic thin in Thin(casting, values))
            yield return thin;

        double step = head / arm;
        if (step > 1 + CastingDesignRules.MostSectionStep)
        {
            yield return DiagnosticCatalogue.AbruptSection.At(values.PositionOf(LeverFields.HeadDepth), LeverFields.HeadDepth.Name, "head", Ratio(step), "arms",
                Ratio(CastingDesignRules.MostSectionStep * 100) + " %", Ratio(CastingDesignRules.SectionSlope));
        }

        double moduli = HeadModulus(lever) / ArmModulus(lever);
        if (moduli > MostModulusRatio)
        {
            // Where arms and tongue run into the head the metal may be thicker than the head is deep. To a hundredth: finer is not searched for.
            Length thickest = Length.FromMillimetres(Math.Round(2 * InscribedCircle.Largest(lever.SideProfile).Radius, 2));
            yield return DiagnosticCatalogue.HotSpot.At(values.PositionOf(LeverFields.HeadDepth), LeverFields.HeadDepth.Name, "head", Mm(thickest), Mm(arm), "arms", Ratio(moduli));
        }

        foreach (SizeField field in new[] { LeverFields.Fillet, LeverFields.FootFillet, LeverFields.HeadFillet })
        {
            if (lever.Sizes.Find(field) is { } fillet && fillet.Nominal < _leastFillet)
                yield return DiagnosticCatalogue.SmallCastFillet.At(values.PositionOf(field), field.Name, "'" + field.Name + "'", Mm(fillet.Nominal), Mm(_leastFillet),
                    "common practice; one weak guide asks " + Mm(CastingDesignRules.LeastFillet));
        }
    }

    /// <summary>Of the head as a cylinder along the pin, or a block.</summary>
    public static Length HeadModulus(Lever lever) => lever.Forms.Head == LeverFields.Round
        ? CastingModulus.Cylinder(lever.Sizes[LeverFields.HeadDepth].Nominal, lever.Hole.HalfLength * 2)
        : CastingModulus.Block(lever.Sizes[LeverFields.HeadDepth].Nominal, lever.Sizes[LeverFields.HeadHeight].Nominal, lever.Hole.HalfLength * 2);

    /// <summary>Of an arm as a long bar.</summary>
    public static Length ArmModulus(Lever lever) => CastingModulus.Bar(lever.Sizes[LeverFields.ArmThickness].Nominal, lever.Sizes[LeverFields.ArmWidth].Nominal);

    private static IEnumerable<Diagnostic> Thin(CastingLever casting, IFieldValues values)
    {
        FoundryPlan plan = casting.Plan;
        return plan.Process.LeastSection(plan.Metal) is { } least
            ? ThinSections(casting).Select(t => DiagnosticCatalogue.ThinSection.At(values.PositionOf(t.Field), t.Field.Name, t.Name, Mm(t.Size), Mm(least.From), plan.Metal.Name, plan.Process.Name, least.Kind))
            : [];
    }

    /// <summary>Those thinner than the metal usually fills by this process; none where the tables give no least.</summary>
    public static ImmutableArray<ThinSection> ThinSections(CastingLever casting)
    {
        if (casting.Plan.Process.LeastSection(casting.Plan.Metal) is not { } least)
            return [];
        LeverSizes sizes = casting.Shape.Sizes;
        ThinSection[] all =
        [
            new("arms' thickness", LeverFields.ArmThickness, sizes[LeverFields.ArmThickness].Nominal),
            // Tapered arms come down to the finished pads' thickness: the stock stands on the pads alone.
            .. casting.Shape.Forms.Arms == LeverFields.Tapered ? [new("arms' thickness at the pads", LeverFields.ArmThickness, casting.Finished.Sizes[LeverFields.PadThickness].Nominal)] : Array.Empty<ThinSection>(),
            new("pads' thickness as cast", LeverFields.PadThickness, sizes[LeverFields.PadThickness].Nominal),
            new("tongue's thickness as cast", LeverFields.TongueThickness, sizes[LeverFields.TongueThickness].Nominal),
        ];
        return [.. all.Where(s => s.Size < least.From)];
    }

    private static string Ratio(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);

    private static string Mm(Length length) => LeverFindings.Mm(length.Millimetres);
}

/// <summary>A section of a casting that may not fill.</summary>
internal sealed record ThinSection(string Name, SizeField Field, Length Size);
