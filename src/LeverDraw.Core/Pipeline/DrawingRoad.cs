using System.Collections.Immutable;
using LeverDraw.Diagnostics;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Parts;
using LeverDraw.Profiles;

namespace LeverDraw.Pipeline;

/// <summary>The one road from a profile's text to ink on paper, for every host: text → fields → part → content → sheet. Every stage's findings are kept; a stage with errors is the last.</summary>
/// <param name="source">Where profiles are read from.</param>
/// <param name="kinds">The part kinds there are; for the tool itself, <see cref="ProfileKinds.All"/>.</param>
public sealed class DrawingRoad(IProfileSource source, ImmutableArray<PartKind> kinds)
{
    private readonly ImmutableArray<PartFields> fields = [.. kinds.Select(k => k.Fields)];

    /// <summary>The profile's part, checked in every size.</summary>
    /// <param name="adjusted">Choices that come before the profile's own; null for none.</param>
    public Checked<BuiltPart> Part(string path, Func<Profile, Profile>? adjusted = null) =>
        ProfileReader.Read(path, source, fields).Then(profile => kinds.First(k => k.Name == profile.Kind).Build(adjusted is null ? profile : adjusted(profile), source));

    /// <summary>A profile that must be of one kind.</summary>
    public Checked<Profile> Read(string path, PartKind wanted)
    {
        ArgumentNullException.ThrowIfNull(wanted);
        return ProfileReader.Read(path, source, fields).Then(profile => profile.Kind == wanted.Name
            ? Checked<Profile>.Good(profile)
            : Checked<Profile>.Bad([DiagnosticCatalogue.OtherKindGiven.At(SourcePosition.WholeFile(path), null, profile.Kind, wanted.Name)]));
    }

    /// <summary>A sheet ready for a writer.</summary>
    public static Checked<PlotSheet> Sheet(BuiltSheet sheet, SheetOptions options)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(options);
        return sheet.Plot is { } plot ? plot(options) : sheet.Content(options).Then(content => SheetComposer.Compose(content, options));
    }
}
