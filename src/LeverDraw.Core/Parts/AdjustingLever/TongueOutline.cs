using LeverDraw.Geometry;
using LeverDraw.Parts.Outlines;

namespace LeverDraw.Parts.AdjustingLever;

/// <summary>The tongue's two flanks and its nose, as carriers ready to be joined to the head.</summary>
/// <param name="Lower">Flank at +t, facing the pads, travelling out to the nose.</param>
/// <param name="Upper">Flank at −t, travelling back to the head.</param>
internal sealed record TongueOutline(TongueFrame Frame, Edge Lower, Edge Upper, Point2D NoseCentre, double NoseRadius)
{
    public static TongueOutline Of(LeverMeasures m)
    {
        TongueFrame frame = TongueFrame.Of(m.Sweep);
        (double sin, double cos) = Math.SinCos(m.FlankTaper);
        double half = m.TongueThickness / 2;
        // Where the flanks' half thickness is stated: at the nose centre, or half a bulb behind it.
        double level = m.TongueForm == LeverFields.Bulb ? m.TongueLength - half : m.TongueLength;
        double there = m.TongueForm == LeverFields.Bulb ? m.NeckThickness / 2 : half;
        Edge lower = Carriers.Line(frame.At(level, there), (frame.Along * cos) - (frame.Across * sin));
        Edge upper = Carriers.Line(frame.At(level, -there), -((frame.Along * cos) + (frame.Across * sin)));
        Point2D nose = frame.At(m.TongueLength, 0);
        return m.TongueForm switch
        {
            // A circle about a point of the mid-line touches both flanks when its radius is the half thickness there times cos g.
            LeverFields.GearTooth => new(frame, lower, upper, nose, half * cos),
            LeverFields.Cam => new(frame, CamFlank(m, frame, half, half * cos), upper, nose, half * cos),
            LeverFields.Bulb => new(frame, lower, upper, nose, half),
            _ => new(frame, lower, upper, nose, m.NoseCorner),
        };
    }

    /// <summary>Adds flank, nose and flank up to where the upper flank begins; the path stands on the lower flank.</summary>
    /// <returns>False when a bulb has no fillet of this radius.</returns>
    public bool Follow(OutlinePath path, LeverMeasures m)
    {
        switch (m.TongueForm)
        {
            case LeverFields.Parallel:
                double end = m.TongueLength + (m.TongueThickness / 2), half = m.TongueThickness / 2;
                path.Along("flank-lower", Lower, Frame.At(end - NoseRadius, half));
                path.Turn("nose-corner-lower", Frame.At(end - NoseRadius, half - NoseRadius), Frame.At(end, half - NoseRadius), true);
                path.Along("nose-end", Carriers.Line(Frame.At(end, 0), -Frame.Across), Frame.At(end, NoseRadius - half));
                path.Turn("nose-corner-upper", Frame.At(end - NoseRadius, NoseRadius - half), Frame.At(end - NoseRadius, -half), true);
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
                path.Along("flank-lower", Lower, Lower is ArcEdge cam ? NoseCentre - ((cam.Centre - NoseCentre).Unit() * NoseRadius) : Carriers.Foot(Lower, NoseCentre));
                path.Along("nose", Carriers.Circle(NoseCentre, NoseRadius, true), Carriers.Foot(Upper, NoseCentre));
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
