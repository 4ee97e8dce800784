using System.Text.Json.Nodes;

namespace FieldCheck.Sheet.Tests.Document.Reference;

/// <summary>Writes JSON as TOML, every table in braces: the plainest way to the same file.</summary>
internal static class TomlOfJson
{
    internal static string Text(JsonObject file) =>
        string.Concat(file.Select(entry => $"{Key(entry.Key)} = {Value(entry.Value!)}\n"));

    private static string Value(JsonNode node) => node switch
    {
        JsonObject table => $"{{ {string.Join(", ", table.Select(entry => $"{Key(entry.Key)} = {Value(entry.Value!)}"))} }}",
        JsonArray list => $"[ {string.Join(", ", list.Select(item => Value(item!)))} ]",
        _ => node.ToJsonString(),
    };

    private static string Key(string key) => JsonValue.Create(key).ToJsonString();
}
