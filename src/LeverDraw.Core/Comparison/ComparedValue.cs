using LeverDraw.Geometry;
using LeverDraw.Profiles;
using LeverDraw.Units;

namespace LeverDraw.Comparison;

/// <summary>What one variant has in a row of the comparison: a size, an angle, a taper, a roughness, a word or a figure, and nothing else.</summary>
public abstract record ComparedValue
{
    /// <summary>The profile's value, its default included; null when the field is absent or does not apply.</summary>
    public static ComparedValue? Of(FieldSpec field, IFieldValues values)
    {
        if (field.OnlyWhen is { } when && !when.Values.Contains(values.Get(when.Choice)))
            return null;
        return field switch
        {
            SizeField size => values.Find(size) is { } found ? new ComparedSize(found) : null,
            AngleField angle => new ComparedAngle(values.Get(angle)),
            TaperField taper => new ComparedTaper(values.Get(taper)),
            RoughnessField rough => new ComparedRoughness(values.Get(rough)),
            ChoiceField choice => new ComparedWord(values.Get(choice)),
            TextField text => values.Get(text) is { Length: > 0 } said ? new ComparedWord(said) : null,
            FlagField flag => new ComparedWord(values.Get(flag) ? "yes" : "no"),
            _ => throw new ArgumentOutOfRangeException(nameof(field), field, "Unknown kind of field."),
        };
    }

    /// <summary>The same for any purpose: sizes from two units may differ in the last bits.</summary>
    public static bool Same(ComparedValue? a, ComparedValue? b) => (a, b) switch
    {
        (ComparedSize p, ComparedSize q) => Coincidence.Same(p.Size.Millimetres, q.Size.Millimetres) && SameTolerance(p.Size.Tolerance, q.Size.Tolerance),
        (ComparedAngle p, ComparedAngle q) => Math.Abs(p.Angle.Radians - q.Angle.Radians) <= Coincidence.Angle,
        (ComparedTaper p, ComparedTaper q) => Coincidence.Same(p.Taper.Rate, q.Taper.Rate),
        (ComparedRoughness p, ComparedRoughness q) => Coincidence.Same(p.Ra.Millimetres, q.Ra.Millimetres),
        (ComparedFigure p, ComparedFigure q) => Math.Abs(p.Value - q.Value) <= 1e-9 * Math.Max(1, Math.Abs(p.Value)),
        _ => Equals(a, b),
    };

    internal static bool SameTolerance(StatedTolerance? a, StatedTolerance? b) => (a, b) switch
    {
        (DeviationTolerance p, DeviationTolerance q) => Coincidence.Same(p.Upper.Millimetres, q.Upper.Millimetres) && Coincidence.Same(p.Lower.Millimetres, q.Lower.Millimetres),
        _ => Equals(a, b),
    };
}

public sealed record ComparedSize(SizeValue Size) : ComparedValue
{
    public ComparedSize(Length size)
        : this(new SizeValue(size))
    {
    }
}

public sealed record ComparedAngle(Angle Angle) : ComparedValue;

public sealed record ComparedTaper(Taper Taper) : ComparedValue;

public sealed record ComparedRoughness(Length Ra) : ComparedValue;

public sealed record ComparedWord(string Word) : ComparedValue;

/// <summary>A figure that follows from the sizes and is no length.</summary>
/// <param name="Unit">Such as <c>g</c> or <c>mm³</c>; it has no inch form here.</param>
/// <param name="Decimals">Shown.</param>
public sealed record ComparedFigure(double Value, string Unit, int Decimals) : ComparedValue;
