using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Influence;

namespace FieldCheck.Sheet.Tests.Influence;

public sealed class InfluenceLineTests
{
    private static readonly BeamDocument TwoBays = new()
    {
        Spans = [new SpanEntry { Length = "4 m" }, new SpanEntry { Length = "4 m" }, new SpanEntry { Length = "1 m" }],
        Supports =
        [
            new SupportEntry { Kind = "pin", Joint = "0" },
            new SupportEntry { Kind = "roller", Joint = "1" },
            new SupportEntry { Kind = "roller", Joint = "2" },
        ],
    };

    /// <summary>A force in the middle of one of two equal bays: 13/32, 22/32 and -3/32 of it (usual tables of continuous beams).</summary>
    [Theory]
    [InlineData(0, 13.0 / 32)]
    [InlineData(1, 22.0 / 32)]
    [InlineData(2, -3.0 / 32)]
    public void ReactionToAForceInTheMiddleOfABay_IsThatOfTheTables(int support, double expected)
    {
        InfluenceLine line = LineOf(TwoBays, new InfluenceOf.Reaction(support));

        Assert.Equal(expected, line.At(2).Left, 12);
        Assert.Equal(expected, line.At(2).Right, 12);
        Assert.Equal(support == 0 ? 1 : 0, line.At(0).Right, 12);
        Assert.Equal(support == 1 ? 1 : 0, line.At(4).Left, 12);
    }

    /// <summary>On a simple span a moment's line is a triangle of height a b / L, a shear's jumps by one (statics).</summary>
    [Fact]
    public void SectionOfASimpleSpan_HasItsTriangleAndItsJump()
    {
        BeamDocument simple = TwoBays with { Spans = [new SpanEntry { Length = "8 m" }], Supports = [TwoBays.Supports[0], new SupportEntry { Kind = "roller", Joint = "1" }] };
        InfluenceLine moment = LineOf(simple, new InfluenceOf.Section(Curve.Moment, 3));
        InfluenceLine shear = LineOf(simple, new InfluenceOf.Section(Curve.Shear, 3));

        Extreme peak = moment.Peaks.MaxBy(one => one.Value);
        Assert.Equal((3 * 5 / 8.0, 3.0), (Math.Round(peak.Value, 12), peak.Position));
        (double left, double right) = shear.At(3);
        Assert.Equal((-3 / 8.0, 5 / 8.0), (Math.Round(left, 12), Math.Round(right, 12)));
        Assert.Equal([left, right], shear.Peaks.Where(one => one.Position == 3).Select(one => one.Value));
        Assert.Empty(shear.Zeros);
    }

    /// <summary>Wherever the force stands the line gives what the beam is solved to; peaks are not exceeded, zeros are zero.</summary>
    [Fact]
    public void EveryPlace_IsWhatTheBeamIsSolvedTo()
    {
        BuiltBeam beam = Built(TwoBays);
        foreach (InfluenceOf figure in new InfluenceOf[]
        {
            new InfluenceOf.Reaction(1), new InfluenceOf.Section(Curve.Moment, 2.7), new InfluenceOf.Section(Curve.Shear, 5.2),
        })
        {
            InfluenceLine line = InfluenceLine.Of(beam, figure)!;
            for (double place = 0.05; place < 9; place += 0.19)
            {
                Assert.Equal(Solved(beam.Model, figure, place), line.At(place).Left, tolerance: 1e-12);
                Assert.InRange(
                    line.At(place).Left,
                    line.Peaks.Min(peak => peak.Value) - 1e-12,
                    line.Peaks.Max(peak => peak.Value) + 1e-12);
            }

            Assert.All(line.Zeros, zero => Assert.Equal(0, line.At(zero).Left, 12));
            Assert.NotEmpty(line.Zeros);
        }
    }

    [Fact]
    public void BeamThatCanMove_HasNone() => Assert.Null(InfluenceLine.Of(
        Built(TwoBays with { Supports = [TwoBays.Supports[0]] }), new InfluenceOf.Reaction(0)));

    private static double Solved(BeamModel model, InfluenceOf figure, double place)
    {
        BeamModel loaded = new(
            model.Spans,
            model.Supports,
            model.Hinges,
            [new LoadCase("one", [new Load.Point(place, 1)])],
            [new Combination("one", CombinationBasis.Service, [1])],
            model.HasAbsoluteStiffness);
        BeamResponse response = Assert.IsType<BeamOutcome.Stands>(new BeamSolver().Solve(loaded)).Combinations[0].Response;
        return figure switch
        {
            InfluenceOf.Reaction reaction => response.Reactions[reaction.Support].Vertical,
            InfluenceOf.Section { Curve: Curve.Shear } section => response.At(section.Position).Right.Shear,
            InfluenceOf.Section section => response.At(section.Position).Right.Moment,
            _ => double.NaN,
        };
    }

    private static InfluenceLine LineOf(BeamDocument document, InfluenceOf figure) => InfluenceLine.Of(Built(document), figure)!;

    private static BuiltBeam Built(BeamDocument document) =>
        Assert.IsType<BuildOutcome.Built>(ModelBuilder.Build(document, SectionCatalogue.BuiltIn())).Beam;
}
