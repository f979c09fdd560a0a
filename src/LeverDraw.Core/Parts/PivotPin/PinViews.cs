using System.Collections.Immutable;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Symbols;
using LeverDraw.Drafting.Views;
using LeverDraw.Geometry;

namespace LeverDraw.Parts.PivotPin;

/// <summary>What is seen of a pin, in millimetres of the part.</summary>
public static class PinViews
{
    /// <summary>Rims nearer to each other than this would only blot (own rule), millimetres.</summary>
    private const double LeastGap = 0.1;

    /// <summary>Square to the axis, as the pin lies in the plane: the large end on its own side.</summary>
    public static ViewGeometry Side(Pin pin)
    {
        Transform2D turn = pin.LargeEndRight ? Transform2D.Identity : Transform2D.MirrorX;
        Contour outline = pin.LargeEndRight ? pin.Outline : pin.Outline.Transformed(turn).Reversed();
        double half = pin.Length.Millimetres / 2;
        List<ViewEdge> edges = [];
        if (pin.Ends != PinFields.Flat)
        {
            foreach (Point2D at in new[] { pin.LargeBase, pin.SmallBase })
                edges.Add(new(LineRole.Edge, new LineEdge(at, new(at.X, -at.Y)).Transformed(turn)));
        }

        edges.Add(new(LineRole.Centre, new LineEdge(new(-half, 0), new(half, 0))));
        return new ViewGeometry { Outlines = [new("pin-profile", outline)], Edges = [.. edges] };
    }

    /// <summary>On the large end.</summary>
    public static ViewGeometry LargeEnd(Pin pin) =>
        End(pin, pin.Ends == PinFields.Chamfered ? [pin.LargeBase.Y - (pin.Chamfer?.Millimetres ?? 0)] : []);

    /// <summary>On the small end: the large end's rim shows round it.</summary>
    public static ViewGeometry SmallEnd(Pin pin) =>
        End(pin, pin.Ends == PinFields.Chamfered ? [pin.SmallBase.Y, pin.SmallBase.Y - (pin.Chamfer?.Millimetres ?? 0)] : [pin.SmallBase.Y]);

    private static ViewGeometry End(Pin pin, ImmutableArray<double> rims)
    {
        double outer = pin.LargeBase.Y;
        return new ViewGeometry
        {
            Outlines = [new("pin-end", Contour.Circle(Point2D.Origin, outer), Point2D.Origin)],
            Edges =
            [
                .. rims.Where(r => outer - r >= LeastGap).Select(r => new ViewEdge(LineRole.Edge, ArcEdge.FullCircle(Point2D.Origin, r))),
                .. CentreMark.Through(Point2D.Origin, outer).Select(line => new ViewEdge(LineRole.Centre, line)),
            ],
        };
    }
}
