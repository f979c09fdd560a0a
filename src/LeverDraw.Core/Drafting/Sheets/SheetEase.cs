namespace LeverDraw.Drafting.Sheets;

/// <summary>How easily a sheet is to be read, the best first.</summary>
internal enum SheetEase
{
    /// <summary>Details enlarged, sections of a good size, notes of a good height.</summary>
    Full,

    /// <summary>The same with notes of the least height.</summary>
    SmallNotes,

    /// <summary>A section smaller than its sizes can well be read at (<see cref="Views.ViewSource.ReadableFrom"/>).</summary>
    SmallSections,

    /// <summary>Details at the main scale show nothing more than the view they are taken from.</summary>
    PlainDetails,
}
