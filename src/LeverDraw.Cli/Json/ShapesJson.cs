using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using LeverDraw.Cli.Comparing;
using LeverDraw.Cli.Mechanism;
using LeverDraw.Diagnostics;

namespace LeverDraw.Cli.Json;

/// <summary>Made at build time, so that nothing is looked up by reflection.</summary>
[JsonSerializable(typeof(CheckShape))]
[JsonSerializable(typeof(DrawShape))]
[JsonSerializable(typeof(RemouldShape))]
[JsonSerializable(typeof(CompareShape))]
[JsonSerializable(typeof(CodeShape))]
[JsonSerializable(typeof(IReadOnlyList<FieldShape>))]
[JsonSerializable(typeof(BacklashShape))]
[JsonSerializable(typeof(FitsShape))]
[JsonSerializable(typeof(LookupShape))]
[JsonSerializable(typeof(IReadOnlyList<LookupNameShape>))]
[JsonSerializable(typeof(IdentifyShape))]
[JsonSerializable(typeof(ReconstructShape))]
[JsonSerializable(typeof(IReadOnlyList<MeasurandShape>))]
internal sealed partial class ShapesJson : JsonSerializerContext
{
    /// <summary>With letters and quotes as they are: this is for programs and eyes, not for a web page.</summary>
    public static ShapesJson Plain { get; } = new(new JsonSerializerOptions
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        WriteIndented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    });

    public static void Print<T>(TextWriter to, T shape, JsonTypeInfo<T> type)
    {
        to.Write(JsonSerializer.Serialize(shape, type));
        to.Write('\n');
    }

    public static DiagnosticShape Of(Diagnostic d) => new(
        d.Code, DiagnosticText.Word(d.Severity), d.Position?.File, d.Position?.Line ?? 0, d.Position?.Column ?? 0, d.Position?.Width ?? 0, d.Field, d.Message, d.Suggestion);
}
