namespace LeverDraw.Parts.AdjustingLever;

/// <summary>The mid-line of curved arms: an arc from the pivot down to the top of the pad, running along the arms there.</summary>
/// <param name="Radius">Of the mid-line, millimetres.</param>
/// <param name="PadShift">How far the pad lies from the pivot's line toward −n; negative for a negative sagitta.</param>
internal readonly record struct CurvedArm(double Radius, double PadShift)
{
    /// <summary>Solves for the arc of drop H = ρ·sin θ and sagitta s = ρ·(1 − cos θ/2).</summary>
    /// <remarks>With u = tan θ/4: s/H = u(1 + u²) / (2(1 − u²)), so u³ + 2ku² + u − 2k = 0 with k = s/H. Its left side rises for u ≥ 0, k ≥ 0, so Newton from u = 2k, which lies above the root where the curve is convex, comes down to it.</remarks>
    /// <param name="sagitta">Not zero; its sign is the pads' side.</param>
    public static CurvedArm From(double drop, double sagitta)
    {
        double k = Math.Abs(sagitta) / drop;
        double u = 2 * k;
        for (int i = 0; i < 50; i++)
        {
            double step = ((((((u + (2 * k)) * u) + 1) * u) - (2 * k)) / ((((3 * u) + (4 * k)) * u) + 1));
            u -= step;
            if (Math.Abs(step) <= 1e-16)
                break;
        }

        double theta = 4 * Math.Atan(u);
        double radius = drop / Math.Sin(theta);
        double half = Math.Sin(theta / 2);
        return new CurvedArm(radius, Math.Sign(sagitta) * radius * 2 * half * half);
    }
}
