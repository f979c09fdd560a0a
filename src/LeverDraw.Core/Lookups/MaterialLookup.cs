using LeverDraw.Diagnostics;
using LeverDraw.Standards;

namespace LeverDraw.Lookups;

/// <summary>Density and strength of a material.</summary>
public static class MaterialLookup
{
    private static readonly LookupInput _name = new("NAME", "Name or part of it: brass, grey iron, C836", SeveralWords: true);

    public static Lookup Entry { get; } = new("material", "Density, modulus and least strength of a material", "material brass", [_name], Find);

    private static Checked<LookupAnswer> Find(LookupRequest request)
    {
        IReadOnlyList<Material> found = request.Named(_name, "materials", Materials.All, m => m.Name);
        return request.Answer(() => new LookupAnswer("Material: " + request.Text(_name), [.. found.SelectMany(Rows)]));
    }

    private static IEnumerable<LookupRow> Rows(Material m)
    {
        (string Name, double Least, double Most, string Unit)[] values =
        [
            ("density", m.DensityMin, m.DensityMax, "g/cm³"),
            ("Young's modulus", m.ModulusMin, m.ModulusMax, "GPa"),
            ("least tensile strength", m.TensileStrength, m.TensileStrength, "MPa"),
            ("least yield strength", m.YieldStrength, m.YieldStrength, "MPa"),
            ("least elongation", m.Elongation, m.Elongation, "%"),
        ];
        return values.Where(v => !double.IsNaN(v.Least)).Select(v => LookupRow.From(
            Materials.Source, m.Certainty, m.Name + ", " + v.Name, LookupValue.Amount(v.Least, v.Most, v.Unit)));
    }
}
