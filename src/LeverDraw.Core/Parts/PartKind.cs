using System.Collections.Immutable;
using LeverDraw.Diagnostics;
using LeverDraw.Profiles;

namespace LeverDraw.Parts;

/// <summary>A kind of part: its fields, how its profile becomes a part, and the sheets it is drawn on. What a part is made of stays behind the functions, so that the road to a sheet is the same for all.</summary>
public sealed class PartKind
{
    private readonly Func<PartKind, Profile, IProfileSource?, Checked<BuiltPart>> build;

    private PartKind(PartFields fields, ImmutableArray<string> sheetNames, Func<PartKind, Profile, IProfileSource?, Checked<BuiltPart>> build)
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
        Of(fields, (profile, _) => build(profile), sheets);

    /// <summary>A kind whose profile names other files.</summary>
    /// <param name="build">Gets the source that the profile came from.</param>
    public static PartKind OfSeveral<TPart>(
        PartFields fields, Func<Profile, IProfileSource, Checked<TPart>> build, params ImmutableArray<PartSheet<TPart>> sheets)
        where TPart : class =>
        Of(fields, (profile, source) => build(profile, source ?? throw new ArgumentException("The profile names other files: a source is needed.", nameof(build))), sheets);

    /// <summary>The part, or every fault of its sizes.</summary>
    /// <param name="profile">A profile of this kind.</param>
    /// <param name="source">Where other files that the profile names are read from; null will do for a kind that names none.</param>
    public Checked<BuiltPart> Build(Profile profile, IProfileSource? source = null)
    {
        ArgumentNullException.ThrowIfNull(profile);
        return profile.Kind == Name
            ? build(this, profile, source)
            : throw new ArgumentException("A profile of another kind.", nameof(profile));
    }

    private static PartKind Of<TPart>(PartFields fields, Func<Profile, IProfileSource?, Checked<TPart>> build, ImmutableArray<PartSheet<TPart>> sheets)
        where TPart : class =>
        new(fields, [.. sheets.Select(s => s.Name)], (kind, profile, source) => build(profile, source).Then(part =>
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
}
