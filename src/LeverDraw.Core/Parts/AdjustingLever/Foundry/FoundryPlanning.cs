using LeverDraw.Diagnostics;
using LeverDraw.Profiles;
using LeverDraw.Standards;
using LeverDraw.Tolerancing;
using LeverDraw.Tolerancing.Allowances;
using LeverDraw.Units;

namespace LeverDraw.Parts.AdjustingLever.Foundry;

/// <summary>Reads the casting fields into a plan.</summary>
public static class FoundryPlanning
{
    /// <summary>The plan, or what is at odds in the profile's casting fields.</summary>
    public static Checked<FoundryPlan> Of(Lever finished, Profile profile)
    {
        ArgumentNullException.ThrowIfNull(profile);
        return Of(finished, profile.Values, profile.Values.Get(CommonFields.Material), profile.Values.Get(CommonFields.Process));
    }

    /// <summary>Whether the profile, by a casting field or by the title block's words, means its lever to be cast.</summary>
    public static bool IsMeant(Profile profile)
    {
        ArgumentNullException.ThrowIfNull(profile);
        IFieldValues values = profile.Values;
        return CastingFields.All.Any(values.IsStated)
            || (MetalOf(values, values.Get(CommonFields.Material)) is not null && ProcessOf(values, values.Get(CommonFields.Process)) is not null);
    }

    /// <param name="material">The title block's words, for a metal not chosen by its own field; likewise <paramref name="process"/>.</param>
    public static Checked<FoundryPlan> Of(Lever finished, IFieldValues values, string material, string process)
    {
        ArgumentNullException.ThrowIfNull(finished);
        ArgumentNullException.ThrowIfNull(values);
        List<Diagnostic> found = [];
        FoundryMetal? metal = MetalOf(values, material);
        MouldingProcess? way = ProcessOf(values, process);
        if (metal is null)
            found.Add(Unknown(values, CastingFields.Metal, material, "metal"));
        if (way is null)
            found.Add(Unknown(values, CastingFields.Process, process, "way of moulding"));
        if (metal is null || way is null)
            return Checked<FoundryPlan>.Bad(found);

        if (ToleranceOf(values, metal, way) is not { } tolerance)
        {
            found.Add(DiagnosticCatalogue.CastingTableEmpty.At(values.PositionOf(CastingFields.Process), CastingFields.ToleranceGrade.Name, "casting tolerance grade", metal.Name, way.Name));
            return Checked<FoundryPlan>.Bad(found);
        }

        AxisRates rates = FoundryRates.Of(values, metal, found);
        StockPlan? stock = StockPlan.Of(finished, values, metal, way, tolerance, Math.Max(rates.X.Above, Math.Max(rates.N.Above, rates.Z.Above)), found);
        if (stock is null || found.Exists(d => d.Severity == Severity.Error))
            return Checked<FoundryPlan>.Bad(found);
        return Checked<FoundryPlan>.From(found, () => new FoundryPlan(
            metal,
            way,
            tolerance,
            stock.Required,
            stock.Stock,
            rates,
            FoundryMetal.Find(values.Get(CastingFields.PatternMetal)),
            new Rapping(values.Get(CastingFields.RappingAlong).Nominal, values.Get(CastingFields.RappingAcross).Nominal),
            new DraftChoice(values.Get(CastingFields.DraftRule), values.Get(LeverFields.Draft), values.Get(CastingFields.DraftSense)),
            values.Get(CastingFields.Parting),
            stock.CoredHole));
    }

    private static FoundryMetal? MetalOf(IFieldValues values, string material)
    {
        if (FoundryMetal.Find(values.Get(CastingFields.Metal)) is { } chosen)
            return chosen;
        return MaterialOfText.FoundryWord(material) is { } word ? FoundryMetal.Find(word) : null;
    }

    private static MouldingProcess? ProcessOf(IFieldValues values, string process)
    {
        if (MouldingProcess.Find(values.Get(CastingFields.Process)) is { } chosen)
            return chosen;
        bool Says(string word) => process.Contains(word, StringComparison.OrdinalIgnoreCase);
        return Says("investment") || Says("lost wax") ? MouldingProcess.Investment
            : Says("gravity") || Says("permanent mould") ? MouldingProcess.GravityDie
            : Says("resin") || Says("chemically") ? MouldingProcess.ResinSand
            : Says("sand") ? MouldingProcess.GreenSand
            : null;
    }

    private static CastingToleranceRule? ToleranceOf(IFieldValues values, FoundryMetal metal, MouldingProcess process) =>
        StatedTolerance(values) ?? CastingToleranceRule.Usual(metal, process);

    /// <summary>The grade agreed with the foundry; null when the profile states none.</summary>
    internal static CastingToleranceRule? StatedTolerance(IFieldValues values) =>
        values.Get(CastingFields.ToleranceGrade) is { } word && word != CastingFields.Usual
            ? new CastingToleranceRule(int.Parse(word, System.Globalization.CultureInfo.InvariantCulture), false)
            : null;

    private static Diagnostic Unknown(IFieldValues values, ChoiceField field, string words, string what) =>
        DiagnosticCatalogue.FoundryUnknown.At(values.PositionOf(field), field.Name, what, words, field.Name, string.Join(", ", field.Choices.Skip(1)));
}
