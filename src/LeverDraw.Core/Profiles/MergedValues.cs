using System.Collections.Immutable;
using LeverDraw.Diagnostics;
using LeverDraw.Units;

namespace LeverDraw.Profiles;

/// <summary>A value read from a file, with its place. Generation 0 is the profile itself, 1 what it extends, and so on.</summary>
internal sealed record StatedValue(object Value, SourcePosition Position, int Generation);

/// <summary>What a chain of profiles says in the end.</summary>
internal sealed class MergedValues(
    string path,
    ImmutableDictionary<string, FieldSpec> specs,
    ImmutableDictionary<string, StatedValue> stated,
    ImmutableDictionary<string, SourcePosition> tables) : IFieldValues
{
    public SizeValue? Find(SizeField field) =>
        !Applies(field) ? null
        : Stated(field) is { } value ? (SizeValue)value.Value
        : field.Default is { } mm ? new SizeValue(Length.FromMillimetres(mm))
        : null;

    public SizeValue Get(SizeField field) => Find(field) ?? throw Absent(field);

    public Angle Get(AngleField field) =>
        Stated(field) is { } value ? (Angle)value.Value : field.Default is { } degrees ? Angle.FromDegrees(degrees) : throw Absent(field);

    public Length Get(RoughnessField field) => Stated(field) is { } value ? (Length)value.Value : Length.FromMillimetres(field.Default / 1000);

    public double? Find(NumberField field) => Applies(field) && Stated(field) is { } value ? (double)value.Value : null;

    public Taper Get(TaperField field) => Stated(field) is { } value ? (Taper)value.Value : field.Default ?? throw Absent(field);

    public string Get(ChoiceField field) => Stated(field) is { } value ? (string)value.Value : field.Default ?? throw Absent(field);

    public string Get(TextField field) => Stated(field) is { } value ? (string)value.Value : field.Default ?? throw Absent(field);

    public bool Get(FlagField field) => Stated(field) is { } value ? (bool)value.Value : field.Default;

    public bool IsStated(FieldSpec field) => Stated(field) is not null;

    public SourcePosition PositionOf(FieldSpec field) =>
        Stated(field) is { } value ? value.Position
        : field.Name.Split('.') is [var table, _] && tables.TryGetValue(table, out SourcePosition place) ? place
        : SourcePosition.WholeFile(path);

    /// <summary>True when the field's condition, and that of the choice it hangs on, hold.</summary>
    public bool Applies(FieldSpec field) =>
        field.OnlyWhen is not { } only
        || (Applies(only.Choice) && (Stated(only.Choice)?.Value as string ?? only.Choice.Default) is { } word && only.Values.Contains(word));

    private StatedValue? Stated(FieldSpec field) =>
        specs.ContainsKey(field.Name)
            ? stated.GetValueOrDefault(field.Name)
            : throw new ArgumentException("The part kind has no field '" + field.Name + "'.", nameof(field));

    private static InvalidOperationException Absent(FieldSpec field) =>
        new("The field '" + field.Name + "' is absent.");
}
