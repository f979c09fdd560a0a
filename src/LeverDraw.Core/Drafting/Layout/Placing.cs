namespace LeverDraw.Drafting.Layout;

/// <summary>Where the annotations of a view were placed.</summary>
/// <param name="Unplaced">Which of them still break a hard rule.</param>
/// <param name="PaysForRoom">False where no place that was taken cost anything for room: then a dearer price of room changes nothing.</param>
internal readonly record struct Placing(Candidate[] Chosen, int[] Unplaced, bool PaysForRoom);
