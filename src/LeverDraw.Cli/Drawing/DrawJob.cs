using LeverDraw.Drafting.Sheets;
using LeverDraw.Parts;
using LeverDraw.Writers;

namespace LeverDraw.Cli.Drawing;

/// <summary>A sheet to be drawn, and the files it goes into.</summary>
internal sealed record DrawJob(string Profile, BuiltSheet Sheet, SheetOptions Options, IReadOnlyList<PlannedFile> Files);

/// <param name="Path">Where it goes, as the user will see it.</param>
internal sealed record PlannedFile(string Path, IDrawingWriter Writer);

/// <summary>A file ready to be written.</summary>
internal sealed record RenderedFile(string Path, string Profile, string Sheet, string Format, byte[] Bytes);
