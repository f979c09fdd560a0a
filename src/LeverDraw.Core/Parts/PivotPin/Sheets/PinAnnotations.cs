using System.Collections.Immutable;
using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Dimensions;
using LeverDraw.Drafting.Symbols;
using LeverDraw.Geometry;
using LeverDraw.Profiles;
using LeverDraw.Units;

namespace LeverDraw.Parts.PivotPin.Sheets;

/// <summary>What the pin's long view says. A tapered pin is sized where it is checked: in its gauge plane, which a boxed size places (ISO 3040, from memory); both ends follow in brackets.</summary>
internal static class PinAnnotations
{
    /// <summary>Shares of the length, from the large end, at which the ratio's leader may stand: between the gauge plane, usually the middle, and the large end; the texture sign has the other half.</summary>
    private static readonly ImmutableArray<double> _ratioPlaces = [0.3, 0.2, 0.14];

    public static ImmutableArray<Annotation> Of(Pin pin, DimensionText text)
    {
        var all = ImmutableArray.CreateBuilder<Annotation>();
        double half = pin.Length.Millimetres / 2;
        int side = pin.LargeEndRight ? 1 : -1;
        all.Add(new LinearDimension(PinFields.Length.Name, pin.Length.Millimetres, text.Size(pin.Length), new Point2D(-half, -pin.SmallBase.Y), new Point2D(half, -pin.SmallBase.Y), 0)
        {
            Sides = DimensionSides.Right,
        });

        if (pin.Taper.IsParallel)
        {
            all.Add(Diameter("pin.large_end", pin.LargeEnd, side * half, side, text.Size(pin.NamedSize, "⌀")));
        }
        else
        {
            Label atEnd = text.Size(pin.GaugeSize, "⌀");
            all.Add(Diameter("pin.large_end", pin.LargeEnd, side * half, side, pin.GaugedAt == 0 ? atEnd : text.FineReference(pin.LargeEnd, "⌀")));
            all.Add(Diameter("pin.small_end", pin.SmallEnd, -side * half, -side, pin.GaugedAt == 1 ? atEnd : text.FineReference(pin.SmallEnd, "⌀")));
            if (pin.GaugedAt is null)
                all.AddRange(GaugePlane(pin, half, side, text));
            all.Add(Ratio(pin, side));
        }

        all.AddRange(Ends(pin, text, half, side));
        return all.ToImmutable();
    }

    /// <summary>The gauged diameter's tolerance holds anywhere along an exact cone, so the ratio is exact too and its general tolerance does not apply: boxed (ISO 3040, from memory).</summary>
    private static LeaderNote Ratio(Pin pin, int side)
    {
        string sign = TaperSign.Character(apexRight: side < 0) + " ";
        ImmutableArray<Point2D> targets = [.. _ratioPlaces.Select(share => OnSide(pin, side, share, 1))];
        return new LeaderNote(PinFields.Taper.Name, pin.Taper.Rate, new Label([sign + DimensionText.TaperRatio(pin.Taper)], Boxed: true) { BoxedFrom = sign.Length }, targets)
        {
            Outward = [.. targets.Select(_ => new Vector2D(0, 1))],
        };
    }

    private static IEnumerable<Annotation> GaugePlane(Pin pin, double half, int side, DimensionText text)
    {
        double at = side * (half - pin.GaugePlane.Millimetres);
        double r = pin.Gauge.Millimetres / 2;
        // On the length's side: above, its extension line would run on from the gauged diameter's own line.
        yield return new LinearDimension(PinFields.GaugePlane.Name, pin.GaugePlane.Millimetres, text.Basic(pin.GaugePlane), new Point2D(at, -r), new Point2D(side * half, -pin.LargeBase.Y), 0)
        {
            Sides = DimensionSides.Right,
        };
        yield return new LinearDimension("pin.gauge_diameter", pin.Gauge.Millimetres, text.LimitsOnly(pin.GaugeSize, "⌀"), new Point2D(at, -r), new Point2D(at, r), LinearDimension.Upright) { Sides = default, Slide = (0, 0) };
    }

    private static IEnumerable<Annotation> Ends(Pin pin, DimensionText text, double half, int side)
    {
        if (pin.CrownRadius is { } crown)
        {
            // By its middle: at its ends the extension lines of the length and the end's diameter begin.
            ImmutableArray<ArcEdge> arcs = [.. pin.OutlineEdges.OfType<ArcEdge>().Select(a => MiddleOf(side > 0 ? a : a.Transformed(Transform2D.MirrorX)))];
            yield return new RadiusDimension(PinFields.CrownRadius.Name, crown.Millimetres, text.Size(crown, "2× R"), arcs) { MaterialAtCentre = true, OnlyFromOutside = true };
        }
        else if (pin.Chamfer is { } chamfer)
        {
            double middle = chamfer.Millimetres / 2;
            Vector2D off = new Vector2D(1, 1).Unit();
            yield return new LeaderNote(PinFields.Chamfer.Name, chamfer.Millimetres, text.Size(chamfer, "2× ", " × 45°"), [new Point2D(side * (half - middle), pin.LargeBase.Y - middle), new Point2D(side * (middle - half), pin.SmallBase.Y - middle)])
            {
                Outward = [new Vector2D(side * off.X, off.Y), new Vector2D(-side * off.X, off.Y)],
            };
        }
    }

    private static ArcEdge MiddleOf(ArcEdge arc) => arc with { StartAngle = arc.StartAngle + (arc.Sweep / 4), Sweep = arc.Sweep / 2 };

    private static LinearDimension Diameter(string name, Length diameter, double x, int outward, Label label)
    {
        double r = diameter.Millimetres / 2;
        return new LinearDimension(name, diameter.Millimetres, label, new Point2D(x, -r), new Point2D(x, r), LinearDimension.Upright)
        {
            Sides = outward > 0 ? DimensionSides.Right : DimensionSides.Left,
        };
    }

    /// <summary>A point on the pin's upper or lower side, a share of its length from the large end.</summary>
    private static Point2D OnSide(Pin pin, int side, double share, int up)
    {
        Length from = pin.Length.Nominal * share;
        return new Point2D(side * ((pin.Length.Millimetres / 2) - from.Millimetres), up * pin.DiameterAt(from).Millimetres / 2);
    }
}
