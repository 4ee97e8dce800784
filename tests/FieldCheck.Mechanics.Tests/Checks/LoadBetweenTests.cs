using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Tests.Checks;

/// <summary>
/// 100 to 300 N/m from 4 ± 0.5 to 6 m within a half; 1000 N down and 200 N to the right at 2 ± 0.5 m; 500 Nm at 8 ± 0.25 m. All of
/// it twice, within a quarter: at most 2.5 times.
/// </summary>
public sealed class LoadBetweenTests
{
    private static readonly LoadIndex Spread = new(0, 0);
    private static readonly LoadIndex Point = new(0, 1);
    private static readonly LoadIndex Couple = new(0, 2);

    private static readonly LoadBetween All = Of(
        [new Load.Distributed(4, 6, 100, 300), new Load.Point(2, 1000, 200), new Load.Couple(8, 500)],
        new InputSpread.AllLoads(0.25),
        new InputSpread.LoadFrom(Spread, 0.5),
        new InputSpread.LoadSize(Spread, 0.5),
        new InputSpread.LoadPosition(Point, 0.5),
        new InputSpread.LoadPosition(Couple, 0.25));

    [Fact]
    public void Places_AreTheEndsOfEveryRange() =>
        Assert.Equal([0, 1.5, 2.5, 3.5, 4.5, 6, 7.75, 8.25, 10], All.Places.AsEnumerable());

    [Theory]
    [InlineData(4.5, 6, 1125)] // 2.5 x 1.5 x 300
    [InlineData(3, 3.6, 1125)]
    [InlineData(5.9, 9, 1125)]
    [InlineData(0, 3.5, 0)]
    [InlineData(6, 10, 0)]
    public void Intensity_IsTheMostThatMayStandBetween(double from, double to, double down)
    {
        Assert.Equal((down, 0), All.Across(from, to, 1));
        Assert.Equal((0, down), All.Across(from, to, -1));
    }

    [Theory]
    [InlineData(1.5, 2.5, 2500, 500)]
    [InlineData(0, 1.6, 2500, 500)]
    [InlineData(0, 1.5, 0, 0)]
    [InlineData(2.5, 4, 0, 0)]
    public void Forces_AreThoseThatMayMoveIn(double from, double to, double down, double along)
    {
        Assert.Equal((down, 0), All.Points(from, to, 1));
        Assert.Equal((0, down), All.Points(from, to, -1));
        Assert.Equal(along, All.Pushing(from, to));
    }

    [Theory]
    [InlineData(7, 7.8, 1250)]
    [InlineData(8.2, 9, 1250)]
    [InlineData(7, 7.75, 0)]
    [InlineData(8.25, 9, 0)]
    public void Couples_AreThoseThatMayMoveIn(double from, double to, double turning)
    {
        Assert.True(All.HasMovingCouple);
        Assert.Equal(turning, All.Turning(from, to));
    }

    [Fact]
    public void WhatStandsStill_StandsAtItsPlace()
    {
        LoadBetween still = Of([new Load.Distributed(4, 6, -100, 300), new Load.Point(2, 1000, 200), new Load.Couple(8, 500)]);

        Assert.Equal([0, 2, 4, 6, 8, 10], still.Places.AsEnumerable());
        Assert.Equal((600, 200), still.Across(4, 6, 1));
        Assert.Equal((0, 0), still.Points(0, 2, 1));
        Assert.Equal((2000, 0), still.Points(1, 3, 1));
        Assert.Equal(0, still.Turning(7, 9));
        Assert.False(still.HasMovingCouple);
    }

    // A couple that only varies in size stands where it stands.
    [Fact]
    public void CoupleThatDoesNotMove_DoesNotCountBetween() => Assert.False(
        Of([new Load.Couple(8, 500)], new InputSpread.LoadSize(new LoadIndex(0, 0), 0.5)).HasMovingCouple);

    // 2 m that may shrink to 1 m: twice the intensity, of 300 N/m in the worst corner.
    [Fact]
    public void TotalThatIsKept_IsDenserOnLessLength() => Assert.Equal(
        (1200, 0),
        Of([new Load.Distributed(4, 6, 100, 300)],
            new InputSpread.LoadFrom(Spread, 0.5, KeepsTotal: true), new InputSpread.LoadTo(Spread, 0.5, KeepsTotal: true))
            .Across(4, 6, 1));

    // Down to half a metre: four times.
    [Fact]
    public void TotalThatIsKept_IsFourTimesAsDenseOnAQuarterOfTheLength() => Assert.Equal(
        (2400, 0),
        Of([new Load.Distributed(4, 6, 100, 300)],
            new InputSpread.LoadFrom(Spread, 0.75, KeepsTotal: true), new InputSpread.LoadTo(Spread, 0.75, KeepsTotal: true))
            .Across(4, 6, 1));

    [Fact]
    public void LoadsAlong_AndOfCasesWithoutAPart_DoNotCount()
    {
        LoadBetween along = Of([new Load.Distributed(4, 6, 100, 300, ActsAlong: true)]);
        BeamModel model = Beam([new Load.Distributed(4, 6, 100, 300)]);
        LoadBetween none = Of(model with { Combinations = [new Combination("none", CombinationBasis.Service, [0])] });

        Assert.Equal((0, 0), along.Across(4, 6, 1));
        Assert.Equal([0, 4, 6, 10], along.Places.AsEnumerable());
        Assert.Equal((0, 0), none.Across(4, 6, 1));
        Assert.Equal([0, 10], none.Places.AsEnumerable());
    }

    private static BeamModel Beam(Load[] loads) => Said.Simple(10, loads) with
    {
        Combinations = [new Combination("service", CombinationBasis.Service, [2])],
    };

    private static LoadBetween Of(Load[] loads, params InputSpread[] inputs) => Of(Beam(loads), inputs);

    private static LoadBetween Of(BeamModel model, params InputSpread[] inputs) => new(
        new SuperposedBands(SuperposedAnswers.Solve(new BeamSolver(), model, [.. inputs])!, new Loading(0)));
}
