namespace LeverDraw.Units;

/// <summary>Why a text was not understood, as the end of a sentence, and the index of the character at fault.</summary>
public sealed record TextFault(string Reason, int Index);

/// <summary>What reading a text gave: a value, or the fault.</summary>
public readonly record struct TextResult<T>
    where T : struct
{
    private readonly T value;

    private TextResult(T value, bool statesUnit, TextFault? fault)
    {
        this.value = value;
        StatesUnit = statesUnit;
        Fault = fault;
    }

    /// <summary>Null when the text was understood.</summary>
    public TextFault? Fault { get; }

    public bool Ok => Fault is null;

    /// <summary>True when the text names its unit itself.</summary>
    public bool StatesUnit { get; }

    /// <exception cref="InvalidOperationException">The text was not understood.</exception>
    public T Value => Fault is null ? value : throw new InvalidOperationException("The text was not understood: " + Fault.Reason);

    public static TextResult<T> Good(T value, bool statesUnit) => new(value, statesUnit, null);

    public static TextResult<T> Bad(string reason, int index) => new(default, false, new TextFault(reason, index));
}
