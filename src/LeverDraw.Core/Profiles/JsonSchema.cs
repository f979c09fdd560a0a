using System.Text.Json;
using LeverDraw.Units;

namespace LeverDraw.Profiles;

/// <summary>A JSON Schema (draft 2020-12) of a kind's profile, for editors that complete and check TOML. It knows names, types, words and the ranges of plain numbers: angles are in degrees always, sizes in the file's <c>units</c>; a profile that inherits its units has its sizes unchecked here.</summary>
public static class JsonSchema
{
    private const string InchMark = "\"”″";

    public static string For(PartFields kind) => FieldsJson.Write(json =>
    {
        json.WriteStartObject();
        json.WriteString("$schema", "https://json-schema.org/draft/2020-12/schema");
        json.WriteString("title", "LeverDraw profile: " + kind.Kind);
        json.WriteString("type", "object");
        json.WriteStartObject("properties");
        foreach (FieldSpec field in kind.WithCommon.Where(f => Table(f) is null))
            WriteField(json, field, kind);
        foreach (string table in kind.WithCommon.Select(Table).OfType<string>().Distinct())
            WriteTable(json, table, kind);
        json.WriteEndObject();
        json.WriteBoolean("additionalProperties", false);
        WriteRequired(json, kind);
        WriteSizeRanges(json, kind);
        json.WriteStartObject("$defs");
        WriteSizeDefinitions(json);
        json.WriteEndObject();
        json.WriteEndObject();
    });

    private static string? Table(FieldSpec field) => field.Name.Split('.') is [var table, _] ? table : null;

    private static string Key(FieldSpec field) => field.Name.Split('.')[^1];

    private static void WriteTable(Utf8JsonWriter json, string table, PartFields kind)
    {
        json.WriteStartObject(table);
        json.WriteString("type", "object");
        json.WriteStartObject("properties");
        foreach (FieldSpec field in kind.WithCommon.Where(f => Table(f) == table))
            WriteField(json, field, kind);
        json.WriteEndObject();
        json.WriteBoolean("additionalProperties", false);
        json.WriteEndObject();
    }

    private static void WriteField(Utf8JsonWriter json, FieldSpec field, PartFields kind)
    {
        json.WriteStartObject(Key(field));
        json.WriteString("description", Description(field));
        switch (field)
        {
            case SizeField:
                json.WriteString("$ref", "#/$defs/size");
                break;
            case AngleField angle:
                FieldsJson.WriteWords(json, "type", ["number", "string"]);
                WriteRange(json, angle.MinDegrees, angle.MaxDegrees);
                break;
            case RoughnessField rough:
                json.WriteString("type", "number");
                json.WriteNumber("minimum", 0);
                json.WriteNumber("maximum", rough.MaxMicrometres);
                break;
            case NumberField number:
                json.WriteString("type", "number");
                WriteRange(json, number.Min, number.Max);
                break;
            case ChoiceField choice:
                FieldsJson.WriteWords(json, "enum", choice.Choices);
                break;
            case TextField { IsDate: true }:
                json.WriteString("type", "string");
                json.WriteString("pattern", "^([0-9]{4}-[0-9]{2}-[0-9]{2})?$");
                break;
            case TextField text when text == CommonFields.Kind:
                json.WriteString("const", kind.Kind);
                break;
            case TextField text:
                json.WriteString("type", "string");
                json.WriteNumber("maxLength", text.MaxLength);
                break;
            case FlagField flag:
                json.WriteString("type", "boolean");
                json.WriteBoolean("default", flag.Default);
                break;
            default:
                json.WriteString("type", "string");
                break;
        }
        json.WriteEndObject();
    }

    private static string Description(FieldSpec field) =>
        field.Help + " Value: " + FieldWords.Allowed(field, LengthUnit.Millimetre) + "."
        + (FieldWords.Condition(field) is { } condition ? " Applies " + condition + "." : "")
        + (FieldWords.Default(field, LengthUnit.Millimetre) is { } standing ? " Default: " + standing + "." : "");

    // A profile that extends another may leave out what that one gives; a condition may make a field not apply.
    private static void WriteRequired(Utf8JsonWriter json, PartFields kind)
    {
        FieldSpec[] required = [.. kind.WithCommon.Where(f => !f.IsOptional && f.OnlyWhen is null)];
        string[] tables = [.. required.Select(Table).OfType<string>().Distinct()];
        FieldsJson.WriteWords(json, "required", [CommonFields.Name.Name]);
        json.WriteStartArray("anyOf");
        json.WriteStartObject();
        FieldsJson.WriteWords(json, "required", [CommonFields.Extends.Name]);
        json.WriteEndObject();
        json.WriteStartObject();
        FieldsJson.WriteWords(json, "required", [.. required.Where(f => Table(f) is null).Select(Key), .. tables]);
        json.WriteStartObject("properties");
        foreach (string table in tables)
        {
            json.WriteStartObject(table);
            FieldsJson.WriteWords(json, "required", required.Where(f => Table(f) == table).Select(Key));
            json.WriteEndObject();
        }
        json.WriteEndObject();
        json.WriteEndObject();
        json.WriteEndArray();
    }

