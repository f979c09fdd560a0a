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
            all.Add(new LeaderNote(PinFields.Taper.Name, pin.Taper.Rate, new Label([TaperSign.Character(apexRight: side < 0) + " " + DimensionText.TaperRatio(pin.Taper)]), [OnSide(pin, side, 0.3, 1), OnSide(pin, side, 0.65, 1)])
            {
                Outward = [new Vector2D(0, 1), new Vector2D(0, 1)],
            });
        }

        all.AddRange(Ends(pin, text, half, side));
        return all.ToImmutable();
    }

    private static IEnumerable<Annotation> GaugePlane(Pin pin, double half, int side, DimensionText text)
    {
        double at = side * (half - pin.GaugePlane.Millimetres);
        double r = pin.Gauge.Millimetres / 2;
        yield return new LinearDimension(PinFields.GaugePlane.Name, pin.GaugePlane.Millimetres, text.Basic(pin.GaugePlane), new Point2D(at, r), new Point2D(side * half, pin.LargeBase.Y), 0)
        {
            Sides = DimensionSides.Left,
        };
        yield return new LinearDimension("pin.gauge_diameter", pin.Gauge.Millimetres, text.LimitsOnly(pin.GaugeSize, "⌀"), new Point2D(at, -r), new Point2D(at, r), LinearDimension.Upright) { Sides = default, Slide = (0, 0) };
    }

    private static IEnumerable<Annotation> Ends(Pin pin, DimensionText text, double half, int side)
    {
        if (pin.CrownRadius is { } crown)
        {
            ImmutableArray<ArcEdge> arcs = [.. pin.OutlineEdges.OfType<ArcEdge>().Select(a => side > 0 ? a : a.Transformed(Transform2D.MirrorX))];
            yield return new RadiusDimension(PinFields.CrownRadius.Name, crown.Millimetres, text.Size(crown, "2× R"), arcs) { MaterialAtCentre = true };
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
