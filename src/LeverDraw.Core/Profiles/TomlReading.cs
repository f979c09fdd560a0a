using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using LeverDraw.Diagnostics;
using Tomlyn;
using Tomlyn.Parsing;
using Tomlyn.Syntax;

namespace LeverDraw.Profiles;

/// <summary>From TOML text to a <see cref="ProfileDocument"/>; the only file that knows the TOML package's syntax tree.</summary>
internal static class TomlReading
{
    private const int DeepestNesting = 8;

    private static readonly TomlSerializerOptions Options = new() { MaxDepth = DeepestNesting };

    /// <summary>The document as far as it could be read; null when nothing could.</summary>
    /// <param name="deepest">How many names an entry may have, its table among them.</param>
    public static ProfileDocument? Read(SourceMap source, FileFaults faults, int deepest = 2)
    {
        DocumentSyntax tree;
        try
        {
            // Without the package's own validation: it words its faults for programmers, and stops at the first of a name.
            tree = SyntaxParser.Parse(source.Text, Options, source.File, validate: false);
        }
        catch (TomlException tooDeep)
        {
            TextSpan? at = tooDeep.Span is { } span ? new TextSpan(span.Offset, 1) : null;
            faults.Add(DiagnosticCatalogue.NestedTooDeep, at, null, DeepestNesting);
            return null;
        }
        catch (ArgumentException)
        {
            // The package lets an escape beyond Unicode through to a conversion that throws; without a tree, this is all that can be told.
            faults.Add(DiagnosticCatalogue.BadSyntax, BadEscape(source.Text), null, "an escape stands for no character");
            return null;
        }
        HashSet<int> brokenLines = SyntaxFaults.Tell(source, tree.Diagnostics.Select(d => (Span(source, d.Span), d.Message)), faults);
        Walk walk = new(source, faults, brokenLines, deepest);
        foreach (KeyValueSyntax item in tree.KeyValues)
            walk.Add([], item);
        foreach (TableSyntaxBase table in tree.Tables)
            walk.AddTable(table);
        return walk.Document();
    }

    private static TextSpan Span(SourceMap source, SourceSpan span)
    {
        int start = Math.Clamp(span.Offset, 0, source.Text.Length);
        return new TextSpan(start, Math.Clamp(span.Length, 0, source.Text.Length - start));
    }

    private static TextSpan? BadEscape(string text)
    {
        for (int i = text.IndexOf('\\', StringComparison.Ordinal); i >= 0 && i + 2 < text.Length; i = text.IndexOf('\\', i + 2))
        {
            int digits = text[i + 1] switch { 'u' => 4, 'U' => 8, 'x' => 2, _ => 0 };
            if (digits > 0 && i + 2 + digits <= text.Length
                && uint.TryParse(text.AsSpan(i + 2, digits), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out uint value)
                && !Rune.IsValid(value))
                return new TextSpan(i, 2 + digits);
        }
        return null;
    }

    private sealed class Walk(SourceMap source, FileFaults faults, HashSet<int> brokenLines, int deepest)
    {
        private readonly ImmutableArray<RawTable>.Builder tables = ImmutableArray.CreateBuilder<RawTable>();
        private readonly ImmutableArray<RawEntry>.Builder entries = ImmutableArray.CreateBuilder<RawEntry>();
        private readonly Dictionary<string, TextSpan> seenTables = new(StringComparer.Ordinal);
        private readonly Dictionary<string, TextSpan> seenEntries = new(StringComparer.Ordinal);

        public ProfileDocument Document() => new(
            source,
            tables.ToImmutable(),
            entries.ToImmutable(),
            brokenLines.Count > 0 ? SyntaxFaults.Mentioned(source) : []);

