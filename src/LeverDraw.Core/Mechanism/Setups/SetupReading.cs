using System.Collections.Immutable;
using LeverDraw.Diagnostics;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Parts;
using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Parts.HostPlanes;
using LeverDraw.Parts.PivotPin;
using LeverDraw.Profiles;
using LeverDraw.Tolerancing;
using LeverDraw.Units;

namespace LeverDraw.Mechanism.Setups;

/// <summary>From a setup's profile to the setup, with the profiles it names.</summary>
public static class SetupReading
{
    /// <summary>Findings are told in millimetres, whatever the setup's file is written in.</summary>
    private static readonly LengthWords InMillimetres = new(ShownUnits.Millimetres);

    public static Checked<Setup> Build(Profile profile, IProfileSource source)
    {
        ArgumentNullException.ThrowIfNull(profile);
        List<Diagnostic> told = [];
        IFieldValues values = profile.Values;
        SetupPart<Lever>? lever = Read(SetupFields.Lever, PartKinds.Lever, p => LeverPart.Build(p.Values));
        SetupPart<Pin>? pin = Read(SetupFields.Pin, PartKinds.Pin, p => PinPart.Build(p.Values));
        SetupPart<HostPlane>? plane = Read(SetupFields.Plane, PartKinds.Plane, p => HostPlanePart.Build(p.Name, p.Values));
        SetupPart<HostPlane>? spares = values.Get(SetupFields.Spares).Length == 0 ? plane : Read(SetupFields.Spares, PartKinds.Plane, p => HostPlanePart.Build(p.Name, p.Values));
        if (lever is null || pin is null || plane is null || spares is null)
            return Checked<Setup>.Bad(told);

        Assembly found = Found(lever.Part, pin.Part, plane.Part, values);
        if (Linkage.Of(found) is not { } linkage)
        {
            told.Add(Linkage.PadsReach(found)
                ? DiagnosticCatalogue.TongueNotReached.At(values.PositionOf(SetupFields.Lever), SetupFields.Lever.Name, lever.Name, plane.Name)
                : DiagnosticCatalogue.PadsNotReached.At(values.PositionOf(SetupFields.Lever), SetupFields.Lever.Name, lever.Name, plane.Name));
            return Checked<Setup>.Bad(told);
        }

        told.AddRange(Findings(linkage, values));
        return Checked<Setup>.From(told, () => new Setup(
            profile.Name, lever, pin, plane, spares.Part, found, linkage, Prices(values), values.Get(SetupFields.Money), values.Find(SetupFields.Target)));

        SetupPart<T>? Read<T>(TextField field, PartKind kind, Func<Profile, Checked<T>> build)
            where T : class
        {
            string path = values.Get(field);
            SourcePosition place = values.PositionOf(field);
            if (!ProfilePath.IsRelative(path))
            {
                told.Add(DiagnosticCatalogue.PathNotRelative.At(place, field.Name, field.Name, path));
                return null;
            }

            string full = ProfilePath.Beside(place.File, path);
            if (source.Open(full) is ProfileFile.Missing)
            {
                told.Add(DiagnosticCatalogue.FileMissing.At(place, field.Name, full));
                return null;
            }

            Checked<Profile> read = ProfileReader.Read(full, source, PartKinds.Fields);
            told.AddRange(read.Diagnostics);
            if (!read.Ok)
                return null;
            if (read.Value.Kind != kind.Name)
            {
                told.Add(DiagnosticCatalogue.OtherKindNamed.At(place, field.Name, field.Name, full, read.Value.Kind, kind.Name));
                return null;
            }

            Checked<T> part = build(read.Value);
            told.AddRange(part.Diagnostics);
            return part.Ok ? new SetupPart<T>(full, read.Value.Name, part.Value) : null;
        }
    }

