using LeverDraw.Diagnostics;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Mechanism.Sheets;
using LeverDraw.Parts;
using LeverDraw.Profiles;

namespace LeverDraw.Mechanism.Setups;

/// <summary>The kind of profile that names a lever, its pin and the plane they stand in.</summary>
public static class SetupKind
{
    public static PartKind Kind { get; } = PartKind.OfSeveral<Setup>(
        new PartFields("setup", SetupFields.All) { Common = CommonFields.OfFile },
        SetupReading.Build,
        new PartSheet<Setup>(MechanismSheet.Kind, PartState.Assembly, (setup, profile, options) => Checked<SheetContent>.Good(MechanismSheet.Content(setup, profile, options))),
        new PartSheet<Setup>(TravelSheet.Kind, PartState.Assembly, (setup, profile, options) => Checked<SheetContent>.Good(TravelSheet.Content(setup, profile, options))));
}
