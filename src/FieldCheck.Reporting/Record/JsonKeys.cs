using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace FieldCheck.Reporting.Record;

/// <summary>How the shapes become JSON.</summary>
/// <remarks>Worked out when the program is built: nothing looks into types at run time.</remarks>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.SnakeCaseLower)]
[JsonSerializable(typeof(JsonCheck))]
[JsonSerializable(typeof(JsonRefusal))]
internal sealed partial class JsonKeys : JsonSerializerContext
{
    internal static JsonKeys For(bool isIndented) => new(new JsonSerializerOptions
    {
        PropertyNamingPolicy = JsonNamingPolicy.SnakeCaseLower,
        WriteIndented = isIndented,
        NewLine = "\n",

        // The strict encoder turns ', " and + into \u escapes, and feet, inches and places are full of them. What it
        // guards against is JSON pasted into a web page.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    });
}
