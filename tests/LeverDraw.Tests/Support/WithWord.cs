using LeverDraw.Diagnostics;
using LeverDraw.Profiles;
using LeverDraw.Units;

namespace LeverDraw.Tests.Support;

/// <summary>A profile's values with one choice changed.</summary>
internal sealed class WithWord(IFieldValues inner, ChoiceField changed, string word) : IFieldValues
{
    public double? Find(NumberField field) => inner.Find(field);

    public SizeValue? Find(SizeField field) => inner.Find(field);

    public SizeValue Get(SizeField field) => inner.Get(field);

    public Angle Get(AngleField field) => inner.Get(field);

    public Length Get(RoughnessField field) => inner.Get(field);

    public Taper Get(TaperField field) => inner.Get(field);

    public string Get(ChoiceField field) => field == changed ? word : inner.Get(field);

    public string Get(TextField field) => inner.Get(field);

    public bool Get(FlagField field) => inner.Get(field);

    public bool IsStated(FieldSpec field) => field == changed || inner.IsStated(field);

    public SourcePosition PositionOf(FieldSpec field) => inner.PositionOf(field);
}
