using LeverDraw.Diagnostics;
using LeverDraw.Standards;
using LeverDraw.Tolerancing;
using LeverDraw.Units;

namespace LeverDraw.Lookups;

/// <summary>General tolerances: of a length, of a radius or chamfer, of an angle by its shorter side.</summary>
public static class GeneralLookup
{
    private static readonly LookupInput _size = new("SIZE", "The size; of an angle the length of its shorter side");
    private static readonly LookupInput _class = new("CLASS", "f, m, c or v");
    private static readonly LookupInput _of = new("--of", "length, radius (or chamfer), angle; all three when left out", Needed: false);

    private static readonly string[] _kinds = ["length", "radius", "angle"];

    public static Lookup Entry { get; } = new(
        "general", "General tolerance of a length, radius, chamfer or angle", "general 14 m", [_size, _class, _of], Find);

    private static Checked<LookupAnswer> Find(LookupRequest request)
    {
        Length? size = request.Size(_size);
        bool known = request.Take(GeneralToleranceClasses.Lettered(request.Text(_class) ?? ""), out GeneralToleranceClass letter);
        IReadOnlyList<string> asked = request.Text(_of) is null ? _kinds : request.Named(_of, "kinds of size", _kinds, kind => kind);
        List<LookupRow> rows = [];
        if (size is { } nominal && known)
        {
            GeneralTolerance tolerance = new(letter);
            // Asked for all, a kind that has no value is left out as long as another has one.
            bool one = asked.Count == 1;
            Add(asked.Contains("length"), "on a length", tolerance.OfLength(nominal), Iso2768Linear.Source, d => LookupValue.PlusMinus(d.Upper));
            Add(asked.Contains("radius"), "on a radius or chamfer", tolerance.OfRadius(nominal), Iso2768Radii.Source, d => LookupValue.PlusMinus(d.Upper));
            Add(asked.Contains("angle"), "on an angle with this shorter side", tolerance.OfAngle(nominal), Iso2768Angles.Source, LookupValue.TurnPlusMinus);
            if (rows.Count == 0 && !one)
                _ = request.Take(tolerance.OfLength(nominal), out _);

            void Add<T>(bool wanted, string name, Answer<T> answer, StandardSource source, Func<T, LookupValue> value)
                where T : notnull
            {
                if (!wanted || (!one && !answer.IsGiven))
                    return;
                if (request.Take(answer, out T? found))
                    rows.Add(LookupRow.From(source, HowSure(source, nominal), name, value(found)));
            }
        }

        return request.Answer(() => new LookupAnswer(new GeneralTolerance(letter).Text + " at " + ZoneRows.Both(size!.Value), [.. rows]));
    }

    /// <summary>Radii: three sources to 30 mm, above they differ.</summary>
    private static Certainty HowSure(StandardSource source, Length nominal) =>
        source != Iso2768Radii.Source ? source.Certainty : nominal.Millimetres <= 30 ? Certainty.Solid : Certainty.Mixed;
}
