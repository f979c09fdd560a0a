using System.CommandLine;
using LeverDraw.Cli.Json;
using LeverDraw.Cli.Reporting;
using LeverDraw.Diagnostics;
using LeverDraw.Parts;
using LeverDraw.Pipeline;
using LeverDraw.Profiles;

namespace LeverDraw.Cli.Commands;

/// <summary><c>explain CODE|FIELD</c>: a diagnostic's meaning, or a field's.</summary>
internal static class ExplainCommand
{
    public static Command Build(Surroundings surroundings)
    {
        Argument<string> word = new("CODE|FIELD") { Description = "A diagnostic's code, or a field's name or sign" };
        Option<bool> json = Arguments.Json();
        ExampleCommand command = new(
            "explain", "Tell what a diagnostic code or a field means, and what to do", "explain LD203", "explain arms.thickness")
        {
            word, json,
        };
        command.SetAction(parse => Run(surroundings, command, parse.GetRequiredValue(word), parse.GetValue(json)));
        return command;
    }

    private static int Run(Surroundings surroundings, Command command, string word, bool json)
    {
        if (DiagnosticCatalogue.Find(word) is { } code)
        {
            if (json)
                ShapesJson.Print(surroundings.Out, Shape(code), ShapesJson.Plain.CodeShape);
            else
                Print(surroundings, code);
            return ExitCode.Done;
        }

        FieldShape[] fields = [.. ProfileKinds.All.SelectMany(k => k.Fields.WithCommon.Where(f => IsNamed(f, word)).Select(f => Shape(f, k)))];
        if (fields.Length == 0)
            return UsageReport.Tell(surroundings, [Unknown(word)], command);
        if (json)
            ShapesJson.Print(surroundings.Out, fields, ShapesJson.Plain.IReadOnlyListFieldShape);
        else
            Print(surroundings.Out, fields);
        return ExitCode.Done;
    }

    /// <summary>By full name, by the key alone, or by its sign, whose case matters.</summary>
    private static bool IsNamed(FieldSpec field, string word) =>
        string.Equals(field.Name, word, StringComparison.OrdinalIgnoreCase)
        || (field.Name.Contains('.', StringComparison.Ordinal) && string.Equals(field.Name[(field.Name.IndexOf('.', StringComparison.Ordinal) + 1)..], word, StringComparison.OrdinalIgnoreCase))
        || string.Equals(field.Symbol, word, StringComparison.Ordinal);

    private static UsageFault Unknown(string word)
    {
        IEnumerable<string> fields = ProfileKinds.All.SelectMany(k => k.Fields.WithCommon).Select(f => f.Name).Distinct();
        string? near = NearestName.Of(word, DiagnosticCatalogue.All.Select(k => k.Code).Concat(fields));
        return new UsageFault(
            $"'{word}' is neither a diagnostic's code nor a field.",
            near is null ? "The command 'fields' lists all fields; docs/diagnostics.md lists all codes." : $"Did you mean '{near}'?");
    }

    private static CodeShape Shape(DiagnosticKind kind) =>
        new(kind.Code, DiagnosticText.Word(kind.Severity), kind.Title, kind.ExampleMessage, kind.ExampleHint, kind.Example);

    private static FieldShape Shape(FieldSpec field, PartKind kind)
    {
        FieldPage page = FieldPage.Of(field);
        return new FieldShape(kind.Name, field.Name, field.Symbol, field.Help, page.Allowed, page.Default, !field.IsOptional, page.Condition);
    }

    private static void Print(Surroundings surroundings, DiagnosticKind kind)
    {
        TextWriter to = surroundings.Out;
        to.WriteLine(Paint.Of(kind.Severity, $"{kind.Code} ({DiagnosticText.Word(kind.Severity)}): {kind.Title}", surroundings.ColourOut));
        to.WriteLine("Message:    " + kind.ExampleMessage);
        to.WriteLine("What to do: " + kind.ExampleHint);
        string[] example = kind.Example.Split('\n');
        to.WriteLine("Example:    " + string.Join("\n            ", example));
    }

    private static void Print(TextWriter to, IEnumerable<FieldShape> fields)
    {
        string? before = null;
        // The common fields are the same for all kinds and are told once.
        foreach (IGrouping<FieldShape, FieldShape> same in fields.GroupBy(f => f with { Kind = "" }))
        {
            FieldShape field = same.Key;
            if (before is not null)
                to.WriteLine();
            to.WriteLine(before = field.Name + (field.Symbol is null ? "" : $" ({field.Symbol})"));
            to.WriteLine("  What it is: " + field.Help);
            to.WriteLine("  Value:      " + field.Allowed);
            to.WriteLine("  Default:    " + (field.Required ? "none, it must be given" : field.Default ?? "none"));
            if (field.AppliesWhen is not null)
                to.WriteLine("  Applies:    " + field.AppliesWhen);
            to.WriteLine("  Part kinds: " + string.Join(", ", same.Select(f => f.Kind)));
        }
    }
}
