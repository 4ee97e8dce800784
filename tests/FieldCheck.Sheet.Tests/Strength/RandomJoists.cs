using System.Globalization;
using CsCheck;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Tests.Strength;

/// <summary>Beams of one to three spans, some with an overhang, under dead and live loads, of timber or steel.</summary>
internal static class RandomJoists
{
    private static readonly BeamDocument Timber = new()
    {
        Sections = [new() { Name = "s", Width = "100 mm", Depth = "300 mm" }],
        Materials =
        [
            new()
            {
                Name = "m", Modulus = "11 GPa", AllowableBending = "10 MPa", AllowableShear = "1 MPa", AllowableBearing = "2 MPa",
            },
        ],
        Limits = new() { Deflection = "L/300", DeflectionOverhang = "L/150", DeflectionAbsolute = "25 mm" },
    };

    private static readonly BeamDocument Steel = new()
    {
        Sections = [new() { Name = "s", Shape = "W8x31" }],
        Materials = [new() { Name = "m", Grade = "A992" }],
        Limits = new() { Rules = "AISC 360-16 ASD", Deflection = "L/360", DeflectionOverhang = "L/180" },
    };

    internal static Gen<BeamDocument> Gen { get; } = CsCheck.Gen.Select(
        CsCheck.Gen.Int[200, 600].Array[1, 3],
        CsCheck.Gen.Bool,
        CsCheck.Gen.Select(CsCheck.Gen.Int[1, 400], CsCheck.Gen.Int[0, 100], CsCheck.Gen.Bool, CsCheck.Gen.Bool).Array[1, 4],
        CsCheck.Gen.Bool,
        CsCheck.Gen.Bool,
        Of);

    /// <summary>A joist of one bay that a spread live load and a dead load in the middle stand on.</summary>
    internal static Gen<BeamDocument> OneBay { get; } = CsCheck.Gen.Select(
        CsCheck.Gen.Int[200, 600], CsCheck.Gen.Int[20, 800], CsCheck.Gen.Int[20, 800], CsCheck.Gen.Int[0, 2], CsCheck.Gen.Bool,
        (length, live, dead, held, isUs) => (isUs ? Steel with { Display = "us" } : Steel) with
        {
            Limits = Steel.Limits! with { DeflectionOverhang = null },
            Spans = [new() { Length = Text(length, "m"), Unbraced = held == 0 ? "braced" : held == 1 ? Text(length, "m") : "1 m" }],
            Supports = [Seat(0), Seat(1)],
            Loads =
            [
                new() { Kind = "distributed", Intensity = Text(live, "kN/m") },
                new() { Kind = "point", At = "mid 1", Force = Text(dead, "kN"), Case = "dead" },
            ],
        });

    internal static Calculation Run(BeamDocument document) =>
        Calculation.Run(document, SectionCatalogue.BuiltIn(), new BeamSolver());

    /// <summary>The same under loads, all or live ones, so many times as great; written as a person would.</summary>
    internal static BeamDocument Times(BeamDocument document, string factor, bool isLiveOnly) => document with
    {
        Loads =
        [
            .. document.Loads.Select(load => isLiveOnly && load.Case == "dead" ? load : load with
            {
                Force = load.Force is null ? null : $"{factor} * {load.Force}",
                Intensity = load.Intensity is null ? null : $"{factor} * {load.Intensity}",
            }),
        ],
    };

    internal static string Text(double hundredths, string unit) =>
        (hundredths / 100).ToString("0.00", CultureInfo.InvariantCulture) + " " + unit;

    private static BeamDocument Of(
        int[] spans, bool isFreeAtEnd, (int Size, int Place, bool IsPoint, bool IsDead)[] loads, bool isSteel, bool isUs)
    {
        int last = isFreeAtEnd && spans.Length > 1 ? spans.Length - 1 : spans.Length;
        BeamDocument bare = isSteel ? Steel : Timber;
        return bare with
        {
            Limits = last < spans.Length ? bare.Limits : bare.Limits! with { DeflectionOverhang = null },
            Display = isUs ? "us" : "si",
            Spans = [.. spans.Select(length => new SpanEntry { Length = Text(length, "m"), Unbraced = "2 m" })],
            Supports = [.. Enumerable.Range(0, last + 1).Select(Seat)],
            Loads =
            [
                .. loads.Select((load, i) => new LoadEntry
                {
                    Kind = load.IsPoint ? "point" : "distributed",
                    Force = load.IsPoint ? Text(load.Size, "kN") : null,
                    Intensity = load.IsPoint ? null : Text(load.Size, "kN/m"),
                    At = load.IsPoint ? Text(Math.Round(load.Place * spans.Sum() / 100.0), "m") : null,
                    Case = load.IsDead && i > 0 ? "dead" : "live",
                }),
            ],
        };
    }

    private static SupportEntry Seat(int joint) => new()
    {
        Kind = joint == 0 ? "pin" : "roller",
        Joint = joint.ToString(CultureInfo.InvariantCulture),
        Acts = "both",
        Bearing = "100 mm",
    };
}
