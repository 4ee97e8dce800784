using System.Text.Json;
using System.Text.Json.Nodes;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.Presets;
using FieldCheck.Sheet.Tests.Presets;
using Json.Schema;

namespace FieldCheck.Sheet.Tests.Document.Reference;

/// <summary>
/// docs/beam-file.schema.json is made from the tables that the reader walks, and says of a file what the program says.
/// FIELDCHECK_ACCEPT=1 writes it anew. Judged by an independent package that knows draft 2020-12.
/// </summary>
public sealed class BeamFileSchemaTests
{
    private const string Name = "docs/beam-file.schema.json";

    private static readonly JsonSchema Schema = JsonSchema.FromText(BeamFileSchema.Text());

    [Fact]
    public void SchemaInTheDocumentation_IsThatOfTheReader()
    {
        if (RepositoryFile.IsAccepting)
        {
            RepositoryFile.Write(Name, BeamFileSchema.Text());
            return;
        }

        Assert.Equal(BeamFileSchema.Text(), RepositoryFile.Read(Name));
    }

    [Fact]
    public void Schema_IsItselfOneOfItsDraft() =>
        Assert.True(Holds(MetaSchemas.Draft202012, JsonNode.Parse(BeamFileSchema.Text())!));

    public static TheoryData<string> SoundFiles() =>
    [
        .. Directory.GetFiles(Path.Combine(RepositoryFile.Root, "presets", "beams"), "*.toml")
            .Concat([Path.Combine(RepositoryFile.Root, "tests", "FieldCheck.Sheet.Tests", "Presets", "example.toml")])
            .Select(path => Path.GetRelativePath(RepositoryFile.Root, path))
            .Order(StringComparer.Ordinal),
    ];

    [Theory]
    [MemberData(nameof(SoundFiles))]
    public void PresetOrExample_Validates(string name) => Assert.True(Holds(Schema, Toml.File(RepositoryFile.Read(name))));

    [Fact]
    public void ABeamThatSaysEverything_Validates()
    {
        JsonNode everything = Everything();
        Assert.True(Holds(Schema, everything));
        Assert.IsType<BeamFileReading.Opened>(BeamFileText.Read("every-key.toml", Written(everything)));
    }

    public static TheoryData<string> FilesOfUnknownKeysAndWrongShapes() =>
    [
        "unknown-key-near", "unknown-key-far", "unknown-table-near", "unknown-table-far", "unknown-top-key", "quoted-names",
        "top-key-under-a-table", "format-missing", "format-as-text", "format-of-the-future", "empty",
        "axles-as-texts", "cell-where-a-table-is-wanted", "factor-as-a-list", "factors-as-a-number",
        "list-where-a-cell-is-wanted", "table-where-a-cell-is-wanted", "rows-for-a-single-table", "single-table-for-rows",
        "section-as-rows", "section-without-a-name", "many-problems", "all-told-together",
    ];

    [Theory]
    [MemberData(nameof(FilesOfUnknownKeysAndWrongShapes))]
    public void BrokenFile_DoesNotValidate(string name) =>
        Assert.False(Holds(Schema, Toml.File(TestFile.Text($"Broken/{name}.toml"))));

    /// <summary>Taken away one by one: schema and program miss the same keys.</summary>
    [Fact]
    public void KeyThatMustStand_IsMissedByTheSchemaAndByTheProgram() => Assert.All(
        Required.Always.SelectMany(table => table.Value.Select(key => (table.Key, key))).Where(one => one.key != "format"),
        one =>
        {
            JsonNode shorter = Everything();
            Assert.True(RowOf(shorter, one.Key).Remove(one.key));

            Assert.False(Holds(Schema, shorter));
            Assert.NotEqual([], Faults(shorter));
        });

