using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Layout;

/// <summary>How evenly a sheet is filled, as one number: better is more. Prices are our own choice, tuned by looking at sheets.</summary>
internal static class SheetBalance
{
    /// <summary>Squares of the coarse grid along the longer side of the field.</summary>
    private const int Squares = 32;

    /// <summary>Of the common middle of all blocks lying off the field's middle by the field's whole size.</summary>
    private const double OffCentre = 1.0;

    /// <summary>Of the notes standing at the top of the sheet instead of near the title block.</summary>
    private const double HighNotes = 0.25;

    /// <param name="notes">The box of the notes.</param>
    /// <param name="least">What does not reach this is not worked out to the end: some number not above it is given.</param>
    public static double Of(Box2D field, Box2D title, ReadOnlySpan<Box2D> blocks, Box2D notes, double least = double.NegativeInfinity)
    {
        double area = title.Width * title.Height;
        Vector2D pull = (title.Centre - field.Centre) * area;
        foreach (Box2D box in blocks)
        {
            double own = box.Width * box.Height;
            area += own;
            pull += (box.Centre - field.Centre) * own;
        }

        double off = ((Math.Abs(pull.X) / field.Width) + (Math.Abs(pull.Y) / field.Height)) / area;
        double high = (notes.Centre.Y - field.MinY) / field.Height;
        double most = -(OffCentre * off) - (HighNotes * high);
        return most < least - 1e-9 ? most : -(LargestEmptySquare(field, title, blocks) / Math.Min(field.Width, field.Height)) - (OffCentre * off) - (HighNotes * high);
    }

    /// <summary>Side of the largest square of the field that no box touches, to the pitch of a coarse grid.</summary>
    private static double LargestEmptySquare(Box2D field, Box2D title, ReadOnlySpan<Box2D> blocks)
    {
        double pitch = Math.Max(field.Width, field.Height) / Squares;
        int columns = Math.Min(Squares, (int)(field.Width / pitch));
        int rows = Math.Min(Squares, (int)(field.Height / pitch));
        Span<ulong> taken = stackalloc ulong[rows];
        Take(taken, title, field, pitch, columns);
        foreach (Box2D box in blocks)
            Take(taken, box, field, pitch, columns);

        // Where the lower left corner of an empty square of a side can lie: one larger fits where four of the last one do.
        ulong all = ((1UL << columns) - 1) << 1;
        for (int r = 0; r < rows; r++)
            taken[r] = ~taken[r] & all;
        int largest = 0;
        for (Span<ulong> corners = taken; HasAny(corners); corners = corners[..^1])
        {
            largest++;
            for (int r = 0; r + 1 < corners.Length; r++)
                corners[r] &= (corners[r] >> 1) & corners[r + 1] & (corners[r + 1] >> 1);
        }

        return largest * pitch;
    }

    private static bool HasAny(ReadOnlySpan<ulong> rows) => rows.ContainsAnyExcept(0UL);

    /// <summary>Marks a box's squares; the square in column c is bit c + 1.</summary>
    private static void Take(Span<ulong> taken, Box2D box, Box2D field, double pitch, int columns)
    {
        int c0 = Math.Clamp((int)((box.MinX - field.MinX) / pitch), 0, columns - 1);
        int c1 = Math.Clamp((int)((box.MaxX - field.MinX) / pitch), 0, columns - 1);
        int r0 = Math.Clamp((int)((box.MinY - field.MinY) / pitch), 0, taken.Length - 1);
        int r1 = Math.Clamp((int)((box.MaxY - field.MinY) / pitch), 0, taken.Length - 1);
        ulong bits = ((2UL << c1) - (1UL << c0)) << 1;
        for (int r = r0; r <= r1; r++)
            taken[r] |= bits;
    }
}
