using LeverDraw.Drafting.Layout;

namespace LeverDraw.Drafting.Annotations;

/// <summary>The explicit list of annotation kinds and what makes their candidates.</summary>
internal static class AnnotationCandidates
{
    public static PlaceSet For(Annotation annotation, string id, PlacingContext context) => annotation switch
    {
        LinearDimension linear => LinearCandidates.For(linear, id, context),
        DimensionRun run => RunCandidates.For(run, id, context),
        ArcLengthDimension arc => ArcLengthCandidates.For(arc, id, context),
        DiameterDimension diameter => RadialCandidates.For(diameter, id, context),
        RadiusDimension radius => RadialCandidates.For(radius, id, context),
        AngleDimension angle => AngleCandidates.For(angle, id, context),
        SectionEnd end => SectionEndCandidates.For(end, context),
        MouldJoint joint => MouldJointCandidates.For(joint, context),
        ViewArrow arrow => ViewArrowCandidates.For(arrow, context),
        DetailLetter letter => RadialCandidates.For(letter, id, context),
        SurfaceTexture texture => SurfaceCandidates.For(texture, context),
        DatumFeature datum => SurfaceCandidates.For(datum, context),
        LeaderNote note => RadialCandidates.For(note, id, context),
        _ => throw new ArgumentOutOfRangeException(nameof(annotation), annotation, "Unknown kind of annotation."),
    };
}