        public void AddTable(TableSyntaxBase table)
        {
            if (table.Name is not { } name || Path(name) is not { Length: > 0 } path)
                return;
            TextSpan span = Span(source, name.Span);
            bool broken = brokenLines.Contains(source.LineAt(span.Start));
            if (!broken && (path.Length > 1 || table.Kind == SyntaxKind.TableArray))
            {
                faults.Add(DiagnosticCatalogue.BadShape, span, null, Shortened(source.Slice(Span(source, new SourceSpan(source.File, table.OpenBracket!.Span.Start, table.CloseBracket?.Span.End ?? name.Span.End)))));
                return;
            }
            if (!broken && seenTables.TryGetValue(path[0], out TextSpan first))
                faults.Add(DiagnosticCatalogue.DuplicateTable, span, null, path[0], source.LineAt(first.Start));
            if (seenTables.TryAdd(path[0], span))
                tables.Add(new RawTable(path[0], span));
            foreach (KeyValueSyntax item in table.Items)
                Add([path[0]], item);
        }

        public void Add(ImmutableArray<string> table, KeyValueSyntax item)
        {
            if (Entry(item) is not { } entry)
                return;
            AddEntry(entry with { Path = [.. table, .. entry.Path] });
        }

        private void AddEntry(RawEntry entry)
        {
            // `arms = { thickness = 3.6 }` says the same as a table [arms].
            if (entry is { Path.Length: 1, Value: RawInline inline })
            {
                if (seenTables.TryAdd(entry.Path[0], entry.KeySpan))
                    tables.Add(new RawTable(entry.Path[0], entry.KeySpan));
                foreach (RawEntry member in inline.Members)
                    AddEntry(member with { Path = [entry.Path[0], .. member.Path] });
                return;
            }
            if (entry.Path.Length > deepest)
            {
                if (entry.Value is not null)
                    faults.Add(DiagnosticCatalogue.BadShape, entry.KeySpan, null, "'" + Shortened(string.Join('.', entry.Path.Take(6))) + "'");
                return;
            }
            string name = string.Join('.', entry.Path);
            if (seenEntries.TryGetValue(name, out TextSpan first))
            {
                if (entry.Value is not null)
                    faults.Add(DiagnosticCatalogue.DuplicateField, entry.KeySpan, name, Shortened(name), source.LineAt(first.Start));
                return;
            }
            seenEntries.Add(name, entry.KeySpan);
            entries.Add(entry);
        }

        private RawEntry? Entry(KeyValueSyntax item)
        {
            if (item.Key is not { } key || Path(key) is not { Length: > 0 } path)
                return null;
            TextSpan keySpan = Span(source, key.Span);
            bool broken = brokenLines.Contains(source.LineAt(keySpan.Start));
            return new RawEntry(path, keySpan, broken || item.Value is null ? null : Value(item.Value));
        }

        private RawValue? Value(ValueSyntax value)
        {
            TextSpan span = Span(source, value.Span);
            return value switch
            {
                IntegerValueSyntax whole => new RawNumber(span, whole.Value),
                FloatValueSyntax number => new RawNumber(span, number.Value),
                StringValueSyntax text => new RawText(span, text.Value ?? ""),
                BooleanValueSyntax flag => new RawFlag(span, flag.Value),
                DateTimeValueSyntax => new RawDate(span, source.Slice(span)),
                InlineTableSyntax inline => new RawInline(span, [.. inline.Items.Select(i => i.KeyValue is { } item ? Entry(item) : null).OfType<RawEntry>()]),
                _ => new RawList(span),
            };
        }

        private static ImmutableArray<string> Path(KeySyntax key)
        {
            if (Name(key.Key) is not { } first)
                return [];
            ImmutableArray<string>.Builder path = ImmutableArray.CreateBuilder<string>();
            path.Add(first);
            foreach (DottedKeyItemSyntax dotted in key.DotKeys)
                if (Name(dotted.Key) is { } next)
                    path.Add(next);
            return path.ToImmutable();
        }

        private static string? Name(BareKeyOrStringValueSyntax? key) => key switch
        {
            BareKeySyntax bare => bare.Key?.Text,
            StringValueSyntax quoted => quoted.Value,
            _ => null,
        };

        private static string Shortened(string name) => name.Length <= 60 ? name : name[..59] + "…";
    }
}
