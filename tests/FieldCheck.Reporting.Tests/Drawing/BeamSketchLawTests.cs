using System.Collections.Immutable;
using CsCheck;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Reporting.Drawing;
using FieldCheck.Reporting.Tables;
using FieldCheck.Sheet.Building;

namespace FieldCheck.Reporting.Tests.Drawing;

/// <summary>What holds for every sketch, whatever the beam.</summary>
public sealed class BeamSketchLawTests
{
    private const int Many = 300;

    private const double Step = 0.03;

    private static readonly Gen<double> Place = Gen.Int[1, 99].Select(i => i * Step);

    // No simple fraction of the length is a place, so that none lies on the border of two columns.
    private static readonly double Length = (100 + 1 / Math.PI) * Step;

    private static readonly Gen<Load> AnyLoad = Gen.OneOf<Load>(
        Gen.Select(Place, Gen.Double[-9000.0, 9000.0], (at, down) => (Load)new Load.Point(at, down)),
        Gen.Select(Place, Gen.Double[-9000.0, 9000.0], (at, right) => (Load)new Load.Point(at, 0, right)),
        Gen.Select(Place, Gen.Double[-9000.0, 9000.0], (at, moment) => (Load)new Load.Couple(at, moment)),
        Gen.Select(Gen.Int[1, 50], Gen.Int[51, 99], Gen.Double[-9000.0, 9000.0], Gen.Double[-9000.0, 9000.0], Gen.Bool,
            (from, to, start, end, along) => (Load)new Load.Distributed(from * Step, to * Step, start, end, along)));

    private static readonly Gen<Support[]> AnySupports =
        from places in Gen.Int[1, 99].HashSet[2, 6]
        from isRoller in Gen.Bool.Array[places.Count]
        select places.Order().Select((place, i) =>
            i > 0 && isRoller[i] ? Support.Roller(place * Step) : Support.Pin(place * Step)).ToArray();

    private static readonly Gen<(BuiltBeam Beam, int Width)> AnySketch =
        Gen.Select(AnySupports, AnyLoad.Array[0, 8], Gen.Int[20, 140], (supports, loads, width) =>
            (Bench.Beam([Length], supports, loads), width));

    [Fact]
    public void EverySketch_KeepsItsWidth_AndIsPrintableAscii() => AnySketch.Sample(sketch =>
    {
        foreach (string row in Rows(sketch.Beam, sketch.Width))
        {
            Assert.InRange(row.Length, 0, sketch.Width);
            Assert.All(row, c => Assert.InRange(c, ' ', '~'));
        }
    }, iter: Many);

    [Fact]
    public void EverySupport_IsToldWithItsWholeReaction() => AnySketch.Sample(sketch =>
    {
        CombinationResponse answer = Bench.Answer(sketch.Beam);
        string below = string.Join(' ', Rows(sketch.Beam, sketch.Width)).Replace("  ", " ", StringComparison.Ordinal);
        foreach ((NamedSupport support, int i) in sketch.Beam.Supports.Select((support, i) => (support, i)))
        {
            ImmutableArray<string> parts = new BeamWords(sketch.Beam).Parts(support.Support, answer.Response.Reactions[i]);
            string whole = string.Join(", ", parts);
            Assert.Contains($"{support.Label} {whole}", below, StringComparison.Ordinal);
        }
    }, iter: Many);

    [Fact]
    public void SeenFromTheOtherSide_TheColumnsAreMirrored() => AnySketch.Where(StandApart).Sample(sketch =>
    {
        string[] there = Bare(sketch.Beam, sketch.Width);
        string[] back = Bare(Mirrored(sketch.Beam), sketch.Width);

        string mirrored = string.Join('\n', there.Select(row => string.Concat(row.Reverse().Select(Turned))));
        string seen = string.Join('\n', back);
        Assert.True(mirrored == seen, $"\n{mirrored}\n{seen}");
    }, iter: Many);

    private static bool StandApart((BuiltBeam Beam, int Width) sketch) => sketch.Beam.Supports
        .Zip(sketch.Beam.Supports.Skip(1))
        .All(pair => pair.Second.Support.Position - pair.First.Support.Position > 1.01 * Length / sketch.Width);

    private static ImmutableArray<string> Rows(BuiltBeam beam, int width) =>
        BeamSketch.Draw(beam, Bench.Answer(beam), width, new SketchStyle());

    /// <summary>The rows of loads, beam and support glyphs, without labels.</summary>
    private static string[] Bare(BuiltBeam beam, int width)
    {
        BuiltBeam unlabelled = beam with
        {
            Supports = [.. beam.Supports.Select(support => support with { Label = "" })],
        };
        return
        [
            .. BeamSketch.Draw(unlabelled, null, width, new SketchStyle(LabelRows: 0))
                .Select(row => row.PadRight(width)),
        ];
    }

    private static char Turned(char glyph) => glyph switch
    {
        '(' => ')',
        ')' => '(',
        '<' => '>',
        '>' => '<',
        '[' => ']',
        ']' => '[',
        _ => glyph,
    };

    private static BuiltBeam Mirrored(BuiltBeam beam) => Bench.Beam(
        [Length],
        [.. beam.Model.Supports.Reverse().Select(Mirrored)],
        [.. beam.Loads.Select(named => Mirrored(named.Load))]);

    private static Support Mirrored(Support support) => new(
        Length - support.Position, support.Along, support.Across, support.Rotation);

    private static Load Mirrored(Load load) => load switch
    {
        Load.Point point => new Load.Point(Length - point.Position, point.Down, -point.Right),
        Load.Couple couple => new Load.Couple(Length - couple.Position, -couple.Moment),
        Load.Distributed spread => new Load.Distributed(
            Length - spread.To,
            Length - spread.From,
            spread.ActsAlong ? -spread.EndIntensity : spread.EndIntensity,
            spread.ActsAlong ? -spread.StartIntensity : spread.StartIntensity,
            spread.ActsAlong),
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}