    /// <summary>Once for each unit: if the file says it is in that unit, its plain numbers lie in these ranges.</summary>
    private static void WriteSizeRanges(Utf8JsonWriter json, PartFields kind)
    {
        json.WriteStartArray("allOf");
        foreach (LengthUnit unit in (LengthUnit[])[LengthUnit.Millimetre, LengthUnit.Inch])
        {
            json.WriteStartObject();
            json.WriteStartObject("if");
            json.WriteStartObject("properties");
            json.WriteStartObject(CommonFields.Units.Name);
            json.WriteString("const", unit.Word());
            json.WriteEndObject();
            json.WriteEndObject();
            FieldsJson.WriteWords(json, "required", [CommonFields.Units.Name]);
            json.WriteEndObject();
            json.WriteStartObject("then");
            json.WriteStartObject("properties");
            foreach (IGrouping<string, SizeField> table in kind.WithCommon.OfType<SizeField>().GroupBy(f => Table(f) ?? ""))
            {
                if (table.Key.Length > 0)
                {
                    json.WriteStartObject(table.Key);
                    json.WriteStartObject("properties");
                }

                foreach (SizeField field in table)
                    WriteSizeRange(json, field, unit);
                if (table.Key.Length > 0)
                {
                    json.WriteEndObject();
                    json.WriteEndObject();
                }
            }

            json.WriteEndObject();
            json.WriteEndObject();
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>A number itself, or the <c>size</c> of an inline table; the keywords leave text alone.</summary>
    private static void WriteSizeRange(Utf8JsonWriter json, SizeField field, LengthUnit unit)
    {
        json.WriteStartObject(Key(field));
        WriteRange(json, In(field.MinMillimetres, unit, Math.Floor), In(field.MaxMillimetres, unit, Math.Ceiling));
        json.WriteStartObject("properties");
        json.WriteStartObject("size");
        WriteRange(json, In(field.MinMillimetres, unit, Math.Floor), In(field.MaxMillimetres, unit, Math.Ceiling));
        json.WriteEndObject();
        json.WriteEndObject();
        json.WriteEndObject();
    }

    // Rounded outwards to a millionth of an inch: an editor must never mark what the reader takes.
    private static double In(double millimetres, LengthUnit unit, Func<decimal, decimal> outwards) =>
        unit == LengthUnit.Millimetre ? millimetres : (double)(outwards((decimal)millimetres / (decimal)Length.MillimetresPerInch * 1_000_000m) / 1_000_000m);

    private static void WriteRange(Utf8JsonWriter json, double least, double most)
    {
        json.WriteNumber("minimum", least);
        json.WriteNumber("maximum", most);
    }

    private static void WriteSizeDefinitions(Utf8JsonWriter json)
    {
        json.WriteStartObject("length");
        json.WriteStartArray("anyOf");
        json.WriteStartObject();
        json.WriteString("type", "number");
        json.WriteEndObject();
        json.WriteStartObject();
        json.WriteString("type", "string");
        json.WriteString("pattern", "[0-9½¼¾⅛⅜⅝⅞⅓⅔⅕⅖⅗⅘⅙⅚] *(mm|in|inch|inches|[" + InchMark + "]|'')?\\.? *$");
        json.WriteEndObject();
        json.WriteEndArray();
        json.WriteEndObject();

        json.WriteStartObject("size");
        json.WriteStartArray("anyOf");
        json.WriteStartObject();
        json.WriteString("$ref", "#/$defs/length");
        json.WriteEndObject();
        WriteShape(json, ["size"], []);
        WriteShape(json, ["size"], ["fit"]);
        WriteShape(json, ["size", "plus", "minus"], []);
        WriteShape(json, ["min", "max"], []);
        WriteShape(json, ["size", "min", "max"], []);
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteShape(Utf8JsonWriter json, string[] lengths, string[] codes)
    {
        json.WriteStartObject();
        json.WriteString("type", "object");
        json.WriteStartObject("properties");
        foreach (string key in lengths)
        {
            json.WriteStartObject(key);
            json.WriteString("$ref", "#/$defs/length");
            json.WriteEndObject();
        }
        foreach (string key in codes)
        {
            json.WriteStartObject(key);
            json.WriteString("type", "string");
            json.WriteString("pattern", "^([A-Z]{1,2}|[a-z]{1,2})(01|0|[1-9]|1[0-8])$");
            json.WriteEndObject();
        }
        json.WriteEndObject();
        FieldsJson.WriteWords(json, "required", [.. lengths, .. codes]);
        json.WriteBoolean("additionalProperties", false);
        json.WriteEndObject();
    }
}
