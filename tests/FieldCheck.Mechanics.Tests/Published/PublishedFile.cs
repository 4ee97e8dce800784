using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Globalization;
using FieldCheck.Mechanics.Model;
using Tomlyn;
using Tomlyn.Model;

namespace FieldCheck.Mechanics.Tests.Published;

/// <summary>Reads the data files beside this one; their heads state the signs and what each key means.</summary>
internal static class PublishedFile
{
    private static readonly ConcurrentDictionary<string, ImmutableArray<PublishedCase>> Read = new();

    internal static string Folder => Path.Combine(AppContext.BaseDirectory, "Published");

    internal static ImmutableArray<PublishedCase> Cases(string file) => Read.GetOrAdd(file, ReadCases);

    /// <summary>One row a figure: the case, the figure's number in it, what it is.</summary>
    internal static TheoryData<string, int, string> Rows(string file)
    {
        TheoryData<string, int, string> rows = [];
        foreach (PublishedCase example in Cases(file))
        {
            for (int i = 0; i < example.Values.Length; i++)
            {
                rows.Add(example.Id, i, example.Values[i].What);
            }
        }

        return rows;
    }

    private static ImmutableArray<PublishedCase> ReadCases(string file)
    {
        string text = File.ReadAllText(Path.Combine(Folder, file));
        TomlTable document = TomlSerializer.Deserialize<TomlTable>(text)!;
        return [.. ((TomlTableArray)document["case"]).Select(CaseFrom)];
    }

    private static PublishedCase CaseFrom(TomlTable table) => new(
        (string)table["id"],
        (string)table["source"],
        (string)table["units"],
        (bool)table["seen"],
        table.TryGetValue("kind", out object? kind) ? (string)kind : "beam",
        table.ContainsKey("supports") ? BeamFrom(table) : null,
        [.. Tables(table, "axles").Select(axle => (Number(axle, "load"), Number(axle, "offset")))],
        PlatesFrom(table),
        TubeFrom(table),
        [.. Tables(table, "expected").Select(ValueFrom)]);

    private static ImmutableArray<(double Breadth, double Height, double Middle)> PlatesFrom(TomlTable table) =>
        table.TryGetValue("shape", out object? shape)
            ? [.. Tables((TomlTable)shape, "parts").Select(part => (Number(part, "b"), Number(part, "h"), Number(part, "y")))]
            : [];

    private static (double Diameter, double Bore)? TubeFrom(TomlTable table) =>
        table.TryGetValue("shape", out object? shape) && shape is TomlTable tube && (string)tube["kind"] == "pipe"
            ? (Number(tube, "od"), Number(tube, "id"))
            : null;

    private static BeamModel BeamFrom(TomlTable table)
    {
        double? flexural = Optional(table, "EI");
        Span span = new(Number(table, "length"), flexural ?? 1, AxialRigidity: 1, Optional(table, "kGA"));
        LoadCase loads = new("printed", [.. Tables(table, "loads").Select(LoadFrom)]);
        return new BeamModel(
            [span],
            [.. Tables(table, "supports").Select(SupportFrom)],
            table.TryGetValue("hinges", out object? hinges) ? [.. ((TomlArray)hinges).Select(Number)] : [],
            [loads],
            [new Combination("printed", CombinationBasis.Service, [1])],
            HasAbsoluteStiffness: flexural is not null);
    }

    private static Support SupportFrom(TomlTable table)
    {
        double x = Number(table, "x");
        Support support = table["kind"] switch
        {
            "pin" => Support.Pin(x),
            "roller" => Support.Roller(x, Radians(Optional(table, "surface_angle") ?? 0)),
            "fixed" => Support.Fixed(x),
            "spring" => Support.Spring(x, Number(table, "stiffness")),
            object other => throw new InvalidDataException($"Unknown support {other}."),
        };
        return support with { Settlement = Optional(table, "settlement") ?? 0 };
    }

    private static Load LoadFrom(TomlTable table) => table["kind"] switch
    {
        "point" => Leaning(Number(table, "x"), Number(table, "magnitude"), Radians(Optional(table, "angle") ?? 0)),
        "moment" => new Load.Couple(Number(table, "x"), Number(table, "magnitude")),
        "distributed" => new Load.Distributed(
            Number(table, "from"), Number(table, "to"), Number(table, "start"), Number(table, "end")),
        object other => throw new InvalidDataException($"Unknown load {other}."),
    };

    private static Load.Point Leaning(double x, double force, double angle) =>
        new(x, force * Math.Cos(angle), force * Math.Sin(angle));

    private static PublishedValue ValueFrom(TomlTable table) => new(
        (string)table["what"],
        Number(table, "value"),
        Number(table, "tolerance"),
        Optional(table, "at"),
        table.TryGetValue("side", out object? side) && (string)side == "right" ? Side.Right : Side.Left,
        Optional(table, "from"),
        Optional(table, "to"),
        Optional(table, "load_at"),
        Optional(table, "moment"),
        Optional(table, "V"),
        Optional(table, "cut"),
        Optional(table, "thickness"),
        table.TryGetValue("seen", out object? seen) ? (bool)seen : null);

    private static IEnumerable<TomlTable> Tables(TomlTable table, string key) =>
        table.TryGetValue(key, out object? found) ? ((TomlArray)found).Cast<TomlTable>() : [];

    private static double Number(TomlTable table, string key) => Number(table[key]);

    private static double? Optional(TomlTable table, string key) =>
        table.TryGetValue(key, out object? found) ? Number(found) : null;

    private static double Number(object? value) => Convert.ToDouble(value, CultureInfo.InvariantCulture);

    private static double Radians(double degrees) => degrees * Math.PI / 180;
}
