using System.Collections.Immutable;
using LeverDraw.Parts;
using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Parts.PivotPin;
using LeverDraw.Profiles;
using LeverDraw.Specimens.Measuring;

namespace LeverDraw.Specimens.Identification;

/// <summary>A variant that a survivor may be: its profile's design sizes and forms, by the names of what can be measured.</summary>
public sealed record Variant(string Part, string Name, string Path)
{
    /// <summary>Drawing number; empty for none.</summary>
    public string Number { get; init; } = string.Empty;

    /// <summary>Drawing number of the pin that belongs in a lever's hole; empty for a pin, or when not said.</summary>
    public string PinNumber { get; init; } = string.Empty;

    /// <summary>Millimetres or degrees.</summary>
    internal ImmutableDictionary<string, double> Sizes { get; init; } = ImmutableDictionary<string, double>.Empty;

    internal ImmutableDictionary<string, string> Words { get; init; } = ImmutableDictionary<string, string>.Empty;

    /// <summary>Null for a pin whose sizes make no pin.</summary>
    public static Variant? Of(Profile profile) => profile.Kind == PartKinds.Lever.Name ? Lever(profile) : profile.Kind == PartKinds.Pin.Name ? Pin(profile) : null;

    private static Variant Lever(Profile profile)
    {
        IFieldValues values = profile.Values;
        var sizes = ImmutableDictionary.CreateBuilder<string, double>(StringComparer.Ordinal);
        var words = ImmutableDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        foreach (Measurand measurand in Measurands.Lever)
        {
            switch (measurand.Field)
            {
                case SizeField size when values.Find(size) is { } value:
                    sizes[measurand.Name] = value.Millimetres;
                    break;
                case AngleField angle when Applies(angle, values):
                    sizes[measurand.Name] = values.Get(angle).Degrees;
                    break;
                case TaperField taper:
                    words[measurand.Name] = values.Get(taper).IsParallel ? "parallel" : "tapered";
                    break;
                case ChoiceField choice when Applies(choice, values):
                    words[measurand.Name] = values.Get(choice);
                    break;
                case TextField text when Applies(text, values):
                    words[measurand.Name] = values.Get(text);
                    break;
            }
        }

        AddDerived(Measurands.Lever, sizes, values.Get(LeverFields.HoleTaper).Rate);
        return Named(profile, sizes, words) with { PinNumber = values.Get(LeverFields.HolePin) };
    }

    private static Variant? Pin(Profile profile)
    {
        if (PinPart.Build(profile.Values).Value is not { } pin)
            return null;
        var sizes = ImmutableDictionary.CreateBuilder<string, double>(StringComparer.Ordinal);
        var words = ImmutableDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        sizes[PinFields.LargeEnd.Name] = pin.LargeEnd.Millimetres;
        sizes[PinFields.Length.Name] = pin.Length.Millimetres;
        words[PinFields.Ends.Name] = pin.Ends;
        words[PinFields.Taper.Name] = pin.Taper.IsParallel ? "parallel" : "tapered";
        AddDerived(Measurands.Pin, sizes, pin.Taper.Rate);
        return Named(profile, sizes, words);
    }

    private static void AddDerived(ImmutableArray<Measurand> all, ImmutableDictionary<string, double>.Builder sizes, double taper)
    {
        foreach (DerivedSize derived in all.Select(m => m.Derived).OfType<DerivedSize>())
        {
            if (derived.Fields.All(f => f is TaperField || DerivedSizes.MayLack(f) || sizes.ContainsKey(f.Name)))
                sizes[derived.Name] = derived.From([.. derived.Fields.Select(f => f is TaperField ? taper : sizes.GetValueOrDefault(f.Name))]);
        }
    }

    private static bool Applies(FieldSpec field, IFieldValues values) => field.OnlyWhen is not { } when || when.Values.Contains(values.Get(when.Choice));

    private static Variant Named(Profile profile, ImmutableDictionary<string, double>.Builder sizes, ImmutableDictionary<string, string>.Builder words) =>
        new(profile.Kind, profile.Name, profile.Path)
        {
            Number = profile.Values.Get(CommonFields.Number),
            Sizes = sizes.ToImmutable(),
            Words = words.ToImmutable(),
        };
}
