using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Document.Tables;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Tests.Document.Reference;

/// <summary>The JSON Schema (draft 2020-12) of the beam file, made from the tables that the reader walks.</summary>
internal static class BeamFileSchema
{
    private static readonly JsonSerializerOptions Layout = new()
    {
        WriteIndented = true,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    private static readonly Dictionary<string, KeyNote> Notes = KeyNotes.All.ToDictionary(note => note.Path);

    internal static string Text() => Whole().ToJsonString(Layout).ReplaceLineEndings("\n") + "\n";

    private static JsonObject Whole()
    {
        JsonObject schema = new()
        {
            ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
            ["title"] = "FieldCheck beam file, format 1",
            ["description"] = "One beam: spans, supports, loads and what they are held against. Every physical value is a text with its unit.",
        };
        foreach ((string key, JsonNode? value) in Of("", FileContent.Schema))
        {
            schema[key] = value?.DeepClone();
        }

        JsonObject properties = (JsonObject)schema["properties"]!;
        properties.Insert(0, "format", new JsonObject
        {
            ["description"] = "Version of this format.",
            ["const"] = 1,
        });
        schema["$defs"] = new JsonObject(Enum.GetValues<QuantityKind>()
            .Where(kind => kind is not QuantityKind.Number)
            .Select(kind => KeyValuePair.Create(Name(kind), (JsonNode?)Quantity(kind))));
        return schema;
    }

    private static JsonObject Of(string path, Schema schema) => schema switch
    {
        Schema.Cell cell => WithRules(path, Cell(Notes[path], cell.Wanted)),
        Schema.Texts => Described(path, "array", ("items", Cell(Notes[path + "[]"], new Wanted.FreeText()))),
        Schema.Figures figures =>
            WithRules(path, Described(
                path, "object", ("additionalProperties", WithRules(path + ".*", Cell(Notes[path + ".*"], figures.Wanted))))),
        Schema.Table table => Table(path, table),
        Schema.TableRows rows => WithRules(path, Described(path, "array", ("items", Table(path + "[]", rows.Row)))),
        Schema.NamedTables named => Described(path, "object", ("additionalProperties", Table(path + ".*", named.Row))),
        _ => throw new InvalidDataException(path),
    };

    private static JsonObject WithRules(string path, JsonObject schema)
    {
        Required.Add(schema, path);
        return schema;
    }

    private static JsonObject Described(string path, string type, (string Key, JsonNode Value) rest) => new()
    {
        ["description"] = KeyNotes.Tables[path],
        ["type"] = type,
        [rest.Key] = rest.Value,
    };

    private static JsonObject Table(string path, Schema.Table table)
    {
        JsonObject schema = [];
        if (KeyNotes.Tables.TryGetValue(path, out string? says))
        {
            schema["description"] = says;
        }

        schema["type"] = "object";
        Required.Add(schema, path);
        schema["properties"] = new JsonObject(table.Keys.Select(key =>
            KeyValuePair.Create(key.Key, (JsonNode?)Of(BeamFileKeys.Join(path, key.Key), key.Schema))));
        schema["additionalProperties"] = false;
        return schema;
    }

    private static JsonObject Cell(KeyNote note, Wanted wanted)
    {
        string says = note.Says.Replace("`", "", StringComparison.Ordinal);
        JsonObject schema = new()
        {
            ["description"] = note.Default.Length == 0 ? says : $"{says} Not written: {note.Default}.",
        };
        foreach ((string key, JsonNode? value) in Asked(wanted))
        {
            schema[key] = value?.DeepClone();
        }

        schema["examples"] = new JsonArray(Toml.Value(note.Example));
        return schema;
    }

    // A number may also be worked out in quotation marks, as "1.2 * 0.5".
    private static JsonObject Asked(Wanted wanted) => wanted switch
    {
        Wanted.OneOf of => new() { ["enum"] = new JsonArray([.. of.Words.Select(word => (JsonNode?)JsonValue.Create(word))]) },
        Wanted.Truth => new() { ["type"] = "boolean" },
        Wanted.Whole of => new() { ["type"] = "integer", ["minimum"] = of.Least, ["maximum"] = 10_000 },
        Wanted.BareNumber => new() { ["type"] = new JsonArray("number", "string") },
        Wanted.Measure of => new() { ["$ref"] = "#/$defs/" + Name(of.Kind) },
        // A job's number or a date may stand without quotation marks.
        Wanted.FreeText => new() { ["type"] = new JsonArray("string", "number", "boolean") },
        Wanted.Name => new() { ["type"] = new JsonArray("string", "number", "boolean"), ["pattern"] = @"\S" },
        // Not a word that places are written in.
        Wanted.SupportLabel => new()
        {
            ["type"] = "string",
            ["pattern"] = "^(?!([Jj][Oo][Ii][Nn][Tt]|[Mm][Ii][Dd]|[Ee][Nn][Dd])$)[A-Za-z][A-Za-z0-9_]{0,11}$",
        },
        _ => new() { ["type"] = "string" },
    };

    private static JsonObject Quantity(QuantityKind kind) => new()
    {
        ["description"] = KindNotes.Of(kind),
        ["type"] = "string",
    };

    private static string Name(QuantityKind kind) =>
        JsonNamingPolicy.SnakeCaseLower.ConvertName(kind.ToString());
}
