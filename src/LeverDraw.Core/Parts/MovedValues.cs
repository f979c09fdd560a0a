using LeverDraw.Diagnostics;
using LeverDraw.Profiles;
using LeverDraw.Units;

namespace LeverDraw.Parts;

/// <summary>A profile's values with some numbers changed: what is absent stays absent, and tolerances stay as they are.</summary>
/// <param name="moved">By field name: millimetres, radians, or the rate of a taper.</param>
internal sealed class MovedValues(IFieldValues inner, IReadOnlyDictionary<string, double> moved) : IFieldValues
{
    public SizeValue? Find(SizeField field) => inner.Find(field) is { } size ? Moved(field, size) : null;

    public SizeValue Get(SizeField field) => Moved(field, inner.Get(field));

    public Angle Get(AngleField field) => moved.TryGetValue(field.Name, out double radians) ? Angle.FromRadians(radians) : inner.Get(field);

    public Taper Get(TaperField field) => moved.TryGetValue(field.Name, out double rate) ? Taper.OneIn(1 / rate) : inner.Get(field);

    public Length Get(RoughnessField field) => inner.Get(field);

    public double? Find(NumberField field) => inner.Find(field);

    public string Get(ChoiceField field) => inner.Get(field);

    public string Get(TextField field) => inner.Get(field);

    public bool Get(FlagField field) => inner.Get(field);

    public bool IsStated(FieldSpec field) => inner.IsStated(field);

    public SourcePosition PositionOf(FieldSpec field) => inner.PositionOf(field);

    private SizeValue Moved(SizeField field, SizeValue size) =>
        moved.TryGetValue(field.Name, out double millimetres) ? size with { Nominal = Length.FromMillimetres(millimetres) } : size;
}
