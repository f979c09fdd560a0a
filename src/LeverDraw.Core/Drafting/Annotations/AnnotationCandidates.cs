using LeverDraw.Drafting.Layout;

namespace LeverDraw.Drafting.Annotations;

/// <summary>The explicit list of annotation kinds and what makes their candidates.</summary>
internal static class AnnotationCandidates
{
    public static List<Candidate> For(Annotation annotation, string id, PlacingContext context)
    {
        List<Candidate> all = Places(annotation, id, context);
        foreach (Candidate candidate in all)
            candidate.Surcharge(context.SprawlOf(candidate.Bounds));
        return all;
    }

    private static List<Candidate> Places(Annotation annotation, string id, PlacingContext context) => annotation switch
    {
        LinearDimension linear => LinearCandidates.For(linear, id, context),
        DiameterDimension diameter => RadialCandidates.For(diameter with { Label = diameter.Label.Stacked() }, id, context),
        RadiusDimension radius => RadialCandidates.For(radius with { Label = radius.Label.Stacked() }, id, context),
        AngleDimension angle => AngleCandidates.For(angle, id, context),
        SectionEnd end => SectionEndCandidates.For(end, context),
        ViewArrow arrow => ViewArrowCandidates.For(arrow, context),
        DetailLetter letter => RadialCandidates.For(letter, id, context),
        LeaderNote note => RadialCandidates.For(note, id, context),
        _ => throw new ArgumentOutOfRangeException(nameof(annotation), annotation, "Unknown kind of annotation."),
    };
}
