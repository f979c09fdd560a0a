namespace LeverDraw.Standards;

/// <summary>What a table or rule says: a value, or a refusal that names the valid range. There is no third case and no guess.</summary>
public sealed class Answer<T>
    where T : notnull
{
    private readonly T? _value;

    private Answer(T? value, string? refusal)
    {
        _value = value;
        Refusal = refusal;
    }

    public bool IsGiven => Refusal is null;

    /// <exception cref="InvalidOperationException">The answer is a refusal; look at <see cref="IsGiven"/> first.</exception>
    public T Value => Refusal is null ? _value! : throw new InvalidOperationException(Refusal);

    /// <summary>Why there is no value, with the valid range, as one sentence without a stop; null when there is one.</summary>
    public string? Refusal { get; }

    public static Answer<T> Given(T value) => new(value, null);

    public static Answer<T> Refused(string reason) => new(default, reason);

    /// <summary>The first row of a table that fits.</summary>
    /// <param name="refusal">Asked for only when no row does.</param>
    public static Answer<T> First(IEnumerable<T> rows, Func<T, bool> fits, Func<string> refusal)
    {
        foreach (T row in rows)
        {
            if (fits(row))
                return Given(row);
        }

        return Refused(refusal());
    }

    public Answer<TNext> Map<TNext>(Func<T, TNext> next)
        where TNext : notnull =>
        IsGiven ? Answer<TNext>.Given(next(Value)) : Answer<TNext>.Refused(Refusal!);

    public Answer<TNext> Then<TNext>(Func<T, Answer<TNext>> next)
        where TNext : notnull =>
        IsGiven ? next(Value) : Answer<TNext>.Refused(Refusal!);
}
