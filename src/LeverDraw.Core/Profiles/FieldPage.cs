using LeverDraw.Units;

namespace LeverDraw.Profiles;

/// <summary>What there is to say about one field, in both units where it has any.</summary>
/// <param name="Allowed">Such as <c>a size from 1.5 mm to 6.5 mm (0.0591 in to 0.2559 in)</c>.</param>
/// <param name="Default">Null when there is none.</param>
/// <param name="Condition">Such as <c>only when arms.form is curved</c>; null when it always applies.</param>
public sealed record FieldPage(string Allowed, string? Default, string? Condition)
{
    public static FieldPage Of(FieldSpec field)
    {
        string allowed = FieldWords.Allowed(field, LengthUnit.Millimetre);
        if (field is SizeField size)
        {
            allowed += " (" + FieldWords.RangeEnd(size.MinMillimetres, LengthUnit.Inch, up: true)
                + " to " + FieldWords.RangeEnd(size.MaxMillimetres, LengthUnit.Inch, up: false) + ")";
        }

        return new FieldPage(allowed, FieldWords.Default(field, LengthUnit.Millimetre), FieldWords.Condition(field));
    }
}
