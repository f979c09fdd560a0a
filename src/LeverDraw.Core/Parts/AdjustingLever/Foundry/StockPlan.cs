using LeverDraw.Diagnostics;
using LeverDraw.Profiles;
using LeverDraw.Standards;
using LeverDraw.Tolerancing.Allowances;
using LeverDraw.Units;

namespace LeverDraw.Parts.AdjustingLever.Foundry;

/// <summary>How much stock each machined face gets.</summary>
internal sealed record StockPlan(Length Required, LeverStock Stock, Length? CoredHole)
{
    public static StockPlan? Of(Lever finished, IFieldValues values, FoundryMetal metal, MouldingProcess process, CastingToleranceRule tolerance, double spread, List<Diagnostic> found)
    {
        string grade = values.Get(CastingFields.AllowanceGrade);
        Length required = Length.Zero;
        if (GradeOf(values, metal, process) is { } letter)
        {
            Answer<Length> answer = RequiredMachiningAllowances.PerFace(letter, finished.Largest);
            if (!answer.IsGiven)
            {
                found.Add(DiagnosticCatalogue.CastingTableEmpty.At(values.PositionOf(CastingFields.AllowanceGrade), CastingFields.AllowanceGrade.Name, "machining allowance grade", metal.Name, process.Name));
                return null;
            }

            required = answer.Value;
        }

        Length? FaceStock(SizeField field, FoundrySize size)
        {
            if (values.Find(field) is { } stated)
                return stated.Nominal;
            if (grade == CastingFields.Filing)
                return MachiningStock.Filing;
            if (grade == CastingFields.None)
                return Length.Zero;
            Answer<Length> stock = MachiningStock.ByRawSize(size.Finished, size.FinishedMost, required, tolerance, spread);
            if (stock.IsGiven)
                return stock.Value;
            found.Add(DiagnosticCatalogue.CastingToleranceMissing.At(values.PositionOf(CastingFields.ToleranceGrade), CastingFields.ToleranceGrade.Name, size.Name, stock.Refusal!));
            return null;
        }

        Length? head = FaceStock(CastingFields.HeadAllowance, FoundrySizes.Head(finished));
        Length? pads = FaceStock(CastingFields.PadAllowance, FoundrySizes.Pads(finished));
        Length? tongue = FaceStock(CastingFields.TongueAllowance, FoundrySizes.Tongue(finished));
        if (head is not { } h || pads is not { } p || tongue is not { } t)
            return null;
        return new StockPlan(required, new LeverStock(h, p, t), Cored(finished, values, process, tolerance, required, found));
    }

    /// <summary>The grade of the machining allowance: the profile's, or the process's finest ('?' when the tables have none); null when the stock follows from none.</summary>
    public static char? GradeOf(IFieldValues values, FoundryMetal metal, MouldingProcess process) => values.Get(CastingFields.AllowanceGrade) switch
    {
        CastingFields.Filing or CastingFields.None => null,
        CastingFields.Usual => process.Allowances(metal)?.FinestGrade ?? '?',
        { } stated => stated[0],
    };

    private static Length? Cored(Lever finished, IFieldValues values, MouldingProcess process, CastingToleranceRule tolerance, Length required, List<Diagnostic> found)
    {
        if (values.Get(CastingFields.Hole) != CastingFields.Cored)
            return null;
        Length smallest = Length.Min(finished.Hole.AtLeft, finished.Hole.AtRight), depth = finished.Hole.HalfLength * 2;
        Answer<Length> half = tolerance.PlusMinus(smallest);
        Length raw = half.IsGiven ? RawSize.Bore(smallest, required, half.Value) : Length.Zero;
        string? why = raw < process.LeastHole ? $"{process.Name} casts no hole below {LeverFindings.Mm(process.LeastHole.Millimetres)} ({process.LeastHoleKind})"
            : process == MouldingProcess.Investment && depth > raw * MouldingProcess.MostInvestmentHoleDepth ? $"a through hole of {LeverFindings.Mm(raw.Millimetres)} can be at most {LeverFindings.Mm(raw.Millimetres * MouldingProcess.MostInvestmentHoleDepth)} deep (one guide)"
            : null;
        if (why is null)
            return raw;
        found.Add(DiagnosticCatalogue.HoleNotCastable.At(values.PositionOf(CastingFields.Hole), CastingFields.Hole.Name, LeverFindings.Mm(Math.Max(0, raw.Millimetres)), LeverFindings.Mm(depth.Millimetres), why));
        return null;
    }
}
