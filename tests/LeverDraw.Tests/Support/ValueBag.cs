using LeverDraw.Diagnostics;
using LeverDraw.Profiles;
using LeverDraw.Units;

namespace LeverDraw.Tests.Support;

/// <summary>Field values without a file: what is set, else the field's default.</summary>
internal sealed class ValueBag : IFieldValues
{
    private readonly Dictionary<string, object> _set = [];

    public ValueBag With(SizeField field, double millimetres) => Put(field, new SizeValue(Length.FromMillimetres(millimetres)));

    /// <summary>With deviations of the same amount both ways.</summary>
    public ValueBag With(SizeField field, double millimetres, double plusMinus) =>
        Put(field, new SizeValue(Length.FromMillimetres(millimetres), new DeviationTolerance(Length.FromMillimetres(plusMinus), Length.FromMillimetres(-plusMinus))));

    public ValueBag With(AngleField field, double degrees) => Put(field, Angle.FromDegrees(degrees));

    public ValueBag With(RoughnessField field, double micrometres) => Put(field, Length.FromMillimetres(micrometres / 1000));

    public ValueBag With(NumberField field, double number) => Put(field, number);

    public ValueBag With(TaperField field, Taper taper) => Put(field, taper);

    public ValueBag With(ChoiceField field, string word) => Put(field, field.Choices.Contains(word) ? word : throw new ArgumentException(word));

    public ValueBag With(TextField field, string text) => Put(field, text);

    public ValueBag Without(FieldSpec field)
    {
        _set.Remove(field.Name);
        return this;
    }

    public ValueBag Copy()
    {
        ValueBag copy = new();
        foreach ((string key, object value) in _set)
            copy._set[key] = value;
        return copy;
    }

    public SizeValue? Find(SizeField field)
    {
        if (!Applies(field))
            return null;
        if (_set.TryGetValue(field.Name, out object? value))
            return (SizeValue)value;
        return field.Default is { } d ? new SizeValue(Length.FromMillimetres(d)) : null;
    }

    public SizeValue Get(SizeField field) => Find(field) ?? throw new InvalidOperationException(field.Name);

    public Angle Get(AngleField field) => _set.TryGetValue(field.Name, out object? v) ? (Angle)v : Angle.FromDegrees(field.Default!.Value);

    public Length Get(RoughnessField field) => _set.TryGetValue(field.Name, out object? v) ? (Length)v : Length.FromMillimetres(field.Default / 1000);

    public double? Find(NumberField field) => _set.TryGetValue(field.Name, out object? v) ? (double)v : null;

    public Taper Get(TaperField field) => _set.TryGetValue(field.Name, out object? v) ? (Taper)v : field.Default!.Value;

    public string Get(ChoiceField field) => _set.TryGetValue(field.Name, out object? v) ? (string)v : field.Default!;

    public string Get(TextField field) => _set.TryGetValue(field.Name, out object? v) ? (string)v : field.Default!;

    public bool Get(FlagField field) => _set.TryGetValue(field.Name, out object? v) ? (bool)v : field.Default;

    public bool IsStated(FieldSpec field) => _set.ContainsKey(field.Name);

    public SourcePosition PositionOf(FieldSpec field) => SourcePosition.WholeFile("values");

    private bool Applies(FieldSpec field) => field.OnlyWhen is not { } when || when.Values.Contains(Get(when.Choice));

    private ValueBag Put(FieldSpec field, object value)
    {
        _set[field.Name] = value;
        return this;
    }
}
