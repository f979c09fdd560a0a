using System.Collections.Immutable;
using LeverDraw.Parts;
using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Parts.PivotPin;
using LeverDraw.Profiles;
using LeverDraw.Units;

namespace LeverDraw.Specimens.Measuring;

/// <summary>What kind of value a reading has.</summary>
public enum ReadingKind
{
    Size,
    Angle,
    Taper,
    Word,
}

/// <summary>Something to be measured or seen on a survivor: a field of the profile, or a size that follows from fields.</summary>
/// <param name="Name">The profile's own field name, or a derived size's.</param>
/// <param name="Part">The part kind it belongs to: <c>lever</c> or <c>pin</c>.</param>
/// <param name="Help">One line: what it is.</param>
public sealed record Measurand(string Name, string Part, ReadingKind Kind, string Help)
{
    /// <summary>Which way wear moves it.</summary>
    public WearSide Wear => Habit?.Wear ?? WearSide.None;

    /// <summary>Where an unworn place may be found; empty when it does not wear.</summary>
    public string Witness => Habit?.Witness ?? string.Empty;

    /// <summary>The feature it belongs to, which is altered or replaced as a whole: <c>hole</c>.</summary>
    public string Feature => Name.Split('.')[0];

    internal SizeHabit? Habit { get; init; }

    internal FieldSpec? Field { get; init; }

    internal DerivedSize? Derived { get; init; }

    /// <summary>Millimetres or degrees.</summary>
    internal double Least { get; init; }

    internal double Most { get; init; }

    /// <summary>The words a seen one may have; empty for free text.</summary>
    public ImmutableArray<string> Words { get; init; } = [];

    internal double Spread(double size) => MadeSpread.Of(Habit!.Made, size);

    internal double UsualWear => Habit?.UsualWear ?? 0;

    /// <summary>Millimetres or degrees as text, for people.</summary>
    internal string Text(double value, int decimals) => Kind == ReadingKind.Angle
        ? LengthText.Millimetres(Length.FromMillimetres(value), Math.Min(decimals, 1)) + "°"
        : LengthText.Millimetres(Length.FromMillimetres(value), decimals) + " mm";
}

/// <summary>All there is to measure, in the order of the parts' fields.</summary>
public static class Measurands
{
    public static ImmutableArray<Measurand> Lever { get; } = [.. Of(PartKinds.Lever.Name, LeverFields.All, SizeHabits.Lever, DerivedSizes.Lever)];

    public static ImmutableArray<Measurand> Pin { get; } = [.. Of(PartKinds.Pin.Name, PinFields.All, SizeHabits.Pin, DerivedSizes.Pin)];

    public static ImmutableArray<Measurand> All { get; } = [.. Lever, .. Pin];

    public static Measurand? Find(string name) => All.FirstOrDefault(m => m.Name == name);

    private static IEnumerable<Measurand> Of(string part, ImmutableArray<FieldSpec> fields, ImmutableArray<SizeHabit> habits, ImmutableArray<DerivedSize> derived)
    {
        foreach (FieldSpec field in fields)
        {
            if (habits.FirstOrDefault(h => h.Field == field) is { } habit)
                yield return Sized(part, field, habit);
            else if (SizeHabits.Seen.Contains(field))
                yield return new Measurand(field.Name, part, field is TaperField ? ReadingKind.Taper : ReadingKind.Word, field.Help)
                {
                    Field = field,
                    Words = field is ChoiceField choice ? choice.Choices : [],
                };
            foreach (DerivedSize size in derived.Where(d => After(d) == field))
                yield return new Measurand(size.Name, part, ReadingKind.Size, size.Help) { Habit = size.Like, Derived = size, Least = size.Least, Most = size.Most };
        }
    }

    /// <summary>A derived size stands behind the last of the fields of its own table that it follows from.</summary>
    private static FieldSpec After(DerivedSize derived) => derived.Fields.Last(f => f.Name.Split('.')[0] == derived.Name.Split('.')[0]);

    private static Measurand Sized(string part, FieldSpec field, SizeHabit habit) => field switch
    {
        AngleField angle => new Measurand(field.Name, part, ReadingKind.Angle, field.Help) { Habit = habit, Field = field, Least = angle.MinDegrees, Most = angle.MaxDegrees },
        SizeField size => new Measurand(field.Name, part, ReadingKind.Size, field.Help) { Habit = habit, Field = field, Least = size.MinMillimetres, Most = size.MaxMillimetres },
        _ => throw new ArgumentOutOfRangeException(nameof(field), field, "Only sizes and angles are measured."),
    };
}
