using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Tests.Envelopes;

/// <summary>Where axles stand as a load rolls over, place by place, worked by hand.</summary>
public sealed class TrainTests
{
    /// <summary>Elements of 2, 3 and 5 m.</summary>
    private static readonly BeamModel Beam = new(
        [new Span(2, 1, 1), new Span(3, 1, 1), new Span(5, 1, 1)],
        [Support.Pin(0), Support.Roller(2), Support.Roller(5), Support.Roller(10)],
        [],
        [new LoadCase("cart", [])],
        [new Combination("all", CombinationBasis.Service, [1])]);

    /// <summary>Axles at one place are one; those that cancel are none; what is left stands left to right, with impact.</summary>
    [Fact]
    public void Axles_AreJoinedAndSorted()
    {
        Axle[] axles = [new(3, 4), new(0, 1), new(3, 6), new(1, 5), new(1, -5)];

        Train ahead = Of(axles, impact: 0.25);
        Train reversed = Of(axles, impact: 0.25, isReversed: true);

        Assert.Equal([0, 3], ahead.Offsets);
        Assert.Equal([1.25, 12.5], ahead.Forces);
        Assert.Equal([-3, 0], reversed.Offsets);
        Assert.Equal([12.5, 1.25], reversed.Forces);
        Assert.Equal((0, 0, true), (reversed.Rolling, reversed.Case, reversed.IsReversed));
    }

    /// <summary>A single axle rolls one way, but for one that stands beside the place it is named by; what cancels does not roll.</summary>
    [Fact]
    public void Trains_AreThoseThatWeighAnything_BothWays()
    {
        EnvelopeProblem problem = new(
            Beam,
            [],
            [
                new RollingLoad("one", 0, [new Axle(0, 1)]), new RollingLoad("none", 0, [new Axle(0, 1), new Axle(0, -1)]),
                new RollingLoad("beside", 0, [new Axle(1, 1)]), new RollingLoad("two", 0, [new Axle(0, 1), new Axle(1, 1)]),
            ]);

        Assert.Equal(
            [(0, false), (2, false), (2, true), (3, false), (3, true)],
            Train.Of(problem, new BeamNodes(Beam)).Select(train => (train.Rolling, train.IsReversed)));
    }

    /// <summary>A length of 10 m and the farthest axle: a part in 10¹² of both.</summary>
    [Theory]
    [InlineData(0, 4, 14e-12)]
    [InlineData(6, 4, 16e-12)]
    [InlineData(0, 0, 10e-12)]
    public void Nearness_IsAPartOfBeamAndTrain(double first, double second, double nearness) =>
        Assert.Equal(nearness, Of([new Axle(first, 1), new Axle(second, 2)]).Nearness, 1e-20);

    /// <summary>From the last axle just coming on at x = 0 to the first just leaving: -4 to 10 m, in seven steps of 2 m.</summary>
    [Fact]
    public void Steps_GoFromOffOneEndToOffTheOther()
    {
        Train train = Of([new Axle(0, 1), new Axle(4, 1)]);

        Assert.Equal([-4, -2, 0, 2, 4, 6, 8, 10], Enumerable.Range(0, 8).Select(i => train.Step(i, 7)));
        Assert.Equal([0, 5, 14], Enumerable.Range(0, 3).Select(i => Math.Round(Of([new Axle(0, 1), new Axle(4, 1)], isReversed: true).Step(i, 14) * (i == 2 ? 7 : i == 1 ? 5 : 1), 9)));
    }

    /// <summary>Axles 1 m apart over ends at 0, 2, 5 and 10 m: events where either stands at an end.</summary>
    [Fact]
    public void Intervals_AreBetweenTheEndsThatAxlesPass()
    {
        Train train = Of([new Axle(0, 1), new Axle(1, 1)]);

        Assert.Equal(7, train.IntervalCount);
        Assert.Equal([-1, 0, 1, 2, 4, 5, 9], Enumerable.Range(0, 7).Select(train.StartOf));
        Assert.Equal([1, 1, 1, 2, 1, 4, 1], Enumerable.Range(0, 7).Select(train.LengthOf));
        Assert.Equal([-1, 0, 0, 1, 1, 2, 2], Enumerable.Range(0, 7).Select(i => train.ElementOf(i, 0)));
        Assert.Equal([0, 0, 1, 1, 2, 2, -1], Enumerable.Range(0, 7).Select(i => train.ElementOf(i, 1)));
        Assert.All(Enumerable.Range(0, 7), i => Assert.Equal((false, 0, 0), (train.IsPlace(i), train.StopOf(i, 0), train.StopOf(i, 1))));
    }

