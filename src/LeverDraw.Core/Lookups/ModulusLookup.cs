using System.Collections.Immutable;
using LeverDraw.Diagnostics;
using LeverDraw.Standards;
using LeverDraw.Tolerancing.Allowances;
using LeverDraw.Units;

namespace LeverDraw.Lookups;

/// <summary>Casting modulus of a simple body.</summary>
public static class ModulusLookup
{
    /// <summary>Closed forms: no table to be sure of.</summary>
    private static readonly StandardSource _source = new(
        "Casting modulus", "Geometry", "", "", Certainty.Solid, "volume by cooling surface in closed form; a long bar and a wide plate without their ends");

    private static readonly LookupInput _body = new("BODY", "bar, plate, cylinder or block");
    private static readonly LookupInput _sizes = new("SIZES", "bar: width height; plate: thickness; cylinder: diameter length; block: three sides; a size with its unit stands in quotes", SeveralWords: true);

    public static Lookup Entry { get; } = new("modulus", "Casting modulus (volume by surface) of a bar, plate, cylinder or block", "modulus bar 3.6 5.2", [_body, _sizes], Find);

    private static readonly ImmutableArray<(string Name, int Sizes, Func<Length[], Length> Of)> _bodies =
    [
        ("bar", 2, s => CastingModulus.Bar(s[0], s[1])),
        ("plate", 1, s => CastingModulus.Plate(s[0])),
        ("cylinder", 2, s => CastingModulus.Cylinder(s[0], s[1])),
        ("block", 3, s => CastingModulus.Block(s[0], s[1], s[2])),
    ];

    private static Checked<LookupAnswer> Find(LookupRequest request)
    {
        IReadOnlyList<(string Name, int Sizes, Func<Length[], Length> Of)> named = request.Named(_body, "bodies", _bodies, b => b.Name);
        Length[] sizes = [.. (request.Text(_sizes) ?? "").Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(word => request.Size(word)).OfType<Length>()];
        if (named.Count > 0 && sizes.Length != named[0].Sizes)
            _ = request.Take(Answer<Length>.Refused(string.Create(System.Globalization.CultureInfo.InvariantCulture, $"a {named[0].Name} has {named[0].Sizes} {(named[0].Sizes == 1 ? "size" : "sizes")}, not {sizes.Length}")), out _);
        return request.Answer(() => new LookupAnswer("Modulus of a " + named[0].Name, [LookupRow.From(_source, named[0].Name, LookupValue.Size(named[0].Of(sizes)), "the larger, the later it sets")]));
    }
}
