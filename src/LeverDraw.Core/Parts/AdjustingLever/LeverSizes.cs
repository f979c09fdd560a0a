using LeverDraw.Profiles;
using LeverDraw.Units;

namespace LeverDraw.Parts.AdjustingLever;

/// <summary>A lever's sizes as the profile states them, tolerances included, asked for by field.</summary>
public sealed class LeverSizes
{
    private readonly Dictionary<string, SizeValue> _byName = [];
    private readonly Dictionary<string, Length> _roughness = [];

    private LeverSizes(Dictionary<string, SizeValue> sizes, Dictionary<string, Length> roughness) =>
        (_byName, _roughness) = (new(sizes), new(roughness));

    internal LeverSizes(IFieldValues values)
    {
        foreach (FieldSpec field in LeverFields.All)
        {
            if (field is SizeField size && values.Find(size) is { } value)
                _byName[field.Name] = value;
            else if (field is RoughnessField rough)
                _roughness[field.Name] = values.Get(rough);
        }
    }

    /// <exception cref="KeyNotFoundException">The field does not apply to this lever: ask <see cref="Find"/>.</exception>
    public SizeValue this[SizeField field] => _byName[field.Name];

    /// <summary>Ra; zero when the surface is left unsaid.</summary>
    public Length this[RoughnessField field] => _roughness[field.Name];

    /// <summary>The size, or null when the field is absent or does not apply.</summary>
    public SizeValue? Find(SizeField field) => _byName.GetValueOrDefault(field.Name);

    /// <summary>The same sizes but for these, which lose their tolerances: a casting or pattern does not hold those of the finished part.</summary>
    internal LeverSizes With(IReadOnlyDictionary<SizeField, Length> changed)
    {
        LeverSizes sizes = new(_byName, _roughness);
        foreach ((SizeField field, Length size) in changed)
            sizes._byName[field.Name] = new SizeValue(size);
        return sizes;
    }

    internal LeverSizes With(IReadOnlyDictionary<SizeField, SizeValue> changed)
    {
        LeverSizes sizes = new(_byName, _roughness);
        foreach ((SizeField field, SizeValue size) in changed)
            sizes._byName[field.Name] = size;
        return sizes;
    }
}
