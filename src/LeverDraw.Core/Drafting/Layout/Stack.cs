namespace LeverDraw.Drafting.Layout;

/// <summary>How the pieces of a stack stand: a single piece, one below the other, or side by side.</summary>
internal enum Way : byte
{
    Piece,
    Down,
    Across,
}

/// <summary>The room one stack of a sheet's pieces takes, and from which two smaller stacks it was put together; for a single piece, which of its forms it is.</summary>
/// <param name="Width">Millimetres.</param>
/// <param name="Height">Millimetres.</param>
/// <param name="FirstSet">The pieces of the stack above or to the left, a bit each.</param>
/// <param name="First">Which of that subset's stacks it is, or the piece's form.</param>
/// <param name="RestSet">The pieces of the other.</param>
/// <param name="Rest">Which of that subset's stacks it is.</param>
internal readonly record struct Stack(double Width, double Height, Way Way, ushort FirstSet, ushort First, ushort RestSet, ushort Rest)
{
    public static Stack Of(Cell piece, int form) => new(piece.MinWidth, piece.MinHeight, Way.Piece, 0, (ushort)form, 0, 0);

    /// <summary>The room of this above another.</summary>
    public (double Width, double Height) Above(in Stack other) => (double.MaxNative(Width, other.Width), Height + Cell.Gap + other.Height);

    /// <summary>The room of this with another to its right.</summary>
    public (double Width, double Height) Before(in Stack other) => (Width + Cell.Gap + other.Width, double.MaxNative(Height, other.Height));
}
