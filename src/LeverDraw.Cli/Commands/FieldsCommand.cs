using System.CommandLine;
using LeverDraw.Cli.Reporting;
using LeverDraw.Parts;
using LeverDraw.Pipeline;
using LeverDraw.Profiles;
using LeverDraw.Units;

namespace LeverDraw.Cli.Commands;

/// <summary><c>fields [KIND]</c>: the fields a profile may have.</summary>
internal static class FieldsCommand
{
    public static Command Build(Surroundings surroundings)
    {
        Argument<string?> kind = new("KIND") { Description = "Part kind; all when left out", Arity = ArgumentArity.ZeroOrOne };
        Option<string> units = Arguments.Word("--units", "Unit of the ranges", "mm|in", "mm");
        Option<bool> json = Arguments.Json();
        Option<bool> schema = new("--schema") { Description = "Print a JSON Schema for editors; needs KIND" };
        ExampleCommand command = new(
            "fields", "List the fields of a part kind: sign, range, default, meaning",
            "fields lever", "fields pin --units in", "fields lever --schema")
        {
            kind, units, json, schema,
        };
        command.SetAction(parse => Run(
            surroundings, command, parse.GetValue(kind), parse.GetValue(units)!, parse.GetValue(json), parse.GetValue(schema)));
        return command;
    }

    private static int Run(Surroundings surroundings, Command command, string? name, string units, bool json, bool schema)
    {
        PartKind[] kinds = [.. ProfileKinds.All.Where(k => name is null || k.Name == name)];
        List<UsageFault> faults = [];
        if (kinds.Length == 0)
            faults.Add(new UsageFault($"There is no part kind '{name}'.", Names.DidYouMean(name!, ProfileKinds.All.Select(k => k.Name))));
        if (units is not ("mm" or "in"))
            faults.Add(new UsageFault($"'{units}' is no value for --units.", "Take mm or in."));
        if (schema && name is null)
            faults.Add(new UsageFault("--schema is of one part kind.", "Name one of: " + string.Join(", ", ProfileKinds.All.Select(k => k.Name)) + "."));
        if (schema && json)
            faults.Add(new UsageFault("--schema and --json ask for two things at once.", "Take one of them."));
        if (faults.Count > 0)
            return UsageReport.Tell(surroundings, faults, command);

        if (schema)
            surroundings.Out.Write(JsonSchema.For(kinds[0].Fields));
        else if (json)
            surroundings.Out.Write(name is null ? FieldsJson.For(kinds.Select(k => k.Fields)) : FieldsJson.For(kinds[0].Fields));
        else
            PrintTables(surroundings.Out, kinds, units == "in" ? LengthUnit.Inch : LengthUnit.Millimetre);
        return ExitCode.Done;
    }

    private static void PrintTables(TextWriter to, PartKind[] kinds, LengthUnit unit)
    {
        foreach (PartKind kind in kinds)
        {
            if (kinds.Length > 1)
                to.Write((kind == kinds[0] ? "" : "\n") + kind.Name + "\n");
            to.Write(FieldTable.Text(kind.Fields, unit));
        }
    }
}
