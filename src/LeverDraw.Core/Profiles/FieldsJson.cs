using System.Buffers;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using LeverDraw.Units;

namespace LeverDraw.Profiles;

/// <summary>A kind's fields as JSON, for programs: numbers in millimetres and degrees.</summary>
public static class FieldsJson
{
    public static string For(PartFields kind) => Write(json => WriteKind(json, kind));

    /// <summary>Several kinds, as a list.</summary>
    public static string For(IEnumerable<PartFields> kinds) => Write(json =>
    {
        json.WriteStartArray();
        foreach (PartFields kind in kinds)
            WriteKind(json, kind);
        json.WriteEndArray();
    });

    private static void WriteKind(Utf8JsonWriter json, PartFields kind)
    {
        json.WriteStartObject();
        json.WriteString("kind", kind.Kind);
        json.WriteStartArray("fields");
        foreach (FieldSpec field in kind.WithCommon)
            WriteField(json, field);
        json.WriteEndArray();
        json.WriteEndObject();
    }

    /// <summary>Indented by two, '\n' line ends, letters beyond ASCII as they are: the same bytes on every system.</summary>
    internal static string Write(Action<Utf8JsonWriter> content)
    {
        ArrayBufferWriter<byte> bytes = new();
        // The relaxed encoder only keeps quotes and letters readable; nothing here goes into HTML unescaped.
        using (Utf8JsonWriter json = new(bytes, new JsonWriterOptions { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
            content(json);
        return Encoding.UTF8.GetString(bytes.WrittenSpan) + "\n";
    }

    private static void WriteField(Utf8JsonWriter json, FieldSpec field)
    {
        json.WriteStartObject();
        json.WriteString("name", field.Name);
        if (field.Symbol is { } symbol)
            json.WriteString("symbol", symbol);
        json.WriteString("help", field.Help);
        json.WriteString("type", Type(field));
        json.WriteBoolean("required", !field.IsOptional);
        switch (field)
        {
            case SizeField size:
                json.WriteNumber("minMillimetres", size.MinMillimetres);
                json.WriteNumber("maxMillimetres", size.MaxMillimetres);
                if (size.Default is { } mm)
                    json.WriteNumber("default", mm);
                break;
            case AngleField angle:
                json.WriteNumber("minDegrees", angle.MinDegrees);
                json.WriteNumber("maxDegrees", angle.MaxDegrees);
                if (angle.Default is { } degrees)
                    json.WriteNumber("default", degrees);
                break;
            case RoughnessField rough:
                json.WriteNumber("maxMicrometres", rough.MaxMicrometres);
                json.WriteNumber("default", rough.Default);
                break;
            case NumberField number:
                json.WriteNumber("min", number.Min);
                json.WriteNumber("max", number.Max);
                break;
            case TaperField { Default: { } taper }:
                json.WriteString("default", TaperText.Format(taper));
                break;
            case ChoiceField choice:
                WriteWords(json, "choices", choice.Choices);
                if (choice.Default is { } word)
                    json.WriteString("default", word);
                break;
            case TextField text:
                json.WriteNumber("maxLength", text.MaxLength);
                if (text.Default is { } standing)
                    json.WriteString("default", standing);
                break;
            case FlagField flag:
                json.WriteBoolean("default", flag.Default);
                break;
        }
        if (field.OnlyWhen is { } only)
        {
            json.WriteStartObject("onlyWhen");
            json.WriteString("field", only.Choice.Name);
            WriteWords(json, "is", only.Values);
            json.WriteEndObject();
        }
        json.WriteEndObject();
    }

    internal static void WriteWords(Utf8JsonWriter json, string name, IEnumerable<string> words)
    {
        json.WriteStartArray(name);
        foreach (string word in words)
            json.WriteStringValue(word);
        json.WriteEndArray();
    }

    private static string Type(FieldSpec field) => field switch
    {
        SizeField => "size",
        AngleField => "angle",
        RoughnessField => "roughness",
        NumberField => "number",
        TaperField => "taper",
        ChoiceField => "choice",
        TextField { IsDate: true } => "date",
        TextField => "text",
        _ => "flag",
    };
}
