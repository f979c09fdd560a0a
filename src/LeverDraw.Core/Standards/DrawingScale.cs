using System.Globalization;

namespace LeverDraw.Standards;

/// <summary>A scale as drawn : true, such as 2:1. The default value is no scale; make it with the constructor.</summary>
public readonly record struct DrawingScale : IComparable<DrawingScale>
{
    /// <exception cref="ArgumentOutOfRangeException">A side is below 1.</exception>
    public DrawingScale(int drawn, int real)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(drawn, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(real, 1);
        Drawn = drawn;
        Real = real;
    }

    public static DrawingScale Full => new(1, 1);

    public int Drawn { get; }

    public int Real { get; }

    /// <summary>Paper length over true length.</summary>
    public double Factor => (double)Drawn / Real;

    /// <summary>As lettered on a sheet: <c>2:1</c>.</summary>
    public string Text => string.Create(CultureInfo.InvariantCulture, $"{Drawn}:{Real}");

    public int CompareTo(DrawingScale other) => Factor.CompareTo(other.Factor);

    public override string ToString() => Text;
}
