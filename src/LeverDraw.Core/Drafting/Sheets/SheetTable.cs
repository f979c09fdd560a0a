using System.Collections.Immutable;

namespace LeverDraw.Drafting.Sheets;

/// <summary>A table as meaning: a title over it (empty for none), heads, rows. Every string is final; <c>\n</c> starts a new line in its cell.</summary>
/// <param name="Rows">Each as long as <paramref name="Columns"/>; an empty string leaves a cell blank.</param>
public sealed record SheetTable(string Title, ImmutableArray<TableColumn> Columns, ImmutableArray<ImmutableArray<string>> Rows);

/// <param name="Align">Where shorter entries stand: 0 left, 0.5 in the middle, 1 right (numbers of equal decimals).</param>
public sealed record TableColumn(string Head, double Align = 0);
