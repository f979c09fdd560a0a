using System.Collections.Immutable;
using LeverDraw.Drafting.Dimensions;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Drafting.Views;
using LeverDraw.Profiles;
using LeverDraw.Standards;
using LeverDraw.Tolerancing;

namespace LeverDraw.Parts.PivotPin.Sheets;

/// <summary>The pin's sheet: long view as the pin lies in the plane, the view on its right end, sizes of both ends, tools. A turned part needs no view on its other end, and the crown's radius needs the room.</summary>
public static class PinSheet
{
    public const string Kind = "pin";

    public static SheetContent Content(Pin pin, Profile profile, SheetOptions options)
    {
        var text = new DimensionText(options.Units, options.Tolerances);
        ViewGeometry seen = PinViews.Side(pin);
        var side = new ViewSource("long", null)
        {
            Outlines = seen.Outlines,
            Edges = seen.Edges,
            Annotations = [.. PinAnnotations.Of(pin, text), .. PinSymbols.Of(pin)],
        };
        return new SheetContent(
            Kind,
            PartState.Pin,
            side,
            [End("right-end", pin.LargeEndRight ? PinViews.LargeEnd(pin) : PinViews.SmallEnd(pin))],
            [],
            [],
            PinNotes.Of(pin, profile, text),
            SheetTitle.Of(profile, "PIVOT PIN", "PART DRAWING, FINISHED PART", new GeneralTolerance(GeneralToleranceClass.Medium).Text, options.Units))
        {
            Signs = PinSymbols.General(pin, text),
            Tables = PinTools.Of(pin, text) is { } tools ? [tools] : [],
        };
    }

    /// <summary>An end view says nothing of its own and is no outline to cut along.</summary>
    private static ViewSource End(string id, ViewGeometry seen) => new(id, null)
    {
        Edges = [.. seen.Outlines.SelectMany(o => o.Contour.Edges).Select(e => new ViewEdge(LineRole.Edge, e)), .. seen.Edges],
    };
}
