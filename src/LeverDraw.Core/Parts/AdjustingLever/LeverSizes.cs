using LeverDraw.Profiles;

namespace LeverDraw.Parts.AdjustingLever;

/// <summary>A lever's sizes as the profile states them, tolerances included, asked for by field.</summary>
public sealed class LeverSizes
{
    private readonly Dictionary<string, SizeValue> _byName = [];

    internal LeverSizes(IFieldValues values)
    {
        foreach (FieldSpec field in LeverFields.All)
        {
            if (field is SizeField size && values.Find(size) is { } value)
                _byName[field.Name] = value;
        }
    }

    /// <exception cref="KeyNotFoundException">The field does not apply to this lever: ask <see cref="Find"/>.</exception>
    public SizeValue this[SizeField field] => _byName[field.Name];

    /// <summary>The size, or null when the field is absent or does not apply.</summary>
    public SizeValue? Find(SizeField field) => _byName.GetValueOrDefault(field.Name);
}
