using LeverDraw.Diagnostics;
using LeverDraw.Units;

namespace LeverDraw.Profiles;

/// <summary>The values of a part kind's fields as one profile gives them, every one already checked against its own range.</summary>
public interface IFieldValues
{
    /// <summary>The value, the default, or null when absent or not applying.</summary>
    SizeValue? Find(SizeField field);

    /// <summary>The value or the default; the reader has made sure it is there.</summary>
    /// <exception cref="InvalidOperationException">The field is absent (a programming mistake).</exception>
    SizeValue Get(SizeField field);

    Angle Get(AngleField field);

    /// <summary>Ra; zero when the surface is left unsaid.</summary>
    Length Get(RoughnessField field);

    /// <summary>The number, or null when absent.</summary>
    double? Find(NumberField field);

    Taper Get(TaperField field);

    string Get(ChoiceField field);

    string Get(TextField field);

    bool Get(FlagField field);

    /// <summary>True when the profile itself (or one it extends) states the field.</summary>
    bool IsStated(FieldSpec field);

    /// <summary>Where the field's value stands; where its table or file is when it is not stated.</summary>
    SourcePosition PositionOf(FieldSpec field);
}
