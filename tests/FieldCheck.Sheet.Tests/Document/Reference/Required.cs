using System.Text.Json.Nodes;

namespace FieldCheck.Sheet.Tests.Document.Reference;

/// <summary>What a table cannot do without. The program asks for it when it builds the beam, so it stands in no table of keys.</summary>
internal static class Required
{
    /// <summary>Keys that must stand, by table.</summary>
    internal static readonly Dictionary<string, string[]> Always = new()
    {
        [""] = ["format", "span"],
        ["support[]"] = ["kind"],
        ["load[]"] = ["kind"],
        ["self_weight"] = ["case"],
        ["combination[]"] = ["name", "factors"],
        ["pattern[]"] = ["case"],
        ["rolling[]"] = ["axles"],
        ["rolling[].axles[]"] = ["offset", "force"],
        ["stated[]"] = ["support"],
    };

    /// <summary>Keys of which exactly one must stand, by table.</summary>
    internal static readonly Dictionary<string, string[]> ExactlyOne = new()
    {
        ["span[]"] = ["length", "to"],
        ["support[]"] = ["joint", "at"],
        ["hinge[]"] = ["joint", "at"],
        ["material.*"] = ["grade", "modulus"],
    };

    /// <summary>Keys that go with some kinds of support only.</summary>
    private static readonly (string Key, string[] Kinds)[] OfSupports =
    [
        ("surface", ["roller"]),
        ("stiffness", ["spring"]),
        ("rotational_stiffness", ["pin", "roller", "spring"]),
        ("rotation", ["fixed", "guide"]),
        ("settlement", ["pin", "roller", "fixed", "spring"]),
    ];

    /// <summary>The ways to give a section: the keys that must stand, and those that may besides.</summary>
    private static readonly (string[] Must, string[] May)[] Sections =
    [
        (["shape"], ["flat"]),
        (["width", "depth"], ["plies", "flat"]),
        (["diameter"], ["wall", "flat"]),
        (["flange_width", "flange_thickness", "web_thickness", "depth"], ["flat"]),
        (["inertia"], ["area", "section_modulus", "depth", "shear_area", "weight"]),
    ];

    /// <summary>Keys that go with a kind of load: those that must stand, and all that may.</summary>
    internal static readonly (string Kind, string[] Must, string[] May)[] Loads =
    [
        ("point", ["at", "force"], ["angle"]),
        ("distributed", [],
            ["from", "to", "intensity", "intensity_end", "pressure", "pressure_end", "width", "total", "axial"]),
        ("couple", ["at", "moment"], ["side"]),
    ];

    /// <summary>The ways to say how great a spread load is: the keys of exactly one stand.</summary>
    internal static readonly string[][] Sizes = [["intensity"], ["pressure", "width"], ["total"]];

    /// <summary>Keys of which one at least must stand, by table.</summary>
    internal static readonly Dictionary<string, string[]> OneAtLeast = new()
    {
        ["stated[]"] = ["vertical", "horizontal", "moment"],
    };

    /// <summary>Whether the reference marks a key as one that must stand.</summary>
    internal static bool Marks(string table, string key) =>
        (Always.TryGetValue(table, out string[]? always) && always.Contains(key))
        || (ExactlyOne.TryGetValue(table, out string[]? one) && one.Contains(key));

    /// <summary>The rules of a table, put into its schema.</summary>
    internal static void Add(JsonObject schema, string table)
    {
        if (Always.TryGetValue(table, out string[]? always))
        {
            schema["required"] = Texts(always);
        }

        if (ExactlyOne.TryGetValue(table, out string[]? one))
        {
            schema["oneOf"] = OneOf(one.Select(key => new[] { key }));
        }

        if (OneAtLeast.TryGetValue(table, out string[]? some))
        {
            schema["anyOf"] = OneOf(some.Select(key => new[] { key }));
        }

        switch (table)
        {
            case "rolling[].axles":
                schema["minItems"] = 1;
                break;
            case "combination[].factors":
                schema["minProperties"] = 1;
                break;
            case "limits.lasting.*":
                (schema["minimum"], schema["maximum"]) = (0, 1);
                break;
            case "material.*.creep":
                schema["minimum"] = 0;
                break;
            case "section.*":
                string[] figures = [.. Sections.SelectMany(way => way.Must.Concat(way.May)).Distinct()];
                schema["oneOf"] = new JsonArray([.. Sections.Select(way => WithoutOthers(way, figures))]);
                break;
            case "support[]":
                schema["allOf"] = new JsonArray([.. OfSupports.SelectMany(one => one.Kinds).Distinct().Select(OfKind)]);
                break;
            case "load[]":
                string[] own = [.. Loads.SelectMany(kind => kind.Must.Concat(kind.May)).Distinct()];
                schema["allOf"] = new JsonArray([.. Loads.Select(kind => OfKind(kind, own))]);
                schema["dependentRequired"] = new JsonObject
                {
                    ["intensity_end"] = Texts(["intensity"]),
                    ["pressure_end"] = Texts(["pressure"]),
                };
                break;
            default:
                break;
        }
    }

    private static JsonObject OfKind(string kind)
    {
        JsonObject properties = Without(OfSupports.Where(one => !one.Kinds.Contains(kind)).Select(one => one.Key));
        if (kind is "fixed" or "guide")
        {
            properties["acts"] = new JsonObject { ["const"] = "both" };
        }

        JsonObject then = new() { ["properties"] = properties };
        if (kind == "spring")
        {
            then["required"] = Texts(["stiffness"]);
        }

        return If(kind, then);
    }

    private static JsonObject OfKind((string Kind, string[] Must, string[] May) load, string[] own)
    {
        JsonObject then = WithoutOthers((load.Must, load.May), own);
        if (load.Kind == "distributed")
        {
            then["oneOf"] = OneOf(Sizes);
            then["not"] = new JsonObject
            {
                ["required"] = Texts(["axial", "pressure"]),
                ["properties"] = new JsonObject { ["axial"] = new JsonObject { ["const"] = true } },
            };
        }

        return If(load.Kind, then);
    }

    private static JsonObject WithoutOthers((string[] Must, string[] May) keys, string[] all) => new()
    {
        ["required"] = Texts(keys.Must),
        ["properties"] = Without(all.Except(keys.Must.Concat(keys.May))),
    };

    private static JsonObject Without(IEnumerable<string> keys) =>
        new(keys.Select(key => KeyValuePair.Create(key, (JsonNode?)JsonValue.Create(false))));

    private static JsonObject If(string kind, JsonObject then) => new()
    {
        ["if"] = new JsonObject
        {
            ["properties"] = new JsonObject { ["kind"] = new JsonObject { ["const"] = kind } },
            ["required"] = Texts(["kind"]),
        },
        ["then"] = then,
    };

    private static JsonArray OneOf(IEnumerable<string[]> ways) =>
        new([.. ways.Select(keys => new JsonObject { ["required"] = Texts(keys) })]);

    private static JsonArray Texts(string[] texts) => [.. texts.Select(text => (JsonNode?)JsonValue.Create(text))];
}
