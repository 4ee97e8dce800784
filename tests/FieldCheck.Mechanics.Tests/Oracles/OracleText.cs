using System.Collections.Immutable;
using System.Globalization;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Tests.Oracles;

/// <summary>Reads the short notation that the oracle scripts read too, so that both solve the same beam.</summary>
/// <remarks>
/// span: length EI EA GA · support: x along across turn slope settlement imposed-turn (r rigid, - free, else spring) ·
/// hinge: x · point: x down right · couple: x moment side · spread: from to start end way · at: places with a side ·
/// = figures: H V M of support n, then N V M s(lope) d(eflection, down) at a place.
/// </remarks>
internal static class OracleText
{
    internal static ImmutableArray<OracleBeam> Read(string text) =>
    [
        .. text.Split("\nbeam ").Select(block => ReadBeam(block.StartsWith("beam ", StringComparison.Ordinal)
            ? block["beam ".Length..]
            : block)),
    ];

    private static OracleBeam ReadBeam(string block)
    {
        string[] lines = [.. block.Split('\n').Select(line => line.Trim()).Where(line => line.Length > 0)];
        string[][] rows = [.. lines.Skip(1).Select(line => line.Split(' '))];
        BeamModel model = new(
            [.. Rows(rows, "span").Select(SpanFrom)],
            [.. Rows(rows, "support").Select(SupportFrom)],
            [.. Rows(rows, "hinge").Select(row => Number(row[1]))],
            [new LoadCase("all", [.. rows.Select(LoadFrom).OfType<Load>()])],
            [new Combination("all", CombinationBasis.Service, [1])]);
        string[] figures = [.. Rows(rows, "=").SelectMany(row => row.Skip(1))];
        return new OracleBeam(lines[0], model, [.. figures.Chunk(2).Select(pair => (pair[0], Number(pair[1])))]);
    }

    private static IEnumerable<string[]> Rows(string[][] rows, string kind) => rows.Where(row => row[0] == kind);

    private static Span SpanFrom(string[] row) =>
        new(Number(row[1]), Number(row[2]), Number(row[3]), Optional(row[4]));

    private static Support SupportFrom(string[] row) => new(
        Number(row[1]),
        RestraintFrom(row[2]),
        RestraintFrom(row[3]),
        RestraintFrom(row[4]),
        SurfaceSlope: Number(row[5]),
        Settlement: Number(row[6]),
        ImposedRotation: Number(row[7]));

    private static Restraint RestraintFrom(string word) => word switch
    {
        "-" => Restraint.Free,
        "r" => Restraint.Held,
        _ => new Restraint.Spring(Number(word)),
    };

    private static Load? LoadFrom(string[] row) => row[0] switch
    {
        "point" => new Load.Point(Number(row[1]), Number(row[2]), Number(row[3])),
        "couple" => new Load.Couple(Number(row[1]), Number(row[2]), row[3] == "L" ? Side.Left : Side.Right),
        "spread" => new Load.Distributed(
            Number(row[1]), Number(row[2]), Number(row[3]), Number(row[4]), ActsAlong: row[5] == "along"),
        _ => null,
    };

    private static double? Optional(string word) => word == "-" ? null : Number(word);

    private static double Number(string word) => double.Parse(word, CultureInfo.InvariantCulture);
}
