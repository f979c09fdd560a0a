using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;

namespace LeverDraw.Diagnostics;

/// <summary>A value with the warnings met on the way, or the faults that kept it from being made. A stage collects all its faults before it stops.</summary>
public sealed class Checked<T>
    where T : class
{
    private Checked(T? value, ImmutableArray<Diagnostic> diagnostics)
    {
        Value = value;
        Diagnostics = diagnostics;
    }

    /// <summary>The value, or null when there is an error among <see cref="Diagnostics"/>.</summary>
    public T? Value { get; }

    public ImmutableArray<Diagnostic> Diagnostics { get; }

    [MemberNotNullWhen(true, nameof(Value))]
    public bool Ok => Value is not null;

    public static Checked<T> Good(T value, IEnumerable<Diagnostic>? warnings = null)
    {
        ImmutableArray<Diagnostic> all = warnings?.ToImmutableArray() ?? [];
        return all.Any(d => d.Severity == Severity.Error)
            ? throw new ArgumentException("A good value carries no errors.", nameof(warnings))
            : new Checked<T>(value, all);
    }

    public static Checked<T> Bad(IEnumerable<Diagnostic> diagnostics)
    {
        ImmutableArray<Diagnostic> all = [.. diagnostics];
        return all.Any(d => d.Severity == Severity.Error)
            ? new Checked<T>(null, all)
            : throw new ArgumentException("A bad result carries at least one error.", nameof(diagnostics));
    }

    /// <summary>Good when no error was collected; otherwise bad, and <paramref name="make"/> is not called.</summary>
    public static Checked<T> From(IReadOnlyCollection<Diagnostic> diagnostics, Func<T> make) =>
        diagnostics.Any(d => d.Severity == Severity.Error) ? Bad(diagnostics) : Good(make(), diagnostics);

    /// <summary>Goes on to the next stage, keeping what was told so far.</summary>
    public Checked<TNext> Then<TNext>(Func<T, Checked<TNext>> next)
        where TNext : class
    {
        if (!Ok)
            return Checked<TNext>.Bad(Diagnostics);
        Checked<TNext> result = next(Value);
        ImmutableArray<Diagnostic> all = [.. Diagnostics, .. result.Diagnostics];
        return result.Ok ? Checked<TNext>.Good(result.Value, all) : Checked<TNext>.Bad(all);
    }
}
