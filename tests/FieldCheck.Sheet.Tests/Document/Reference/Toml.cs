using System.Text.Json.Nodes;
using Tomlyn;
using Tomlyn.Model;

namespace FieldCheck.Sheet.Tests.Document.Reference;

/// <summary>A TOML file as JSON, the way editors look at it when they hold it against a JSON Schema.</summary>
internal static class Toml
{
    internal static JsonNode File(string text) => Json(TomlSerializer.Deserialize<TomlTable>(text)!)!;

    /// <summary>One value, as it stands behind the = of a file.</summary>
    internal static JsonNode? Value(string text) => Json(TomlSerializer.Deserialize<TomlTable>("x = " + text)!["x"]);

    private static JsonNode? Json(object? value) => value switch
    {
        TomlTable table => new JsonObject(table.Select(entry => KeyValuePair.Create(entry.Key, Json(entry.Value)))),
        TomlTableArray rows => new JsonArray([.. rows.Select(Json)]),
        TomlArray list => new JsonArray([.. list.Select(Json)]),
        string text => JsonValue.Create(text),
        bool truth => JsonValue.Create(truth),
        long whole => JsonValue.Create(whole),
        double number => JsonValue.Create(number),
        _ => throw new InvalidDataException($"{value} stands in no beam file."),
    };
}
