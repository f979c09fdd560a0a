using LeverDraw.Parts;
using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Parts.PivotPin;
using LeverDraw.Profiles;

namespace LeverDraw.Comparison;

/// <summary>A pin as built, and what its profile says.</summary>
public sealed record VariantPin(Profile Profile, Pin Pin);

/// <summary>One of the levers that are compared, with its pin if that is known.</summary>
public sealed record LeverVariant(Profile Profile, Lever Lever, VariantPin? Pin = null)
{
    /// <summary>The profile's name without the kind's own words: <c>Early heavy</c>.</summary>
    public string ShortName => SheetTitle.Variant(Profile.Name, "Adjusting lever");

    /// <param name="part">A sound part of the kind lever.</param>
    public static LeverVariant Of(BuiltPart part) => new(part.Profile, LeverPart.Build(part.Profile.Values).Value ?? throw new ArgumentException("The part is no sound lever.", nameof(part)));

    /// <summary>This variant with its pin, if it is among those given: the one whose drawing number is the hole's.</summary>
    /// <param name="pins">Sound parts of the kind pin.</param>
    public LeverVariant WithPinOf(IEnumerable<BuiltPart> pins) =>
        pins.FirstOrDefault(p => Lever.Hole.Pin.Length > 0 && p.Profile.Values.Get(CommonFields.Number) == Lever.Hole.Pin) is { } own
            ? this with { Pin = new VariantPin(own.Profile, PinPart.Build(own.Profile.Values).Value ?? throw new ArgumentException("The part is no sound pin.", nameof(pins))) }
            : this;
}
