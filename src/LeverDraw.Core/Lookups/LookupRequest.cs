using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using LeverDraw.Diagnostics;
using LeverDraw.Standards;
using LeverDraw.Units;

namespace LeverDraw.Lookups;

/// <summary>What was given to a look-up, by the names of its inputs. Faults are collected while it is read; they have a code and no place.</summary>
public sealed class LookupRequest(IReadOnlyDictionary<string, string> given)
{
    /// <summary>Beyond every table; larger numbers are a slip of the unit or the point.</summary>
    private static readonly Length _largest = Length.FromMillimetres(100_000);

    private readonly List<Diagnostic> _faults = [];

    /// <summary>Null when it was not given.</summary>
    public string? Text(LookupInput input) => given.TryGetValue(input.Name, out string? text) ? text.Trim() : null;

    /// <summary>A size above zero, in millimetres unless it says otherwise; null when it was not given or is at fault.</summary>
    public Length? Size(LookupInput input) => Text(input) is { } text ? Size(text) : null;

    /// <summary>One of several sizes of an input.</summary>
    public Length? Size(string text)
    {
        TextResult<Length> read = LengthText.Parse(text, LengthUnit.Millimetre);
        string? reason = !read.Ok ? read.Fault!.Reason
            : read.Value <= Length.Zero ? "it must be above zero"
            : read.Value > _largest ? "it is larger than any table goes"
            : null;
        if (reason is null)
            return read.Value;
        _faults.Add(DiagnosticCatalogue.BadSize.At(null, null, text, reason));
        return null;
    }

    /// <summary>A whole number that may stand after a word such as DCTG; null after a fault.</summary>
    public int? Whole(LookupInput input, string prefix)
    {
        string text = Text(input) ?? "";
        string bare = text.StartsWith(prefix, StringComparison.OrdinalIgnoreCase) ? text[prefix.Length..].Trim() : text;
        if (bare.Length < 6 && int.TryParse(bare, NumberStyles.None, CultureInfo.InvariantCulture, out int number))
            return number;
        _faults.Add(DiagnosticCatalogue.NotInTable.At(null, null, input.Name + " is a whole number, not \"" + text + "\""));
        return null;
    }

    /// <summary>The value of a table's answer; a refusal becomes a fault.</summary>
    public bool Take<T>(Answer<T> answer, [NotNullWhen(true)] out T? value)
        where T : notnull
    {
        value = answer.IsGiven ? answer.Value : default;
        if (!answer.IsGiven)
            _faults.Add(DiagnosticCatalogue.NotInTable.At(null, null, answer.Refusal!));
        return answer.IsGiven;
    }

    /// <summary>The rows whose name is the text, or else holds it; none of them is a fault that names the nearest.</summary>
    public IReadOnlyList<T> Named<T>(LookupInput input, string what, IEnumerable<T> rows, Func<T, string> name)
    {
        string wanted = Text(input) ?? "";
        T[] all = [.. rows];
        T[] same = [.. all.Where(row => string.Equals(name(row), wanted, StringComparison.OrdinalIgnoreCase))];
        if (same.Length == 0 && wanted.Length > 0)
            same = [.. all.Where(row => name(row).Contains(wanted, StringComparison.OrdinalIgnoreCase))];
        if (same.Length == 0)
        {
            string[] known = [.. all.Select(name).Distinct(StringComparer.OrdinalIgnoreCase)];
            string? near = NearestName.Of(wanted, known);
            _faults.Add(DiagnosticCatalogue.NoSuchEntry.AtWithHint(
                null, null, near is null ? null : "Did you mean '" + near + "'?", wanted, what, string.Join("; ", known)));
        }

        return same;
    }

    /// <summary>The answer when nothing was at fault; otherwise the faults, and <paramref name="make"/> is not called.</summary>
    public Checked<LookupAnswer> Answer(Func<LookupAnswer> make) => Checked<LookupAnswer>.From(_faults, make);
}
