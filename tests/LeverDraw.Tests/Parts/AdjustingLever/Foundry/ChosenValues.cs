using LeverDraw.Diagnostics;
using LeverDraw.Parts.AdjustingLever.Foundry;
using LeverDraw.Profiles;
using LeverDraw.Units;

namespace LeverDraw.Tests.Parts.AdjustingLever.Foundry;

/// <summary>A profile's values with another metal and process.</summary>
internal sealed class ChosenValues(IFieldValues inner, string metal, string process) : IFieldValues
{
    public double? Find(NumberField field) => inner.Find(field);

    public SizeValue? Find(SizeField field) => inner.Find(field);

    public SizeValue Get(SizeField field) => inner.Get(field);

    public Angle Get(AngleField field) => inner.Get(field);

    public Length Get(RoughnessField field) => inner.Get(field);

    public Taper Get(TaperField field) => inner.Get(field);

    public string Get(ChoiceField field) => field == CastingFields.Metal ? metal : field == CastingFields.Process ? process : inner.Get(field);

    public string Get(TextField field) => inner.Get(field);

    public bool Get(FlagField field) => inner.Get(field);

    public bool IsStated(FieldSpec field) => inner.IsStated(field);

    public SourcePosition PositionOf(FieldSpec field) => inner.PositionOf(field);
}
