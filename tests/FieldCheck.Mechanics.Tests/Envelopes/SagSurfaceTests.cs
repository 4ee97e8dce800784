using CsCheck;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Mechanics.Tests.Laws;

namespace FieldCheck.Mechanics.Tests.Envelopes;

/// <summary>Bounds of deflections under a train, against the axles set down as forces and the beam solved.</summary>
public sealed class SagSurfaceTests
{
    private static readonly double[] Lengths = [5.0, 3.5, 1.2];

    /// <summary>The three axles whose parts in the deflection are to be told apart: two push, one lifts.</summary>
    private static readonly RollingLoad Axles =
        new("axles", 0, [new Axle(0, 35e3), new Axle(0.7, -20e3), new Axle(2.1, 145e3)], 0.25);

    // Inside of intervals: at their ends an axle comes on to the free end of the beam, or leaves it.
    private static readonly Gen<(int Element, int Interval, SagBox Box, double Scale, double[] At)> Boxes = Gen.Select(
        Gen.Int[0, 2],
        Gen.Int[0, 1000],
        Gen.Select(Gen.Double[0, 0.7], Gen.Double[0.001, 0.3], Gen.Double[0, 0.7], Gen.Double[0.001, 0.3])
            .Select((from, width, start, way) => new SagBox(from, width, start, way)),
        Gen.Double[-2, 2],
        Gen.Double[0.01, 0.99].Array[2]);

    /// <summary>Two spans and an overhang; stiff in shear, soft in shear, so soft that hardly anything else counts.</summary>
    [Theory]
    [InlineData(null)]
    [InlineData(4e6)]
    [InlineData(2e5)]
    public void Bound_IsNowhereBelowTheBeamSolved(double? shearRigidity)
    {
        Span[] spans = [.. Lengths.Select(length => new Span(length, 8e6, 1e9, shearRigidity))];
        BeamModel model = new(
            [.. spans],
            [Support.Pin(0), Support.Roller(5), Support.Spring(8.5, 1e6)],
            [],
            [new LoadCase("live", [])],
            [new Combination("all", CombinationBasis.Service, [1])]);
        EnvelopeProblem problem = new(model, [], [Axles]);
        BeamSolver solver = new();
        Traffic traffic = Superposition.Of(problem, solver)!.Traffic!;
        double[] standing = [0.01, -0.02, 0.03, 0, 0.01, -0.005];

        Boxes.Sample(
            drawn =>
            {
                Train train = traffic.Trains[drawn.Interval % 2];
                int interval = drawn.Interval / 2 % train.IntervalCount;
                SagSurface surface = new TrainElement(train, traffic.Influence, drawn.Element).Sag();
                surface.Enter(interval);
                SagBound bound = surface.Bound(standing, drawn.Scale, drawn.Box);

                double there = Solved(drawn.At[0], drawn.At[1]);
                Assert.True(there <= bound.Most + 1e-12, $"{there:R} stands in a box bounded by {bound.Most:R}");
                Law.Equal(Solved(0.5, 0.5), bound.Middle, 1e-11, "middle");

                double Solved(double section, double place)
                {
                    double first = train.StartOf(interval)
                        + (drawn.Box.Start + place * drawn.Box.Way) * train.LengthOf(interval);
                    double from = model.JointPositions[drawn.Element];
                    double x = from + (drawn.Box.From + section * drawn.Box.Width) * spans[drawn.Element].Length;
                    BeamModel loaded = EveryPlace.With(model, problem, (0, first, train.IsReversed));
                    BeamResponse answer = ((BeamOutcome.Stands)solver.Solve(loaded)).Combinations[0].Response;
                    return Roots.Value(standing, section) + drawn.Scale * answer.At(x).Left.Deflection;
                }
            },
            iter: 10 * Law.Draws,
            threads: 1);
    }

    /// <summary>Halving a box does not raise its bound but by rounding, and in the end the bound is the value.</summary>
    [Fact]
    public void Bound_ComesToTheValueAsBoxesShrink()
    {
        BeamModel model = new(
            [new Span(2, 1e8, 1e9, 4e5)],
            [Support.Pin(0), Support.Roller(2)],
            [],
            [new LoadCase("live", [])],
            [new Combination("all", CombinationBasis.Service, [1])]);
        RollingLoad axle = new("axle", 0, [new Axle(0, 20e3)], 0);
        Traffic traffic = Superposition.Of(new EnvelopeProblem(model, [], [axle]), new BeamSolver())!.Traffic!;
        SagSurface surface = new TrainElement(traffic.Trains[0], traffic.Influence, 0).Sag();
        surface.Enter(0);

        // An axle over the middle, where the line has a kink: P·l/4GA + P·l³/48EI.
        double greatest = 20e3 * 2 / (4 * 4e5) + 20e3 * 8 / (48 * 1e8);
        for (int halving = 1; halving <= 12; halving++)
        {
            double width = Math.Pow(2, -halving);
            SagBound bound = surface.Bound([], 1, new SagBox(0.5 - width / 2, width, 0.5 - width / 2, width));
            Assert.InRange(bound.Most, greatest * (1 - 1e-12), greatest * (1 + width * width));
        }
    }
}
