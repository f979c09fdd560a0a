using System.Collections.Immutable;
using LeverDraw.Drafting.Plotting;

namespace LeverDraw.Drafting.Sheets;

/// <summary>A table as meaning: a title over it (empty for none), heads, rows. Every string is final; <c>\n</c> starts a new line in its cell.</summary>
/// <param name="Rows">Each as long as <paramref name="Columns"/>; an empty string leaves a cell blank.</param>
public sealed record SheetTable(string Title, ImmutableArray<TableColumn> Columns, ImmutableArray<ImmutableArray<string>> Rows)
{
    /// <summary>What is drawn in the first column, a sample for each row: a legend. Empty for a table of words.</summary>
    public ImmutableArray<TableSample> Samples { get; init; } = [];

    /// <summary>Rows stand closer than usual: tables that fill a sheet take the room that its views could be larger by.</summary>
    public bool IsClose { get; init; }

    /// <summary>Goes on from the table before it.</summary>
    public bool Continues { get; init; }

    /// <summary>A long table in blocks of about as many rows each, to stand side by side; the title stands over each.</summary>
    /// <param name="most">Rows of a block.</param>
    public ImmutableArray<SheetTable> InBlocks(int most)
    {
        int blocks = (Rows.Length + most - 1) / most;
        return [.. Enumerable.Range(0, blocks).Select(i => this with { Rows = Rows[(Rows.Length * i / blocks)..(Rows.Length * (i + 1) / blocks)], Continues = i > 0 })];
    }
}

/// <summary>A piece of line, or with an angle a patch hatched in the role's colour.</summary>
/// <param name="HatchAngle">Radians.</param>
public sealed record TableSample(LineRole Role, double? HatchAngle = null);

/// <param name="Align">Where shorter entries stand: 0 left, 0.5 in the middle, 1 right (numbers of equal decimals).</param>
public sealed record TableColumn(string Head, double Align = 0);