    /// <summary>Of each stretch of elements, from where some axle comes to where the last leaves: against a plain look at all.</summary>
    [Theory]
    [InlineData(0, 1)]
    [InlineData(1, 2)]
    [InlineData(2, 3)]
    [InlineData(0, 2)]
    [InlineData(1, 3)]
    [InlineData(0, 3)]
    public void IntervalsOver_AreThoseInWhichAnAxleIsThere(int first, int end)
    {
        foreach (Train train in (Train[])
            [
                Of([new Axle(0, 1), new Axle(1, 1)]), Of([new Axle(0, 1)]), Of([new Axle(0, 1), new Axle(6.5, 1), new Axle(8, 1)]),
                Of([new Axle(0, 1), new Axle(6.5, 1)], isReversed: true),
            ])
        {
            int[] there =
            [
                .. Enumerable.Range(0, train.IntervalCount).Where(i => Enumerable.Range(0, train.Offsets.Length)
                    .Any(axle => train.ElementOf(i, axle) >= first && train.ElementOf(i, axle) < end)),
            ];

            Assert.Equal((there[0], there[^1] + 1), train.IntervalsOver(first, end));
        }
    }

    [Fact]
    public void IntervalsOver_NoElements_AreNone()
    {
        (int first, int end) = Of([new Axle(0, 1), new Axle(1, 1)]).IntervalsOver(2, 2);

        Assert.Equal(first, end);
    }

    /// <summary>
    /// Axles as far apart as the beam is long: at one place, and nowhere else, both are on it. There each stands at an end, with
    /// no section beyond it.
    /// </summary>
    [Fact]
    public void AxleThatComesOnAsAnotherLeaves_IsAPlaceOfItsOwn()
    {
        Train train = Of([new Axle(0, 1), new Axle(10, 1)]);
        int alone = Assert.Single(Enumerable.Range(0, train.IntervalCount), train.IsPlace);

        Assert.Equal((0, 2), (train.ElementOf(alone, 0), train.ElementOf(alone, 1)));
        Assert.Equal((1, -1), (train.StopOf(alone, 0), train.StopOf(alone, 1)));
        Assert.Equal(0, train.StartOf(alone), 1e-12);
        Assert.InRange(train.LengthOf(alone), 1e-18, train.Nearness);
        Assert.InRange(train.StartOf(alone), -train.Nearness, -1e-18);
        Assert.Equal(
            new RollingPlace(0, 0, false),
            train.PlaceOf(new RollingPeak(1, alone, 0.5, 1), jumpsBesideAxle: true));
    }

    /// <summary>With a third axle midway, which moves on over the beam, the two at the ends stop the same; it does not.</summary>
    [Fact]
    public void AxleInside_HasSectionsOnBothSides()
    {
        Train train = Of([new Axle(0, 1), new Axle(4, 1), new Axle(10, 1)]);
        int alone = Assert.Single(Enumerable.Range(0, train.IntervalCount), train.IsPlace);

        Assert.Equal((1, 0, -1), (train.StopOf(alone, 0), train.StopOf(alone, 1), train.StopOf(alone, 2)));
    }

    /// <summary>
    /// Half way through the way from 2 to 4 m the first axle stands at 3 m. At the end of a way a value of one side stands beside
    /// it: next to nothing where an axle is just on or off the beam, a little where it jumps beside an axle, nowhere else.
    /// </summary>
    [Fact]
    public void PlaceOfAPeak_LeansToTheSideThatItHoldsOn()
    {
        Train train = Of([new Axle(0, 1), new Axle(1, 1)]);

        Assert.Equal(3, At(new RollingPeak(1, 3, 0.5, 0), true));
        Assert.Equal(3, At(new RollingPeak(1, 3, 0.5, 1), false));
        Assert.InRange(At(new RollingPeak(1, 3, 0.5, 1), true) - 3, 1e-10, 1e-6);
        Assert.InRange(3 - At(new RollingPeak(1, 3, 0.5, -1), true), 1e-10, 1e-6);

        // At 9 m the second axle stands on the right end; on the way from there it is off, on the way to there on.
        Assert.Equal(9 + train.Nearness, At(new RollingPeak(1, 6, 0, 1), false));
        Assert.Equal(9, At(new RollingPeak(1, 6, 0, 0), false));
        Assert.Equal(9, At(new RollingPeak(1, 5, 1, -1), false));

        double At(RollingPeak peak, bool jumps) => train.PlaceOf(peak, jumps).Position;
    }

    private static Train Of(Axle[] axles, double impact = 0, bool isReversed = false) =>
        new(new EnvelopeProblem(Beam, [], [new RollingLoad("cart", 0, [.. axles], impact)]), 0, isReversed, new BeamNodes(Beam));
}
