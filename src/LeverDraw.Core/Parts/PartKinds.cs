using System.Collections.Immutable;
using LeverDraw.Diagnostics;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Parts.AdjustingLever.Foundry;
using LeverDraw.Parts.AdjustingLever.FoundrySheets;
using LeverDraw.Parts.AdjustingLever.Sheets;
using LeverDraw.Parts.HostPlanes;
using LeverDraw.Parts.PivotPin;
using LeverDraw.Parts.PivotPin.Sheets;
using LeverDraw.Profiles;

namespace LeverDraw.Parts;

/// <summary>The kinds of part there are. A new one is a folder beside this file and an entry here.</summary>
public static class PartKinds
{
    public static PartKind Lever { get; } = PartKind.Of(
        new PartFields(LeverFields.PartKind, LeverFields.All),
        profile => LeverPart.Build(profile.Values),
        new PartSheet<Lever>("finished", PartState.Finished, (lever, profile, options) =>
            Checked<SheetContent>.Good(FinishedLeverSheet.Content(lever, profile, options)))
        {
            Parametric = (lever, profile) => LeverParameters.Of(lever, profile, FinishedLeverSheet.Content(lever, profile, new SheetOptions()), FinishedLeverSheet.Sizes),
        },
        new PartSheet<Lever>(CastingSheet.Kind, PartState.Casting, (lever, profile, options) =>
            FoundryRoad.Casting(lever, profile).Then(casting => Checked<SheetContent>.Good(CastingSheet.Content(casting, profile, options))))
        {
            IsUsual = (_, profile) => FoundryPlanning.IsMeant(profile),
            Parametric = StateDimensioning.OfCasting,
        },
        new PartSheet<Lever>(PatternSheet.Kind, PartState.Pattern, (lever, profile, options) =>
            FoundryRoad.Casting(lever, profile).Then(casting => Checked<SheetContent>.Good(PatternSheet.Content(PatternLever.Of(casting), profile, options))))
        {
            IsUsual = (_, profile) => FoundryPlanning.IsMeant(profile),
            Parametric = StateDimensioning.OfPattern,
        },
        new PartSheet<Lever>(PatternSheet.MasterKind, PartState.Pattern, (lever, profile, options) =>
            FoundryRoad.Master(lever, profile).Then(master => Checked<SheetContent>.Good(PatternSheet.Content(master, profile, options)))) { IsUsual = (_, profile) => FoundryRoad.HasMaster(profile) },
        PartSheet<Lever>.Drawn(ContractionRuleSheet.Kind, PartState.Pattern, (lever, profile, options) =>
            FoundryPlanning.Of(lever, profile).Then(plan => ContractionRuleSheet.Of(plan.Rates, plan.Metal, profile, options))) with { IsUsual = (_, _) => false })
        .With(profile => LeverPart.Build(profile.Values).Value is { } lever ? Castability.Of(lever, profile) : []);

    public static PartKind Pin { get; } = PartKind.Of(
        new PartFields("pin", PinFields.All),
        profile => PinPart.Build(profile.Values),
        new PartSheet<Pin>("pin", PartState.Pin, (pin, profile, options) =>
            Checked<SheetContent>.Good(PinSheet.Content(pin, profile, options)))
        {
            Parametric = (pin, profile) => PinParameters.Of(pin, profile, (other, same) => PinSheet.Content(other, same, new SheetOptions())),
        });

    /// <summary>No part to be made, and so without a sheet of its own: what levers are fitted to.</summary>
    public static PartKind Plane { get; } = PartKind.Of<HostPlane>(
        new PartFields("plane", HostPlaneFields.All) { Common = CommonFields.OfFile },
        profile => HostPlanePart.Build(profile.Name, profile.Values));

    public static ImmutableArray<PartKind> All { get; } = [Lever, Pin, Plane];

    /// <summary>What the profile reader needs to know of them.</summary>
    public static ImmutableArray<PartFields> Fields { get; } = [.. All.Select(k => k.Fields)];
}
