using System.Collections.Immutable;
using System.Globalization;
using LeverDraw.Diagnostics;
using LeverDraw.Drafting.Lettering;
using LeverDraw.Profiles;
using LeverDraw.Standards;
using LeverDraw.Tolerancing.Allowances;
using LeverDraw.Units;

namespace LeverDraw.Parts.AdjustingLever.Foundry;

/// <summary>What a foundryman would tell of a lever, as findings with number, limit and source.</summary>
public static class Castability
{
    /// <summary>A section that bears stock up to this share of the finished size (own rule).</summary>
    private const double MostStockShare = 0.5;

    /// <summary>Letters lower than this blur (common practice), and a larger draw on them than this tears (common practice, no source).</summary>
    private const double LeastMarkHeight = 0.4, LeastLetterStroke = 0.25, StrokeByHeight = 1.0 / 7;

    /// <summary>Everything about the casting and pattern of a profile's lever. Nothing for a lever that is no casting: when neither the title block's words nor a casting field name a metal and a way of moulding.</summary>
    public static ImmutableArray<Diagnostic> Of(Lever finished, Profile profile)
    {
        ArgumentNullException.ThrowIfNull(profile);
        IFieldValues values = profile.Values;
        Checked<FoundryPlan> plan = FoundryPlanning.Of(finished, profile);
        if (!plan.Ok)
        {
            bool meant = CastingFields.All.Any(values.IsStated);
            return meant || !plan.Diagnostics.All(d => d.Code == DiagnosticCatalogue.FoundryUnknown.Code) ? plan.Diagnostics : [];
        }

        Checked<CastingLever> casting = CastingLever.Of(finished, values, plan.Value);
        // The finished lever's own findings were told already.
        IEnumerable<Diagnostic> shape = casting.Diagnostics.Where(d => d.Severity == Severity.Error);
        return casting.Ok ? [.. plan.Diagnostics, .. Of(casting.Value, values)] : [.. plan.Diagnostics, .. shape];
    }

    public static IEnumerable<Diagnostic> Of(CastingLever casting, IFieldValues values)
    {
        ArgumentNullException.ThrowIfNull(casting);
        ArgumentNullException.ThrowIfNull(values);
        PatternLever pattern = PatternLever.Of(casting);
        return
        [
            .. CleanUp.Findings(pattern, values),
            .. SectionFindings.Of(casting, values),
            .. Stock(casting, values),
            .. MouldFindings.Of(pattern, values),
            .. Mark(casting, values),
            .. Metal(casting, values),
        ];
    }

    private static IEnumerable<Diagnostic> Stock(CastingLever casting, IFieldValues values)
    {
        foreach (FoundrySize size in FoundrySizes.Of(casting.Finished))
        {
            if (size is not { Kind: FoundrySizeKind.Outside, Faces: 2 })
                continue;
            Length raw = size.MeasureOn(casting.Shape), both = raw - size.Finished;
            if (both > size.Finished * MostStockShare)
            {
                SizeField field = CleanUp.FieldOf(size.Group);
                yield return DiagnosticCatalogue.StockBesideSection.At(values.PositionOf(field), field.Name, Mm(both / 2), size.Name, Mm(raw), Mm(size.Finished));
            }
        }
    }

    private static IEnumerable<Diagnostic> Mark(CastingLever casting, IFieldValues values)
    {
        if (casting.Shape.Mark is not { } mark)
            yield break;
        if (mark.Height.Millimetres < LeastMarkHeight)
            yield return Told(LeverFields.MarkHeight, $"stands {Mm(mark.Height)} high; below {LeastMarkHeight.ToString(CultureInfo.InvariantCulture)} mm it blurs (common practice; one gravity guide asks 1 mm)");
        if (mark.LetterHeight.Millimetres * StrokeByHeight < LeastLetterStroke)
            yield return Told(LeverFields.MarkLetterHeight, $"has letters {Mm(mark.LetterHeight)} high, with strokes below {LeastLetterStroke.ToString(CultureInfo.InvariantCulture)} mm (common practice)");
        if (mark.Place == LeverFields.ArmBack)
        {
            double half = StrokeLettering.WidthOf(mark.Text, mark.LetterHeight.Millimetres) / 2, low = (mark.Level ?? 0) - half;
            double over = casting.Shape.Side.ArmFaceLeft.End.Y - low;
            if (over > 0)
                yield return Told(LeverFields.MarkPlace, $"reaches {LeverFindings.Mm(over)} into the run-out of the pads' stock");
        }
        else
        {
            if (casting.Plan.Stock.Head > Length.Zero)
                yield return Told(LeverFields.MarkPlace, "stands on the head's side, which is machined: it would be cut off");
            if (MouldParting.Of(casting).Axis != DrawAxis.AlongPin)
                yield return Told(LeverFields.MarkPlace, "stands on the head's side, along the draw: it would tear the mould");
        }

        Diagnostic Told(FieldSpec field, string what) => DiagnosticCatalogue.MarkNotCastable.At(values.PositionOf(field), field.Name, what);
    }

    private static IEnumerable<Diagnostic> Metal(CastingLever casting, IFieldValues values)
    {
        if (!casting.Plan.Metal.IsBrittle)
            yield break;
        ChoiceField field = CastingFields.Metal;
        yield return DiagnosticCatalogue.BrittleMetal.At(values.PositionOf(field), field.Name, Mm(casting.Finished.Sizes[LeverFields.ArmThickness].Nominal), casting.Plan.Metal.Name);
    }

    private static string Mm(Length length) => LeverFindings.Mm(length.Millimetres);
}