    [Fact]
    public void BothKeysOfWhichOneMustStand_OrNone_AreRefusedByTheSchemaAndByTheProgram() => Assert.All(
        Required.ExactlyOne,
        table =>
        {
            JsonNode none = Everything();
            JsonNode both = Everything();
            foreach (string key in table.Value)
            {
                RowOf(none, table.Key).Remove(key);
                RowOf(both, table.Key)[key] = Toml.Value(KeyNotes.All.Single(note => note.Path == $"{table.Key}.{key}").Example);
            }

            Assert.All([none, both], file =>
            {
                Assert.False(Holds(Schema, file));
                Assert.NotEqual([], Faults(file));
            });
        });

    [Theory]
    [InlineData("point", "force", "moment")]
    [InlineData("couple", "moment", "force")]
    public void KeyOfAnotherKindOfLoad_IsRefusedByTheSchemaAndByTheProgram(string kind, string own, string other)
    {
        JsonNode file = Everything();
        JsonObject load = RowOf(file, "load[]");
        load.Clear();
        load["kind"] = kind;
        load["at"] = "1 m";
        load[own] = kind == "point" ? "1 kN" : "1 kNm";
        Assert.True(Holds(Schema, file));
        Assert.Equal([], Faults(file));

        load[other] = kind == "point" ? "1 kNm" : "1 kN";

        Assert.False(Holds(Schema, file));
        Assert.NotEqual([], Faults(file));
    }

    [Theory]
    [InlineData(true, "intensity")]
    [InlineData(true, "pressure", "width")]
    [InlineData(true, "total")]
    [InlineData(false)]
    [InlineData(false, "pressure")]
    [InlineData(false, "intensity", "total")]
    [InlineData(false, "pressure", "width", "total")]
    public void SpreadLoad_SaysHowGreatItIsInOneWay(bool isSound, params string[] keys)
    {
        JsonNode file = Everything();
        JsonObject load = RowOf(file, "load[]");
        load.Clear();
        load["kind"] = "distributed";
        foreach (string key in keys)
        {
            load[key] = Toml.Value(KeyNotes.All.Single(note => note.Path == $"load[].{key}").Example);
        }

        Assert.Equal(isSound, Holds(Schema, file));
        Assert.Equal(isSound, Faults(file) is []);
    }

    public static TheoryData<bool, string, string> Rules() => new()
    {
        { false, "stated[]", """{ "support": "A" }""" },
        { true, "stated[]", """{ "support": "A", "moment": "1 kNm" }""" },
        { false, "rolling[]", """{ "axles": [] }""" },
        { true, "rolling[]", """{ "axles": [{ "offset": "0 m", "force": "5 kN" }] }""" },
        { false, "support[]", """{ "kind": "spring", "joint": 0 }""" },
        { true, "support[]", """{ "kind": "spring", "joint": 0, "stiffness": "2 kN/mm" }""" },
        { false, "limits", """{ "lasting": { "live": 2 } }""" },
        { true, "limits", """{ "lasting": { "live": 0.5 } }""" },
        { false, "support[]", """{ "kind": "pin", "joint": 0, "surface": "10 deg" }""" },
        { true, "support[]", """{ "kind": "roller", "joint": 0, "surface": "10 deg" }""" },
        { false, "support[]", """{ "kind": "fixed", "joint": 0, "rotational_stiffness": "5 kNm/rad" }""" },
        { false, "support[]", """{ "kind": "pin", "joint": 0, "rotation": "1 mrad" }""" },
        { true, "support[]", """{ "kind": "fixed", "joint": 0, "rotation": "1 mrad" }""" },
        { false, "support[]", """{ "kind": "fixed", "joint": 0, "acts": "up" }""" },
        { true, "support[]", """{ "kind": "fixed", "joint": 0, "acts": "both" }""" },
        { false, "support[]", """{ "kind": "guide", "joint": 0, "settlement": "5 mm" }""" },
        { false, "support[]", """{ "kind": "pin", "joint": 0, "label": "End" }""" },
        { true, "support[]", """{ "kind": "pin", "joint": 0, "label": "A" }""" },
        { false, "load[]", """{ "kind": "distributed", "total": "2 kN", "intensity_end": "1 kN/m" }""" },
        { false, "load[]", """{ "kind": "distributed", "intensity": "2 kN/m", "pressure_end": "1 kPa" }""" },
        { false, "load[]", """{ "kind": "distributed", "pressure": "2 kPa", "width": "1 m", "axial": true }""" },
        { true, "load[]", """{ "kind": "distributed", "pressure": "2 kPa", "width": "1 m", "axial": false }""" },
        { true, "load[]", """{ "kind": "point", "at": "1 m", "force": "2 kN", "case": 17 }""" },
        { false, "load[]", """{ "kind": "point", "at": "1 m", "force": "2 kN", "case": " " }""" },
        { false, "combination[]", """{ "name": "service", "factors": {} }""" },
        { false, "material.*", """{ "modulus": "11 GPa", "creep": -1 }""" },
        { true, "material.*", """{ "modulus": "11 GPa", "density": "420 kg/m3", "creep": 0 }""" },
        { false, "material.*", """{ "density": "420 kg/m3" }""" },
        { false, "material.*", """{ "grade": "A992", "modulus": "200 GPa" }""" },
        { false, "section.*", "{}" },
        { false, "section.*", """{ "flat": true }""" },
        { false, "section.*", """{ "shape": "W10x30", "width": "5 in" }""" },
        { true, "section.*", """{ "shape": "W10x30", "flat": true }""" },
        { false, "section.*", """{ "width": "50 mm" }""" },
        { true, "section.*", """{ "width": "50 mm", "depth": "200 mm", "plies": 2 }""" },
        { false, "section.*", """{ "wall": "3 mm" }""" },
        { true, "section.*", """{ "diameter": "48.3 mm", "wall": "3.2 mm" }""" },
        { false, "section.*", """{ "flange_width": "150 mm", "flange_thickness": "10 mm", "depth": "300 mm" }""" },
        { false, "section.*", """{ "area": "60 cm2" }""" },
        { false, "section.*", """{ "inertia": "7000 cm4", "flat": true }""" },
        { true, "section.*", """{ "inertia": "7000 cm4", "depth": "300 mm", "weight": "60 kg/m" }""" },
        { true, "record", """{ "job": 17, "location": true }""" },
        { false, "record", """{ "job": ["17"] }""" },
    };

