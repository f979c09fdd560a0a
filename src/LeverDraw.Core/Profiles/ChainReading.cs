using System.Collections.Immutable;
using LeverDraw.Diagnostics;
using LeverDraw.Units;

namespace LeverDraw.Profiles;

/// <summary>Reads the fields of every file of a chain, merges them, and checks what only the whole can tell: what is missing, and what does not apply.</summary>
/// <param name="kind">Null when the kind is unknown; then only the common fields can be checked.</param>
internal sealed class ChainReading(string path, PartFields? kind, ImmutableArray<string> kinds, ProfileChain chain)
{
    private readonly ImmutableArray<FieldSpec> specs = kind?.WithCommon ?? CommonFields.All;
    private readonly Dictionary<string, StatedValue> stated = new(StringComparer.Ordinal);

    /// <summary>Fields given with a value that could not be read: neither missing nor known.</summary>
    private readonly HashSet<string> unreadable = new(StringComparer.Ordinal);

    public MergedValues Read()
    {
        ImmutableDictionary<string, FieldSpec> byName = specs.ToImmutableDictionary(f => f.Name, StringComparer.Ordinal);
        ImmutableHashSet<string> tables = [.. specs.Where(f => f.Name.Contains('.', StringComparison.Ordinal)).Select(f => f.Name.Split('.')[0])];
        for (int generation = 0; generation < chain.Links.Length; generation++)
            ReadFile(generation, byName, tables);
        ImmutableDictionary<string, SourcePosition> places = chain.Links[0].Document.Tables.ToImmutableDictionary(
            t => t.Name, t => chain.Links[0].Document.Source.Position(t.Span), StringComparer.Ordinal);
        MergedValues values = new(path, byName, stated.ToImmutableDictionary(StringComparer.Ordinal), places);
        foreach (FieldSpec field in specs)
            CheckWhole(field, values);
        return values;
    }

    private void ReadFile(int generation, ImmutableDictionary<string, FieldSpec> byName, ImmutableHashSet<string> tables)
    {
        ChainLink link = chain.Links[generation];
        FieldReader reader = new(UnitOf(generation), link.Faults);
        HashSet<string> unknownTables = new(StringComparer.Ordinal);
        if (kind is not null)
            foreach (RawTable table in link.Document.Tables.Where(t => !tables.Contains(t.Name)))
            {
                unknownTables.Add(table.Name);
                TellUnknownTable(link, table, tables);
            }
        foreach (RawEntry entry in link.Document.Entries)
        {
            string name = string.Join('.', entry.Path);
            if (byName.TryGetValue(name, out FieldSpec? field))
                Take(generation, link, reader, field, entry.Value);
            else if (entry.Value is not null && kind is not null && !unknownTables.Contains(entry.Path[0]))
                TellUnknownField(link, entry, name);
        }
    }

    private void Take(int generation, ChainLink link, FieldReader reader, FieldSpec field, RawValue? raw)
    {
        object? value = raw is null ? null : reader.Read(field, raw);
        if (generation > 0 && CommonFields.NeverInherited.Contains(field))
            return;
        if (stated.ContainsKey(field.Name) || unreadable.Contains(field.Name))
            return;
        if (value is null)
            unreadable.Add(field.Name);
        else
            stated.Add(field.Name, new StatedValue(value, link.Document.Source.Position(raw!.Span), generation));
    }

    /// <summary>The file's own units; else those of the nearest file it extends.</summary>
    private LengthUnit UnitOf(int generation) =>
        chain.Links.Skip(generation)
            .Select(l => (l.Document.Find(CommonFields.Units.Name)?.Value as RawText)?.Value)
            .FirstOrDefault(w => w is not null && CommonFields.Units.Choices.Contains(w)) is { } word
            ? CommonFields.UnitOf(word)
            : LengthUnit.Millimetre;

    private void CheckWhole(FieldSpec field, MergedValues values)
    {
        if (!ConditionIsKnown(field))
            return;
        bool applies = values.Applies(field);
        if (stated.TryGetValue(field.Name, out StatedValue? value))
        {
            if (!applies)
                CheckDoesNotApply(field, field.OnlyWhen!, value);
        }
        else if (applies && !field.IsOptional && chain.IsWhole && !IsMentioned(field))
        {
            ChainLink root = chain.Links[0];
            TextSpan? at = field.Name.Split('.') is [var table, _] ? root.Document.Tables.FirstOrDefault(t => t.Name == table)?.Span : null;
            root.Faults.Add(DiagnosticCatalogue.MissingField, at, field.Name, field.Name, field.Help,
                field == CommonFields.Kind ? WordList.Or([.. kinds]) : FieldWords.Allowed(field, UnitOf(0)));
        }
    }

    private void CheckDoesNotApply(FieldSpec field, FieldCondition only, StatedValue value)
    {
        stated.TryGetValue(only.Choice.Name, out StatedValue? choice);
        // A nearer file that takes another choice leaves what it inherits behind; that is no fault.
        if (choice is not null && choice.Generation < value.Generation)
            return;
        ChainLink link = chain.Links[value.Generation];
        TextSpan? at = link.Document.Find(field.Name)?.Value?.Span;
        link.Faults.Add(DiagnosticCatalogue.DoesNotApply, at, field.Name, field.Name, only.Choice.Name,
            WordList.Or([.. only.Values]), choice?.Value as string ?? only.Choice.Default ?? "not given");
    }

    private bool ConditionIsKnown(FieldSpec field) =>
        field.OnlyWhen is not { } only
        || (!unreadable.Contains(only.Choice.Name) && (only.Choice.IsOptional || stated.ContainsKey(only.Choice.Name)) && ConditionIsKnown(only.Choice));

    private bool IsMentioned(FieldSpec field) =>
        unreadable.Contains(field.Name) || chain.Links.Any(l => l.Document.Mentioned.Contains(field.Name));

    private void TellUnknownTable(ChainLink link, RawTable table, ImmutableHashSet<string> tables)
    {
        if (link.Faults.IsFull)
        {
            link.Faults.Add(DiagnosticCatalogue.UnknownTable, table.Span, null, "", "", "");
            return;
        }
        ImmutableArray<string> inOrder = [.. specs.Select(f => f.Name.Split('.')[0]).Where(tables.Contains).Distinct()];
        string? near = NearestName.Of(table.Name, inOrder);
        link.Faults.AddWithHint(DiagnosticCatalogue.UnknownTable, table.Span, null, near is null ? null : "Did you mean [" + near + "]?",
            FieldReader.Shown(table.Name), kind!.Kind, string.Join(", ", inOrder));
    }

    private void TellUnknownField(ChainLink link, RawEntry entry, string name)
    {
        string? near = link.Faults.IsFull ? null
            : specs.FirstOrDefault(f => f.Name.Split('.')[^1] == entry.Path[^1])?.Name
            ?? NearestName.Of(name, specs.Where(f => f.Name.StartsWith(entry.Path[0] + ".", StringComparison.Ordinal)).Select(f => f.Name))
            ?? NearestName.Of(name, specs.Select(f => f.Name));
        link.Faults.AddWithHint(DiagnosticCatalogue.UnknownField, entry.KeySpan, null, near is null ? null : "Did you mean '" + near + "'?",
            FieldReader.Shown(name), kind!.Kind);
    }
}
