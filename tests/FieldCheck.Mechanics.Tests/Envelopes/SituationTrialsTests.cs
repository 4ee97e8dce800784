using FieldCheck.Mechanics.Envelopes;

namespace FieldCheck.Mechanics.Tests.Envelopes;

/// <summary>Which situations are tried one by one.</summary>
public sealed class SituationTrialsTests
{
    private static readonly int[] Usual =
        [0b11111, 0, 0b10101, 0b01010, 1, 0b11110, 2, 0b11101, 4, 0b11011, 8, 0b10111, 16, 0b01111];

    /// <summary>Live loads on two bays and an overhang, a pull on one bay, another load on the first: 32 patterns.</summary>
    [Fact]
    public void Patterns_AreAllThatStandOrNot()
    {
        SituationTrials trials = new(LiftedBeams.Sum(LiftedBeams.Continuous()), 0);

        Assert.Equal((5, 32, false), (trials.Optional.Length, trials.Patterns, trials.Rolls));
        Assert.Equal(Enumerable.Range(0, 32).Select(trials.Pattern), trials.Every());
        Assert.Equal(32, trials.Every().Distinct().Count());
        Situation one = trials.Pattern(0b00110);
        Assert.Equal(
            [null, new LoadedBays([1], false, true), new LoadedBays([], false, false), new LoadedBays([], false, false)],
            one.Patterns.AsEnumerable());
        Assert.Equal(Usual.Select(trials.Pattern), trials.Usual());
    }

    /// <summary>One part more or less, then every two of the five; what rolls stays where it is.</summary>
    [Fact]
    public void Neighbours_AreOnePartOrTwoAway()
    {
        SituationTrials trials = new(LiftedBeams.Sum(LiftedBeams.Continuous()), 0);
        RollingPlace place = new(0, 2.5, true);
        int[] away =
        [
            1, 2, 4, 8, 16, 0b00011, 0b00101, 0b01001, 0b10001, 0b00110, 0b01010, 0b10010, 0b01100, 0b10100, 0b11000,
        ];

        Assert.Equal(
            away.Select(bits => trials.Pattern(0b01101 ^ bits) with { Rolling = place }),
            trials.Neighbours(trials.Pattern(0b01101) with { Rolling = place }));
    }

    /// <summary>8 m: one axle steps by 8/40, two axles 8 m apart by 16/40, both ways.</summary>
    [Fact]
    public void RollingLoads_AreStepped()
    {
        SituationTrials trials = Rolling();

        RollingPlace[] places = [.. trials.Rolled(trials.Pattern(0)).Select(one => one.Rolling!)];

        Assert.True(trials.Rolls);
        Assert.Equal(3 * 41, places.Length);
        Assert.Equal(Enumerable.Range(0, 41).Select(i => Math.Round(0.2 * i, 9)), At(0, false));
        Assert.Equal(Enumerable.Range(0, 41).Select(i => Math.Round(-8 + (0.4 * i), 9)), At(1, false));
        Assert.Equal(Enumerable.Range(0, 41).Select(i => Math.Round(0.4 * i, 9)), At(1, true));

        IEnumerable<double> At(int rolling, bool isReversed) => places
            .Where(one => one.Rolling == rolling && one.IsReversed == isReversed).Select(one => Math.Round(one.Position, 9) + 0);
    }

    /// <summary>The golden section closes in on the best place within a step, in some twenty trials.</summary>
    [Theory]
    [InlineData(0.39)]
    [InlineData(0.05)]
    [InlineData(0)]
    [InlineData(-0.21)]
    [InlineData(-0.38)]
    public void Polish_ClosesInOnTheBest(double beside)
    {
        SituationTrials trials = Rolling();
        Situation best = trials.Pattern(0) with { Rolling = new RollingPlace(1, 3, false) };
        List<double> asked = [];

        trials.Polish(best, situation =>
        {
            Assert.Equal(best, situation with { Rolling = best.Rolling });
            asked.Add(situation.Rolling!.Position);
            return -Math.Abs(situation.Rolling.Position - 3 - beside);
        });

        Assert.InRange(asked.Count, 15, 30);
        Assert.All(asked, at => Assert.InRange(at, 2.6, 3.4));
        Assert.Equal(3 + beside, asked[^1], 1e-4);
    }

    private static SituationTrials Rolling()
    {
        EnvelopeProblem problem = LiftedBeams.Continuous();
        return new SituationTrials(
            LiftedBeams.Sum(new EnvelopeProblem(
                problem.Model,
                problem.PatternCases,
                [new RollingLoad("one", 0, [new Axle(0, 1)]), new RollingLoad("two", 1, [new Axle(0, 1), new Axle(8, 2)])])),
            0);
    }
}