    [Theory]
    [MemberData(nameof(Rules))]
    public void RuleOfATable_IsHeldByTheSchemaAndByTheProgram(bool isSound, string table, string row)
    {
        JsonNode file = Everything();
        JsonObject own = RowOf(file, table);
        own.Clear();
        foreach ((string key, JsonNode? value) in JsonNode.Parse(row)!.AsObject())
        {
            own[key] = value!.DeepClone();
        }

        Assert.Equal(isSound, Holds(Schema, file));
        Assert.Equal(
            isSound,
            BeamFileText.Read("one.toml", Written(file)) is BeamFileReading.Opened && Faults(file) is []);
    }

    private static bool Holds(JsonSchema schema, JsonNode node) =>
        schema.Evaluate(JsonSerializer.SerializeToElement(node)).IsValid;

    private static JsonObject RowOf(JsonNode file, string table) => table switch
    {
        "" => (JsonObject)file,
        "rolling[].axles[]" => (JsonObject)file["rolling"]![0]!["axles"]![0]!,
        _ when table.EndsWith(".*", StringComparison.Ordinal) => (JsonObject)file[table[..^2]]!.AsObject().First().Value!,
        _ when table.EndsWith("[]", StringComparison.Ordinal) => (JsonObject)file[table[..^2]]![0]!,
        _ => (JsonObject)file[table]!,
    };

    /// <summary>What the program finds wrong with the rows of a file.</summary>
    private static string[] Faults(JsonNode file)
    {
        BeamFileReading.Opened opened = Assert.IsType<BeamFileReading.Opened>(BeamFileText.Read("one.toml", Written(file)));
        Calculation calculation = Calculation.Run(opened.Document, SectionCatalogue.BuiltIn(), new BeamSolver());
        return [.. calculation.Problems.Select(problem => problem.ToString())];
    }

    private static JsonNode Everything() => Toml.File(WholeBeam.Text);

    private static string Written(JsonNode file) => TomlOfJson.Text((JsonObject)file);
}
