using LeverDraw.Drafting.Layout;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Annotations;

/// <summary>Where a run of dimensions may stand: in tiers outside the view, on either side, the whole run at once.</summary>
internal static class RunCandidates
{
    private const int Tiers = 6;

    public static PlaceSet For(DimensionRun run, string id, PlacingContext context)
    {
        Vector2D u = Vector2D.FromAngle(context.ToBlock.ApplyToDirection(run.Direction));
        if (Math.Abs(u.X) < 1e-12 || Math.Abs(u.Y) < 1e-12)
            u = new Vector2D(Math.Round(u.X), Math.Round(u.Y));
        (double low, double high) = context.Extent(u.Left);
        bool mirrored = context.ToBlock.Mirrored;
        var all = new List<Candidate>(2 * Tiers);
        for (int tier = 0; tier < Tiers; tier++)
        {
            double away = context.Style.FirstTier + (tier * context.Style.TierSpacing);
            if (run.Sides.HasFlag(mirrored ? DimensionSides.Right : DimensionSides.Left))
                all.Add(At(new RunFrame(run, id, context, u, 1), high + away, tier * 3.0));
            if (run.Sides.HasFlag(mirrored ? DimensionSides.Left : DimensionSides.Right))
                all.Add(At(new RunFrame(run, id, context, u, -1), low - away, tier * 3.0));
        }

        return new ReadyPlaces(all);
    }

    private static Candidate At(RunFrame frame, double level, double cost)
    {
        switch (frame.Form)
        {
            case RunForm.Chain:
                ChainRun.Draw(frame, level);
                break;
            case RunForm.Baseline:
                BaselineRun.Draw(frame, level);
                break;
            default:
                OrdinateRun.Draw(frame, level);
                break;
        }

        return frame.Finish(cost);
    }
}
