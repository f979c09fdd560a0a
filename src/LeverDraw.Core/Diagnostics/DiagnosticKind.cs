using System.Collections.Immutable;
using System.Globalization;

namespace LeverDraw.Diagnostics;

/// <summary>What the catalogue knows of one code. Every diagnostic is made by <see cref="At"/>, so a text exists once.</summary>
/// <param name="Title">A few words, for lists.</param>
/// <param name="Text">The message, with <c>{0}</c>, <c>{1}</c> … for the arguments.</param>
/// <param name="Hint">What to do next; may use the same arguments.</param>
/// <param name="Example">A piece of profile, or a situation, that leads to it.</param>
/// <param name="ExampleArguments">The arguments the example gives; their number is the number every use must give.</param>
public sealed record DiagnosticKind(
    string Code,
    Severity Severity,
    string Title,
    string Text,
    string Hint,
    string Example,
    ImmutableArray<string> ExampleArguments)
{
    public string ExampleMessage => Fill(Text, [.. ExampleArguments]);

    public string ExampleHint => Fill(Hint, [.. ExampleArguments]);

    /// <summary>A finding of this kind.</summary>
    /// <param name="position">Where; null when it belongs to no file.</param>
    /// <param name="field">The field's full name, or null.</param>
    /// <param name="arguments">Text, whole numbers or doubles (at most six decimals are shown, no unit is added).</param>
    /// <exception cref="ArgumentException">The number of arguments, or the type of one, is wrong.</exception>
    public Diagnostic At(SourcePosition? position, string? field, params ReadOnlySpan<object> arguments)
    {
        object[] texts = Texts(arguments);
        return new Diagnostic(Code, Severity, position, field, Fill(Text, texts), Fill(Hint, texts));
    }

    /// <summary>As <see cref="At"/>, with a next step fitted to the case, such as the nearest good name; null takes the usual one.</summary>
    public Diagnostic AtWithHint(SourcePosition? position, string? field, string? hint, params ReadOnlySpan<object> arguments)
    {
        Diagnostic usual = At(position, field, arguments);
        return hint is null ? usual : usual with { Suggestion = hint };
    }

    private static string Fill(string template, object[] arguments) =>
        string.Format(CultureInfo.InvariantCulture, template, arguments);

    private object[] Texts(ReadOnlySpan<object> arguments)
    {
        if (arguments.Length != ExampleArguments.Length)
            throw new ArgumentException($"{Code} takes {Count(ExampleArguments.Length)} arguments, not {Count(arguments.Length)}.", nameof(arguments));
        object[] texts = new object[arguments.Length];
        for (int i = 0; i < texts.Length; i++)
            texts[i] = arguments[i] switch
            {
                string text => text,
                int whole => whole.ToString(CultureInfo.InvariantCulture),
                long whole => whole.ToString(CultureInfo.InvariantCulture),
                char one => one.ToString(),
                double number => number.ToString("0.######", CultureInfo.InvariantCulture),
                // A struct's own ToString would put a programmer's dump before the user.
                _ => throw new ArgumentException($"{Code}: argument {Count(i)} is neither text nor number.", nameof(arguments)),
            };
        return texts;
    }

    private static string Count(int n) => n.ToString(CultureInfo.InvariantCulture);
}
