using CsCheck;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Strength;

namespace FieldCheck.Sheet.Tests;

/// <summary>Whatever is typed into whatever cell, a calculation comes of it: solved, or with what is wrong.</summary>
public sealed class AnyDocumentTests
{
    /// <summary>Something in most cells, all of it sound.</summary>
    private static readonly BeamDocument Sound = new()
    {
        Display = "si",
        ShearDeformation = "true",
        Ask = ["span[1].length"],
        Spans = [new() { Length = "3 m", Unbraced = "braced" }, new() { To = "7 m", Section = "s", Material = "m" }],
        Supports =
        [
            new() { Kind = "pin", Joint = "0", Label = "W", Acts = "both" },
            new() { Kind = "roller", At = "3 m", Surface = "0 deg", Settlement = "1 mm", Acts = "up" },
            new() { Kind = "spring", At = "end", Stiffness = "2 kN/mm", RotationalStiffness = "5 kNm/rad" },
        ],
        Hinges = [new() { At = "B + 1 m" }],
        Loads =
        [
            new() { Kind = "point", At = "W + 1 m", Force = "3 kN", Angle = "10 deg", Case = "live" },
            new() { Kind = "distributed", From = "mid 1", To = "end", Intensity = "1 kN/m", IntensityEnd = "0 N/m" },
            new() { Kind = "distributed", Pressure = "1 kPa", Width = "2 m", Case = "dead" },
            new() { Kind = "couple", At = "B + 1 m", Moment = "2 kNm", Side = "right" },
        ],
        SelfWeight = new() { Case = "dead" },
        Sections = [new() { Name = "s", Shape = "IPE 200", Flat = "false" }],
        Materials = [new() { Name = "m", Grade = "S235", Density = "7850 kg/m3", Factors = [new("duration", "1.2")] }],
        Combinations = [new() { Name = "c", Basis = "factored", Factors = [new("dead", "1.35"), new("live", "1.5")] }],
        Patterns = [new() { Case = "live" }],
        Rolling = [new() { Impact = "30 %", Axles = [new() { Offset = "0 m", Force = "4 kN" }] }],
        Stated = [new() { Support = "B", Vertical = "4 kN", Combination = "c", Tolerance = "2 %" }],
        Tolerance = new() { Position = "1 in", Load = "5 %" },
        Limits = new() { Deflection = "L/360", DeflectionCases = [new("live", "L/480")], Rules = "NDS" },
    };

    private static readonly string?[] Texts =
    [
        null, "", " ", "0", "1", "2", "-1", "1e30 m", "1e-30 m", "1e29 kN", "0 m", "-3 m", "3 m", "7 m", "10 ft",
        "9.999 m", "end", "A", "B", "C", "W", "joint 1", "mid 2", "B - 4 m", "true", "false", "fixed", "guide",
        "pin", "roller", "spring", "up", "down", "point", "distributed", "couple", "left", "89.9 deg", "90 deg",
        "180 deg",
        "live", "dead", "C24", "2x10", "s", "m", "1e-20 m4", "1e20 mm4", "5 kN", "-5 kN", "0 kN", "1e-25 kN/m",
        "50 psf * 4 ft", "½ m",
        "12 ± 1 in", "\u001b[2J", "\ud800", "NaN", "∞", "1/0 m", "L/0", "100 %", "24 in x 24 in", "∂", "9999999999",
    ];

    private static readonly string[] Keys = [.. AllKeys()];

    [Fact]
    public void SoundDocument_IsSolved() =>
        Assert.IsType<BeamOutcome.Stands>(CalculationTests.Run(Sound).Outcome);

    [Fact]
    public void AnyTextInAnyCells_IsSolvedOrTold()
    {
        BeamSolver solver = new();
        Gen<(string, string?)> change = Gen.Select(
            Gen.Int[0, Keys.Length - 1].Select(index => Keys[index]),
            Gen.Int[0, Texts.Length - 1].Select(index => Texts[index]));
        change.Array[1, 6].Sample(
            changes =>
            {
                BeamDocument document = Sound;
                foreach ((string key, string? text) in changes)
                {
                    document = DocumentCells.Set(document, key, text) ?? document;
                }

                return IsSolvedOrTold(Calculation.Run(document, SectionCatalogue.BuiltIn(), solver));
            },
            iter: 2000,
            threads: 1);
    }

    private static bool IsSolvedOrTold(Calculation calculation) => calculation.Outcome switch
    {
        null => calculation.Problems.All(problem => problem.Text.Length > 0 && problem.Key.Length > 0),
        BeamOutcome.Stands stands =>
            calculation.Problems.IsEmpty && stands.Combinations.All(answer => IsFinite(answer.Response))
                && calculation.Checks.All.All(IsJudgedOrTold),
        _ => calculation.Problems.IsEmpty,
    };

    /// <summary>A check has its share, or says why not; none is neither.</summary>
    private static bool IsJudgedOrTold(BeamCheck check) => check.What.Length > 0 && (check.Why is string why
        ? why.Length > 0 && check.Verdict == "NOT JUDGED"
        : double.IsFinite(check.Figures.Utilisation ?? double.NaN) && check.Figures is { Demand: >= 0, Limit: > 0 });

    private static bool IsFinite(BeamResponse response) => response.Reactions.All(reaction =>
        double.IsFinite(reaction.Vertical) && double.IsFinite(reaction.Horizontal) && double.IsFinite(reaction.Moment));

    private static IEnumerable<string> AllKeys() =>
    [
        .. Fields.Top.Select(field => field.Key),
        .. Rows("span", Sound.Spans.Count, Fields.Span),
        .. Rows("support", Sound.Supports.Count, Fields.Support),
        .. Rows("hinge", Sound.Hinges.Count, Fields.Hinge),
        .. Rows("load", Sound.Loads.Count, Fields.Load),
        .. Fields.SelfWeight.Select(field => $"self_weight.{field.Key}"),
        .. Fields.Section.Select(field => $"section.s.{field.Key}"),
        .. Fields.Material.Select(field => $"material.m.{field.Key}"),
        "material.m.factors.duration", "combination[1].factors.live", "combination[1].factors.snow", "ask[1]",
        .. Rows("combination", 1, Fields.Combination),
        .. Rows("pattern", 1, Fields.Pattern),
        .. Rows("rolling", 1, Fields.Rolling),
        .. Rows("rolling[1].axles", 1, Fields.Axle),
        .. Rows("stated", 1, Fields.Stated),
        .. Fields.Tolerance.Select(field => $"tolerance.{field.Key}"),
        .. Fields.Limits.Select(field => $"limits.{field.Key}"),
        "limits.deflection_cases.live", "limits.lasting.live",
    ];

    private static IEnumerable<string> Rows<T>(
        string table, int count, System.Collections.Immutable.ImmutableArray<Field<T>> fields) =>
        Enumerable.Range(1, count).SelectMany(row => fields.Select(field => $"{table}[{row}].{field.Key}"));
}
