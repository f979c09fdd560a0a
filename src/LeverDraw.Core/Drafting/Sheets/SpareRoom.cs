using LeverDraw.Drafting.Layout;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Sheets;

/// <summary>The white round a block that has its place: it may use what lies between it and its neighbours beyond the least gap, and half of it where the neighbour may too.</summary>
internal static class SpareRoom
{
    /// <summary>How far a block may grow on a side, millimetres: a lone label farther out would look lost.</summary>
    private const double Most = 12;

    /// <summary>The box that one of several may use, on the sheet.</summary>
    /// <param name="boxes">What all blocks take, and the title block, on the sheet: first those that may grow.</param>
    /// <param name="growing">How many may grow.</param>
    /// <param name="inside">What none may leave.</param>
    public static Box2D Of(int block, ReadOnlySpan<Box2D> boxes, int growing, Box2D inside)
    {
        Box2D own = boxes[block];
        double left = Math.Min(Most, own.MinX - inside.MinX), right = Math.Min(Most, inside.MaxX - own.MaxX);
        double below = Math.Min(Most, own.MinY - inside.MinY), above = Math.Min(Most, inside.MaxY - own.MaxY);
        for (int i = 0; i < boxes.Length; i++)
        {
            if (i == block)
                continue;
            Box2D other = boxes[i];
            double toRight = other.MinX - own.MaxX, toLeft = own.MinX - other.MaxX;
            double up = other.MinY - own.MaxY, down = own.MinY - other.MaxY;
            // A neighbour cornerwise is minded the way in which it is farther off, and need not be in the other.
            double most = Math.Max(Math.Max(toRight, toLeft), Math.Max(up, down));
            double share = (most - Cell.Gap) * (i < growing ? 0.5 : 1);
            if (most == toRight)
                right = Math.Min(right, share);
            else if (most == toLeft)
                left = Math.Min(left, share);
            else if (most == up)
                above = Math.Min(above, share);
            else
                below = Math.Min(below, share);
        }

        return new Box2D(own.MinX - Math.Max(0, left), own.MinY - Math.Max(0, below), own.MaxX + Math.Max(0, right), own.MaxY + Math.Max(0, above));
    }
}
