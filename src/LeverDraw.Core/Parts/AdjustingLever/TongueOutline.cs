using LeverDraw.Geometry;
using LeverDraw.Parts.Outlines;

namespace LeverDraw.Parts.AdjustingLever;

/// <summary>The tongue's two flanks and its nose, as carriers ready to be joined to the head.</summary>
/// <param name="Lower">Flank at +t, facing the pads, travelling out to the nose.</param>
/// <param name="Upper">Flank at −t, travelling back to the head.</param>
/// <param name="Level">How far out along the mid-line the flanks' thickness is stated: at the nose centre, or half a bulb behind it.</param>
/// <param name="NoseRadius">Of the round nose, or of a parallel tongue's corners.</param>
/// <param name="Stock">Laid on the nose and, but for a bulb, on the flanks.</param>
internal sealed record TongueOutline(TongueFrame Frame, Edge Lower, Edge Upper, Point2D NoseCentre, double Level, double NoseRadius, double Stock = 0)
{
    public static TongueOutline Of(LeverMeasures m)
    {
        TongueFrame frame = TongueFrame.Of(m.Sweep);
        (double sin, double cos) = Math.SinCos(m.FlankTaper);
        double half = m.TongueThickness / 2;
        double level = m.TongueForm == LeverFields.Bulb ? m.TongueLength - half : m.TongueLength;
        double there = m.TongueForm == LeverFields.Bulb ? m.NeckThickness / 2 : half;
        Edge lower = Carriers.Line(frame.At(level, there), (frame.Along * cos) - (frame.Across * sin));
        Edge upper = Carriers.Line(frame.At(level, -there), -((frame.Along * cos) + (frame.Across * sin)));
        Point2D nose = frame.At(m.TongueLength, 0);
        return m.TongueForm switch
        {
            // A circle about a point of the mid-line touches both flanks when its radius is the half thickness there times cos g.
            LeverFields.GearTooth => new(frame, lower, upper, nose, level, half * cos),
            LeverFields.Cam => new(frame, CamFlank(m, frame, half, half * cos), upper, nose, level, half * cos),
            LeverFields.Bulb => new(frame, lower, upper, nose, level, half),
            _ => new(frame, lower, upper, nose, level, m.NoseCorner),
        };
    }

    /// <summary>The same with stock, every face parallel to the finished one.</summary>
    public TongueOutline With(double stock, string form) => form == LeverFields.Bulb
        ? this with { NoseRadius = NoseRadius + stock, Stock = stock }
        : this with { Lower = Carriers.Beside(Lower, -stock)!, Upper = Carriers.Beside(Upper, -stock)!, NoseRadius = NoseRadius + stock, Stock = stock };

    /// <summary>Where the lower flank reaches the nose, on all forms but a bulb.</summary>
    public Point2D LowerEnd(LeverMeasures m) =>
        m.TongueForm == LeverFields.Parallel ? Frame.At(End(m) - NoseRadius, (m.TongueThickness / 2) + Stock)
        : Lower is ArcEdge cam ? NoseCentre - ((cam.Centre - NoseCentre).Unit() * NoseRadius)
        : Carriers.Foot(Lower, NoseCentre);

    /// <summary>Where the upper flank leaves the nose.</summary>
    public Point2D UpperStart(LeverMeasures m) =>
        m.TongueForm == LeverFields.Parallel ? Frame.At(End(m) - NoseRadius, -(m.TongueThickness / 2) - Stock) : Carriers.Foot(Upper, NoseCentre);

    private double End(LeverMeasures m) => m.TongueLength + (m.TongueThickness / 2) + Stock;

    /// <summary>Adds flank, nose and flank up to where the upper flank begins; the path stands on the lower flank.</summary>
    /// <returns>False when a bulb has no fillet of this radius.</returns>
    public bool Follow(OutlinePath path, LeverMeasures m)
    {
        switch (m.TongueForm)
        {
            case LeverFields.Parallel:
                double end = End(m), half = (m.TongueThickness / 2) + Stock;
                path.Along("flank-lower", Lower, LowerEnd(m));
                path.Turn("nose-corner-lower", Frame.At(end - NoseRadius, half - NoseRadius), Frame.At(end, half - NoseRadius), true);
                path.Along("nose-end", Carriers.Line(Frame.At(end, 0), -Frame.Across), Frame.At(end, NoseRadius - half));
                path.Turn("nose-corner-upper", Frame.At(end - NoseRadius, NoseRadius - half), UpperStart(m), true);
                return true;
            case LeverFields.Bulb:
                Edge circle = Carriers.Circle(NoseCentre, NoseRadius, true);
                if (m.NeckFillet == 0)
                {
                    if (Carriers.Meet(Lower, circle, Point2D.Origin) is not { } into || Carriers.Meet(Upper, circle, Point2D.Origin) is not { } out0)
                        return false;
                    path.Along("flank-lower", Lower, into);
                    path.Along("nose", circle, out0);
                    return true;
                }

                if (Blend.Between(Lower, circle, m.NeckFillet, true, Point2D.Origin) is not { } first
                    || Blend.Between(circle, Upper, m.NeckFillet, true, Point2D.Origin) is not { } second)
                {
                    return false;
                }

                path.Along("flank-lower", Lower, first.From);
                path.Blend("neck-fillet-lower", first);
                path.Along("nose", circle, second.From);
                path.Blend("neck-fillet-upper", second);
                return true;
            default:
                path.Along("flank-lower", Lower, LowerEnd(m));
                path.Along("nose", Carriers.Circle(NoseCentre, NoseRadius, true), UpperStart(m));
                return true;
        }
    }

    /// <summary>The convex circle of radius R through (Lt, h) that holds the nose circle of radius r and touches it from outside.</summary>
    /// <remarks>With its centre at R − r from the nose centre in direction φ, |centre − (Lt, h)| = R gives sin φ = (h² + r² − 2Rr) / (2(R − r)h); the centre lies behind the nose.</remarks>
    private static ArcEdge CamFlank(LeverMeasures m, TongueFrame frame, double h, double r)
    {
        double radius = m.CamRadius, back = radius - r;
        double sin = Math.Max(-1, ((h * h) + (r * r) - (2 * radius * r)) / (2 * back * h));
        double cos = -Math.Sqrt(1 - (sin * sin));
        return Carriers.Circle(frame.At(m.TongueLength + (back * cos), back * sin), radius, true);
    }
}
