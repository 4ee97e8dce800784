using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Strength;

namespace FieldCheck.Mechanics.Tests.Strength;

/// <summary>|N| and |M| each times a share, added up at one place: small beams by statics.</summary>
public sealed class CombinedDemandTests
{
    /// <summary>
    /// 2 m under 1 kN/m hog by 2 kN·m at the wall; 1 kN at the tip pulls, counted once, or presses, counted four times.
    /// </summary>
    [Theory]
    [InlineData(false, 1000, 3000)]
    [InlineData(false, -1000, 6000)]
    [InlineData(true, 1000, 3000)]
    [InlineData(true, -1000, 6000)]
    public void Hogging_CountsAsSaggingDoes(bool isMirrored, double pull, double sum)
    {
        CombinedDemand found = Of(
            Checked.Model(
                [2],
                [Support.Fixed(isMirrored ? 2 : 0)],
                Checked.Uniform(0, 2, 1000),
                new Load.Point(isMirrored ? 0 : 2, 0, isMirrored ? -pull : pull)),
            (1, 4, 1));

        Assert.Equal((sum, isMirrored ? 2 : 0), (Math.Round(found.Sum.Value, 6), Math.Round(found.Sum.Position, 9)));
        Assert.Equal((1000, 2000), (Math.Round(found.Axial, 6), Math.Round(found.Moment, 6)));
        Assert.False(found.Sum.IsBound);
    }

    /// <summary>
    /// Between two pins 4 m apart 30 kN along pull three quarters of it on the shorter side or press it there; 4 kN down at
    /// the same place bend by 3 kN·m on both sides. The greater sum is that of the shorter side.
    /// </summary>
    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    public void WhereTheForceChanges_ThatSideCountsOnWhichTheSumIsGreater(double place)
    {
        CombinedDemand found = Of(BetweenPins(new Load.Point(place, 4000, 30e3)), (1, 1, 1));

        Assert.Equal((25500, place), (Math.Round(found.Sum.Value, 6), Math.Round(found.Sum.Position, 9)));
        Assert.Equal((22500, 3000), (Math.Round(found.Axial, 6), Math.Round(found.Moment, 6)));
    }

    /// <summary>A couple of 4 kN·m a quarter along bends by 1 kN·m on the shorter side and by 3 on the longer.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    public void WhereTheMomentChanges_ThatSideCountsOnWhichItIsGreater(double place)
    {
        CombinedDemand found = Of(Checked.Simple(4, new Load.Couple(place, 4000), new Load.Point(4, 0, 500)), (1, 1, 1));

        Assert.Equal((3500, place), (Math.Round(found.Sum.Value, 6), Math.Round(found.Sum.Position, 9)));
        Assert.Equal((500, 3000), (Math.Round(found.Axial, 6), Math.Round(found.Moment, 6)));
    }

    /// <summary>The parts are of the situation that governs, whichever stands first.</summary>
    [Theory]
    [InlineData(1, 0.5, 0)]
    [InlineData(0.5, 1, 1)]
    public void Parts_AreOfTheSituationThatGoverns(double first, double second, int governing)
    {
        BeamModel model = Checked.Simple(4, Checked.Uniform(0, 4, 2000), new Load.Point(4, 0, 500)) with
        {
            Combinations =
            [
                new Combination("first", CombinationBasis.Service, [first]), new Combination("second", CombinationBasis.Service, [second]),
            ],
        };

        CombinedDemand found = Of(model, (1, 1, 1));

        Assert.Equal((4500, 500, 4000), (Math.Round(found.Sum.Value, 6), Math.Round(found.Axial, 6), Math.Round(found.Moment, 6)));
        Assert.Equal(governing, found.Sum.Situation.Combination);
    }

    /// <summary>
    /// Under a wheel of 1 kN, F·l/4 = 1 kN·m at midspan, each has its worst: 22.5 kN of tension left of the force along,
    /// 7.5 kN of compression right of it. The place is that of what counts more.
    /// </summary>
    [Theory]
    [InlineData(1, 1, 1, 23500, 22500, 0)]
    [InlineData(1, 4, 1, 31000, 7500, 1)]
    [InlineData(1, 1, 30, 52500, 22500, 2)]
    public void UnderARollingLoad_TheWorstOfEachIsAddedUp(
        double perTension, double perCompression, double perMoment, double sum, double axial, double place)
    {
        StrengthProblem problem = Checked
            .Problem(BetweenPins(new Load.Point(1, 0, 30e3)))
            .WithRolling(new RollingLoad("wheel", 0, [new Axle(0, 1000)], 0));

        CombinedDemand found = CombinedDemand.Of(
            new MemberDemands(problem.Demands().Of(CombinationBasis.Service), [0]), perTension, perCompression, perMoment);

        Assert.Equal((sum, axial, 1000), (Math.Round(found.Sum.Value, 4), Math.Round(found.Axial, 6), Math.Round(found.Moment, 6)));
        Assert.Equal(place, found.Sum.Position, 1e-9);
        Assert.True(found.Sum.IsBound);
    }

    private static BeamModel BetweenPins(Load load) => Checked.Model([4], [Support.Pin(0), Support.Pin(4)], load);

    private static CombinedDemand Of(BeamModel model, (double Tension, double Compression, double Moment) per) => CombinedDemand.Of(
        new MemberDemands(Checked.Problem(model).Demands().Of(CombinationBasis.Service), [0]), per.Tension, per.Compression, per.Moment);
}