    private static Assembly Found(Lever lever, Pin pin, HostPlane plane, IFieldValues values)
    {
        SizeValue Or(SizeField field, SizeValue drawn) => values.Find(field) ?? drawn;
        HostPlane measured = plane with
        {
            Nut = plane.Nut with { Groove = Or(SetupFields.Groove, plane.Nut.Groove), Play = Or(SetupFields.Thread, plane.Nut.Play) },
            Iron = plane.Iron with { Thickness = Or(SetupFields.Iron, plane.Iron.Thickness) },
            CapIron = plane.CapIron with { Slot = Or(SetupFields.Slot, plane.CapIron.Slot), Thickness = Or(SetupFields.CapIron, plane.CapIron.Thickness) },
        };
        SizeLimits? Limits(SizeField field) => values.Find(field) is { } size ? Assembly.OfPlane(size) : null;
        var assembly = new Assembly(lever, pin, measured) { Pad = Limits(SetupFields.Pad), PadOffset = Limits(SetupFields.PadOffset), Hole = Limits(SetupFields.Hole), PinDiameter = Limits(SetupFields.PinDiameter) };
        if (Limits(SetupFields.Tongue) is not { } tongue || Linkage.Of(assembly with { TongueWear = default(SizeLimits) }) is not { } unworn)
            return assembly;
        // Measured where it bears: what is missing there from the drawn outline is wear.
        Length drawn = unworn.Bearing.Thickness;
        return assembly with { TongueWear = new SizeLimits(drawn - tongue.Max, drawn - tongue.Min) };
    }

    private static IEnumerable<Diagnostic> Findings(Linkage linkage, IFieldValues values)
    {
        foreach (Gap gap in Gaps.All)
        {
            SizeLimits worst = linkage.Sizes.Worst(gap);
            if (worst.Min >= Length.Zero)
                continue;
            FieldSpec field = (FieldSpec?)Measured(gap).FirstOrDefault(f => values.Find(f) is not null) ?? SetupFields.Lever;
            DiagnosticKind kind = linkage.Typical[gap] < Length.Zero ? DiagnosticCatalogue.NoRoom : DiagnosticCatalogue.NoClearance;
            yield return kind.At(values.PositionOf(field), field.Name, "The " + gap.Words(), InMillimetres.InSentence(worst.Min), InMillimetres.InSentence(worst.Max));
        }

        if (FreeTravel.BeforeJam(linkage) is var (back, forward))
            yield return DiagnosticCatalogue.PadsJam.At(values.PositionOf(SetupFields.Lever), SetupFields.Lever.Name, InMillimetres.InSentence(back), InMillimetres.InSentence(forward), InMillimetres.InSentence(linkage.Assembly.Plane.Nut.Travel.Nominal));
        if (linkage.Bearing.IsThin)
            yield return DiagnosticCatalogue.ThinLand.At(values.PositionOf(SetupFields.Lever), SetupFields.Lever.Name, InMillimetres.InSentence(linkage.Bearing.Land), InMillimetres.InSentence(linkage.Bearing.StandOut), InMillimetres.InSentence(Bearing.LeastLand));
    }

    /// <summary>The sizes that an owner may have measured at a gap: a fault there is most likely in one of them.</summary>
    private static SizeField[] Measured(Gap gap) => gap switch
    {
        Gap.Thread => [SetupFields.Thread],
        Gap.Groove => [SetupFields.Groove, SetupFields.Pad, SetupFields.PadOffset],
        Gap.Pivot => [SetupFields.PinDiameter, SetupFields.Hole],
        _ => [SetupFields.Slot, SetupFields.Tongue],
    };

    private static ImmutableDictionary<MechanismPart, double> Prices(IFieldValues values)
    {
        var prices = ImmutableDictionary.CreateBuilder<MechanismPart, double>();
        foreach ((MechanismPart part, NumberField field) in (ReadOnlySpan<(MechanismPart, NumberField)>)[
            (MechanismPart.Pin, SetupFields.PinPrice), (MechanismPart.Lever, SetupFields.LeverPrice), (MechanismPart.Nut, SetupFields.NutPrice),
            (MechanismPart.CapIron, SetupFields.CapIronPrice), (MechanismPart.Iron, SetupFields.IronPrice)])
        {
            if (values.Find(field) is { } price)
                prices.Add(part, price);
        }

        return prices.ToImmutable();
    }
}
