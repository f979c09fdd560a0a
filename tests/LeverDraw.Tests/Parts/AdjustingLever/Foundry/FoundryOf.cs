using LeverDraw.Diagnostics;
using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Parts.AdjustingLever.Foundry;
using LeverDraw.Profiles;
using LeverDraw.Tests.Support;
using LeverDraw.Tolerancing.Allowances;
using LeverDraw.Units;

namespace LeverDraw.Tests.Parts.AdjustingLever.Foundry;

/// <summary>Shortcuts from values to the states.</summary>
internal static class FoundryOf
{
    public static Checked<FoundryPlan> Plan(IFieldValues values, string material = "Brass", string process = "Sand cast") =>
        FoundryPlanning.Of(LeverPart.Build(values).Value!, values, material, process);

    public static Checked<CastingLever> TryCast(IFieldValues values, string material = "Brass", string process = "Sand cast") =>
        Plan(values, material, process).Then(plan => CastingLever.Of(LeverPart.Build(values).Value!, values, plan));

    public static CastingLever Cast(IFieldValues values, string material = "Brass", string process = "Sand cast")
    {
        Checked<CastingLever> casting = TryCast(values, material, process);
        Assert.True(casting.Ok, string.Join("\n", casting.Diagnostics.Select(d => d.Message)));
        return casting.Value!;
    }

    public static PatternLever Pattern(IFieldValues values, string material = "Brass", string process = "Sand cast") => PatternLever.Of(Cast(values, material, process));

    public static CastingLever WithStock(ValueBag values, double head, double pads, double tongue) => Cast(Stocked(values, head, pads, tongue));

    public static ValueBag Stocked(ValueBag values, double head, double pads, double tongue) => values
        .With(CastingFields.HeadAllowance, head).With(CastingFields.PadAllowance, pads).With(CastingFields.TongueAllowance, tongue);
}
