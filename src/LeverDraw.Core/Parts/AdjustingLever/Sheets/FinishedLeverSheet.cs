using System.Collections.Immutable;
using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Completeness;
using LeverDraw.Drafting.Dimensions;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Drafting.Views;
using LeverDraw.Geometry;
using LeverDraw.Profiles;

namespace LeverDraw.Parts.AdjustingLever.Sheets;

/// <summary>The machinist's sheet of the finished lever: fork view in front, side view from the right, section through the pin's axis, nose and pad enlarged, the tongue in true shape.</summary>
public static class FinishedLeverSheet
{
    public const string Kind = "finished";

    /// <summary>Below twice full size bosses of half a millimetre and the hole's taper are lost in the lines' width (own rule).</summary>
    private const double ReadableSection = 2;

    public static SheetContent Content(Lever lever, Profile profile, SheetOptions options)
    {
        var text = new DimensionText(options.Units, options.Tolerances);
        double half = lever.Hole.HalfLength.Millimetres;
        ImmutableArray<Annotation> cut =
        [
            new SectionEnd("section.left", LeverLetters.Section, new Point2D(-half, 0), new Vector2D(-1, 0), new Vector2D(0, -1)),
            new SectionEnd("section.right", LeverLetters.Section, new Point2D(half, 0), new Vector2D(1, 0), new Vector2D(0, -1)),
        ];
        ViewSource fork = Of("fork", null, LeverViews.Fork(lever), [.. LeverForkAnnotations.Of(lever, text), .. cut]);
        ViewSource Dressed(ViewSource view) => view with { Annotations = LeverSymbols.Dress(view.Annotations, lever, text) };
        return new SheetContent(
            Kind,
            PartState.Finished,
            Dressed(fork),
            [Dressed(Side(lever, text))],
            [],
            [.. Others(lever, text).Select(Dressed)],
            LeverNotes.Finished(lever, profile, text),
            SheetTitle.Of(profile, "ADJUSTING LEVER", "PART DRAWING, FINISHED PART", LeverNotes.GeneralTolerance, options.Units))
        {
            Signs = LeverSymbols.General(text),
            NotedSizes = LeverNotes.Sizes(lever),
        };
    }

    /// <summary>The sizes of <see cref="Content"/>, in its order, without drawing the views.</summary>
    internal static ImmutableArray<SheetSize> Sizes(Lever lever)
    {
        var text = new DimensionText(ShownUnits.Millimetres);
        IEnumerable<Annotation> said =
        [
            .. LeverForkAnnotations.Of(lever, text), .. LeverSideAnnotations.Of(lever, text, curveNoted: true), .. LeverSection.Annotations(lever, text),
            .. LeverNoseDetail.Of(lever, text).Annotations, .. LeverPadDetail.Of(lever, text).Annotations,
        ];
        if (LeverTongueView.IsNeeded(lever))
            said = said.Append(LeverTongueView.Width(lever, text, 0, DimensionSides.Left));
        return SheetSizes.Of(said, LeverNotes.Sizes(lever));
    }

    private static ViewSource Side(Lever lever, DimensionText text)
    {
        ViewSource side = Of("side", null, LeverViews.Side(lever), LeverSideAnnotations.Of(lever, text, curveNoted: true));
        return side with { Edges = [.. side.Edges, LeverNoseDetail.Mark(lever), LeverPadDetail.Mark(lever)] };
    }

    private static ImmutableArray<ViewSource> Others(Lever lever, DimensionText text)
    {
        ImmutableArray<ViewSource> details = [Section(lever, text), Nose(lever, text), LeverPadDetail.Of(lever, text)];
        return LeverTongueView.IsNeeded(lever) ? details.Add(LeverTongueView.Of(lever, text)) : details;
    }

    private static ViewSource Nose(Lever lever, DimensionText text)
    {
        ViewSource nose = LeverNoseDetail.Of(lever, text);
        return LeverSymbols.NoseEnd(lever) is { } end ? nose with { Annotations = [.. nose.Annotations, end] } : nose;
    }

    /// <summary>The cut face is no outline to cut along: its loops go out as edges.</summary>
    private static ViewSource Section(Lever lever, DimensionText text)
    {
        ViewGeometry cut = LeverViews.SectionThroughPin(lever);
        ImmutableArray<ViewEdge> faces = [.. cut.Outlines.SelectMany(o => o.Contour.Edges).Select(e => new ViewEdge(LineRole.Section, e))];
        return Of("section", LeverLetters.Caption(LeverLetters.Section), cut with { Outlines = [], Edges = [.. faces, .. cut.Edges] }, LeverSection.Annotations(lever, text)) with { IsMain = false, ReadableFrom = ReadableSection };
    }

    private static ViewSource Of(string id, string? title, ViewGeometry seen, ImmutableArray<Annotation> annotations) =>
        new(id, title) { Outlines = seen.Outlines, Edges = seen.Edges, Hatching = seen.Hatching, Annotations = annotations };
}
