using System.Collections.Immutable;
using LeverDraw.Units;

namespace LeverDraw.Standards;

/// <summary>Distances from the trimmed edge to the frame.</summary>
public readonly record struct SheetBorders(Length Left, Length Right, Length Top, Length Bottom);

/// <summary>A trimmed drawing sheet as it is held to be read.</summary>
/// <param name="Name">The name used to ask for it: <c>A4</c>, <c>letter</c>.</param>
/// <param name="Series">The size's sign in its own series: <c>A4</c>, <c>B</c>.</param>
/// <param name="FieldsAlongWidth">Fields of the reference grid along the width; 0 when the table gives no grid.</param>
public sealed record SheetFormat(
    string Name, string Series, Length Width, Length Height, SheetBorders Borders, int FieldsAlongWidth, int FieldsAlongHeight)
{
    /// <summary>The width inside the frame.</summary>
    public Length FrameWidth => Width - Borders.Left - Borders.Right;

    /// <summary>The height inside the frame.</summary>
    public Length FrameHeight => Height - Borders.Top - Borders.Bottom;

    /// <summary>The same sheet the other way round. A wider left border is for filing and stays on the left; even borders go with their edges.</summary>
    public SheetFormat Turned() => this with
    {
        Width = Height,
        Height = Width,
        FieldsAlongWidth = FieldsAlongHeight,
        FieldsAlongHeight = FieldsAlongWidth,
        Borders = Borders.Left == Borders.Right
            ? new SheetBorders(Borders.Bottom, Borders.Top, Borders.Left, Borders.Right)
            : Borders,
    };
}

/// <summary>All sheets, ISO and inch, by name.</summary>
public static class Sheets
{
    public static ImmutableArray<SheetFormat> All { get; } = [.. IsoSheets.All, .. InchSheets.All];

    /// <param name="name">A name or series sign, in any case: <c>a4</c>, <c>letter</c>, <c>B</c>.</param>
    public static Answer<SheetFormat> Named(string name)
    {
        foreach (SheetFormat sheet in All)
        {
            if (string.Equals(sheet.Name, name, StringComparison.OrdinalIgnoreCase)
                || string.Equals(sheet.Series, name, StringComparison.OrdinalIgnoreCase))
                return Answer<SheetFormat>.Given(sheet);
        }
        return Answer<SheetFormat>.Refused("the sheets are " + string.Join(", ", All.Select(s => s.Name)) + ", not \"" + name + "\"");
    }
}
