using LeverDraw.Diagnostics;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Profiles;

namespace LeverDraw.Parts;

/// <summary>One kind of sheet a part kind can be drawn on.</summary>
/// <param name="Name">As in <c>--sheet</c> and in file names: <c>finished</c>.</param>
/// <param name="Content">What the sheet shows and says, before scale and place.</param>
public sealed record PartSheet<TPart>(
    string Name, PartState State, Func<TPart, Profile, SheetOptions, Checked<SheetContent>> Content)
    where TPart : class;

/// <summary>A sheet of one part that was built.</summary>
public sealed record BuiltSheet(string Name, PartState State, Func<SheetOptions, Checked<SheetContent>> Content);
