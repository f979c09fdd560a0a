using System.Collections.Immutable;
using LeverDraw.Diagnostics;
using LeverDraw.Profiles;

namespace LeverDraw.Parts;

/// <summary>A kind of part: its fields, how its profile becomes a part, and the sheets it is drawn on. What a part is made of stays behind the functions, so that the road to a sheet is the same for all.</summary>
public sealed class PartKind
{
    private readonly Func<PartKind, Profile, Checked<BuiltPart>> build;

    private PartKind(PartFields fields, ImmutableArray<string> sheetNames, Func<PartKind, Profile, Checked<BuiltPart>> build)
    {
        Fields = fields;
        SheetNames = sheetNames;
        this.build = build;
    }

    /// <summary>As the profile's <c>kind</c> gives it.</summary>
    public string Name => Fields.Kind;

    public PartFields Fields { get; }

    /// <summary>In the order they are drawn.</summary>
    public ImmutableArray<string> SheetNames { get; }

    public static PartKind Of<TPart>(
        PartFields fields, Func<Profile, Checked<TPart>> build, params ImmutableArray<PartSheet<TPart>> sheets)
        where TPart : class =>
        new(fields, [.. sheets.Select(s => s.Name)], (kind, profile) => build(profile).Then(part =>
            Checked<BuiltPart>.Good(new BuiltPart(kind, profile, [.. sheets.Select(s =>
                new BuiltSheet(s.Name, s.State, options => s.Content(part, profile, options))
                {
                    Plot = s.Plot is { } plot ? options => plot(part, profile, options) : null,
                    IsUsual = s.IsUsual?.Invoke(part, profile) ?? true,
                    Parametric = s.Parametric is { } parametric ? () => parametric(part, profile) : null,
                })]))));

    /// <summary>What else the trade would say of a part that is sound in its sizes; asked for by <c>check</c>, not part of drawing.</summary>
    public Func<Profile, IEnumerable<Diagnostic>> TradeFindings { get; private init; } = _ => [];

    /// <summary>The same kind with findings of its trade.</summary>
    public PartKind With(Func<Profile, IEnumerable<Diagnostic>> tradeFindings) =>
        new(Fields, SheetNames, build) { TradeFindings = tradeFindings };

    /// <summary>The part, or every fault of its sizes.</summary>
    /// <param name="profile">A profile of this kind.</param>
    public Checked<BuiltPart> Build(Profile profile)
    {
        ArgumentNullException.ThrowIfNull(profile);
        return profile.Kind == Name
            ? build(this, profile)
            : throw new ArgumentException("A profile of another kind.", nameof(profile));
    }
}
