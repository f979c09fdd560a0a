namespace LeverDraw.Drafting.Sheets;

/// <summary>How easily a sheet is to be read, the best first.</summary>
internal enum SheetEase
{
    /// <summary>Details enlarged, notes of a good height.</summary>
    Full,

    /// <summary>Details enlarged, notes of the least height.</summary>
    SmallNotes,

    /// <summary>Details at the main scale show nothing more than the view they are taken from.</summary>
    PlainDetails,
}
