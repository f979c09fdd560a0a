using System.Collections.Concurrent;
using LeverDraw.Diagnostics;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Drafting.TitleBlocks;
using LeverDraw.Geometry;
using LeverDraw.Parts;
using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Parts.AdjustingLever.Sheets;
using LeverDraw.Parts.PivotPin;
using LeverDraw.Parts.PivotPin.Sheets;
using LeverDraw.Profiles;
using LeverDraw.Standards;
using LeverDraw.Units;

namespace LeverDraw.Tests.Support;

/// <summary>Sheets of shipped profiles and of bare values, without files in between.</summary>
internal static class SheetMaker
{
    /// <summary>Many tests look at the same few sheets.</summary>
    private static readonly ConcurrentDictionary<(string, SheetOptions), PlotSheet> Drawn = [];

    /// <summary>Profile paths under profiles/, without the ending.</summary>
    public static IReadOnlyList<string> Profiles { get; } =
        [.. ShippedProfiles.Names.Select(n => "levers/" + n), .. ShippedProfiles.Names.Select(n => "pins/" + n)];

    /// <summary>Sheets of the foundry, as a profile's path with the sheet after a colon: with bosses, with tapered arms, with a bulb nose.</summary>
    public static IReadOnlyList<string> Foundry { get; } =
        [.. new[] { "early", "smallest", "rare" }.SelectMany(n => new[] { "levers/" + n + ":casting", "levers/" + n + ":pattern" })];

    public static IReadOnlyList<string> Levers { get; } = [.. Profiles.Where(p => p.StartsWith("levers/", StringComparison.Ordinal))];

    public static SheetOptions Options(string paper, ShownUnits units = ShownUnits.Millimetres, ProjectionMethod projection = ProjectionMethod.ThirdAngle) =>
        new(LeverDraw.Standards.Sheets.Named(paper).Value, null, units, projection);

    public static Box2D Frame(string paper) => SheetFrame.Field(LeverDraw.Standards.Sheets.Named(paper).Value);

    public static Profile Profile(string name) => ShippedProfiles.Read(name + ".toml").Value!;

    public static Lever Lever(string name) => LeverPart.Build(Profile(name).Values).Value!;

    public static Pin Pin(string name) => PinPart.Build(Profile(name).Values).Value!;

    public static SheetContent Content(string name, SheetOptions options) => Content(Profile(name.Split(':')[0]), options, name.Split(':').ElementAtOrDefault(1));

    /// <param name="sheet">Null: the first of its kind.</param>
    public static SheetContent Content(Profile profile, SheetOptions options, string? sheet = null)
    {
        BuiltPart part = PartKinds.All.Single(k => k.Name == profile.Kind).Build(profile).Value!;
        Checked<SheetContent> content = (sheet is null ? part.Sheets[0] : part.Find(sheet)!).Content(options);
        return content.Value ?? throw new InvalidOperationException(string.Join("; ", content.Diagnostics.Select(d => d.Message)));
    }

    public static Checked<PlotSheet> TryDraw(string name, SheetOptions options) => SheetComposer.Compose(Content(name, options), options);

    public static PlotSheet Draw(string name, SheetOptions options) => Drawn.GetOrAdd((name, options), key => DrawAnew(key.Item1, key.Item2));

    public static PlotSheet DrawAnew(string name, SheetOptions options)
    {
        Checked<PlotSheet> drawn = TryDraw(name, options);
        Assert.True(drawn.Ok, name + ": " + string.Join("; ", drawn.Diagnostics.Select(d => d.Message)));
        return drawn.Value!;
    }

    /// <summary>The sheet of values that no file holds; title, owner and the like are invented.</summary>
    public static Checked<PlotSheet> TryDrawLever(ValueBag values, SheetOptions options) =>
        SheetComposer.Compose(FinishedLeverSheet.Content(LeverPart.Build(values).Value!, Around("lever", values), options), options);

    public static Checked<PlotSheet> TryDrawPin(ValueBag values, SheetOptions options) =>
        SheetComposer.Compose(PinSheet.Content(PinPart.Build(values).Value!, Around("pin", values), options), options);

    /// <summary>A profile of values that no file holds.</summary>
    public static Profile Around(string kind, ValueBag values) => new(
        kind,
        "Random part",
        "random.toml",
        LengthUnit.Millimetre,
        values.Copy().With(CommonFields.Title, "RANDOM PART").With(CommonFields.Number, "TC-X-01").With(CommonFields.Owner, "Thessaby & Crake (invented)").With(CommonFields.Material, "Silicon brass, low in lead"),
        []);
}
