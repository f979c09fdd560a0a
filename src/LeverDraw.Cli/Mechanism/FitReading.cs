using System.Collections.Immutable;
using LeverDraw.Cli.Commands;
using LeverDraw.Diagnostics;
using LeverDraw.Mechanism.Fitting;
using LeverDraw.Parts;
using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Parts.HostPlanes;
using LeverDraw.Parts.PivotPin;
using LeverDraw.Pipeline;
using LeverDraw.Profiles;

namespace LeverDraw.Cli.Mechanism;

/// <summary>Levers, pins and planes from files in any order; each lever gets the pin whose drawing number it names.</summary>
internal static class FitReading
{
    /// <param name="Profiles">Of the levers, in their order.</param>
    public sealed record Parts(ImmutableArray<FittedLever> Levers, ImmutableArray<HostPlane> Planes, ImmutableArray<Profile> Profiles)
    {
        public (FittedLever Lever, Profile Profile) First => (Levers[0], Profiles[0]);
    }

    public static Checked<Parts> Read(IEnumerable<string> paths, IProfileSource source)
    {
        List<Diagnostic> told = [];
        List<(Profile Profile, Lever Lever)> levers = [];
        List<(string Number, Pin Pin)> pins = [];
        List<HostPlane> planes = [];
        foreach (string path in paths)
        {
            Checked<Profile> read = ProfileReader.Read(path, source, [.. ProfileKinds.All.Select(k => k.Fields)]);
            told.AddRange(read.Diagnostics);
            if (!read.Ok)
                continue;
            string kind = read.Value.Kind;
            if (kind == PartKinds.Lever.Name)
                Take(LeverPart.Build(read.Value.Values), l => levers.Add((read.Value, l)));
            else if (kind == PartKinds.Pin.Name)
                Take(PinPart.Build(read.Value.Values), p => pins.Add((read.Value.Values.Get(CommonFields.Number), p)));
            else if (kind == PartKinds.Plane.Name)
                Take(HostPlanePart.Build(read.Value.Name, read.Value.Values), planes.Add);
            else
                told.Add(DiagnosticCatalogue.OtherKindGiven.At(SourcePosition.WholeFile(path), null, kind, "lever, pin or plane"));
        }

        List<FittedLever> fitted = [];
        foreach ((Profile profile, Lever lever) in levers)
        {
            string wanted = lever.Hole.Pin;
            if (pins.FirstOrDefault(p => p.Number.Length > 0 && p.Number == wanted).Pin is { } pin)
                fitted.Add(new FittedLever(profile.Name, profile.Values.Get(CommonFields.Number), lever, pin));
            else
                told.Add(DiagnosticCatalogue.PinNotGiven.At(profile.Values.PositionOf(LeverFields.HolePin), LeverFields.HolePin.Name, profile.Name, wanted.Length > 0 ? "'" + wanted + "'" : "that its 'hole.pin' should name"));
        }

        return Checked<Parts>.From(told, () => new Parts([.. fitted], [.. planes], [.. levers.Select(l => l.Profile)]));

        void Take<T>(Checked<T> part, Action<T> good)
            where T : class
        {
            told.AddRange(part.Diagnostics);
            if (part.Ok)
                good(part.Value);
        }
    }

    /// <summary>What is missing for there to be anything to compare.</summary>
    public static IEnumerable<UsageFault> Missing(Parts parts)
    {
        if (parts.Levers.IsEmpty)
            yield return new UsageFault("There is no lever among the files.", "Give profiles of levers, of their pins, and of planes.");
        if (parts.Planes.IsEmpty)
            yield return new UsageFault("There is no plane among the files.", "Give profiles of planes, such as profiles/planes/middle.toml.");
    }
}
