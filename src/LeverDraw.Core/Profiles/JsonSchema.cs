using System.Text.Json;
using LeverDraw.Units;

namespace LeverDraw.Profiles;

/// <summary>A JSON Schema (draft 2020-12) of a kind's profile, for editors that complete and check TOML. It knows names, types and words; ranges depend on the file's units and are in the descriptions.</summary>
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
            case AngleField:
                FieldsJson.WriteWords(json, "type", ["number", "string"]);
                break;
            case RoughnessField rough:
                json.WriteString("type", "number");
                json.WriteNumber("minimum", 0);
                json.WriteNumber("maximum", rough.MaxMicrometres);
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
