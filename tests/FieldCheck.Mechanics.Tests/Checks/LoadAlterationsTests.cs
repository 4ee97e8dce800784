using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Tests.Checks;

public sealed class LoadAlterationsTests
{
    private static readonly LoadIndex Point = new(0, 0);
    private static readonly LoadIndex Couple = new(0, 1);
    private static readonly LoadIndex Spread = new(0, 2);

    private static readonly BeamModel Typed = new(
        [new Span(10, 1e7, 1e9)],
        [Support.Fixed(0) with { ImposedRotation = 0.5 }, Support.Roller(10) with { Settlement = 0.25 }],
        [],
        [
            new LoadCase(
                "dead",
                [new Load.Point(2, 10, 4), new Load.Couple(3, 5, Side.Right), new Load.Distributed(4, 6, 100, 300)]),
            new LoadCase("live", [new Load.Distributed(1, 9, 50, 70, ActsAlong: true)]),
        ],
        [new Combination("service", CombinationBasis.Service, [1.2, 0.5])]);

    [Fact]
    public void AllLoads_ScaleEveryFactorAndNothingElse()
    {
        BeamModel altered = Altered((new InputSpread.AllLoads(1), 0.125), (new InputSpread.AllLoads(1), 0.125))!;

        Assert.Equal([1.5, 0.625], altered.Combinations[0].Factors.AsEnumerable());
        Assert.Equal(Typed.Cases[0].Loads.AsEnumerable(), altered.Cases[0].Loads);
        Assert.Equal(Typed.Supports.AsEnumerable(), altered.Supports);
    }

    [Fact]
    public void Movements_AddToThoseOfTheirSupport()
    {
        BeamModel altered = Altered(
            (new InputSpread.Settlement(1, 1), 0.5), (new InputSpread.ImposedRotation(0, 1), -0.75))!;

        Assert.Equal([0, 0.75], altered.Supports.Select(one => one.Settlement));
        Assert.Equal([-0.25, 0], altered.Supports.Select(one => one.ImposedRotation));
        Assert.Equal(Typed.Combinations[0].Factors.AsEnumerable(), altered.Combinations[0].Factors.AsEnumerable());
    }

    [Fact]
    public void SizesOfOneLoad_Multiply()
    {
        Load point = LoadOf(Point, (new InputSpread.LoadSize(Point, 1), 0.25), (new InputSpread.LoadSize(Point, 1), -0.5));
        Load couple = LoadOf(Couple, (new InputSpread.LoadSize(Couple, 1), 0.5));
        Load spread = LoadOf(Spread, (new InputSpread.LoadSize(Spread, 1), -0.5));

        Assert.Equal(new Load.Point(2, 6.25, 2.5), point);
        Assert.Equal(new Load.Couple(3, 7.5, Side.Right), couple);
        Assert.Equal(new Load.Distributed(4, 6, 50, 150), spread);
    }

    [Theory]
    [InlineData(0.5, 2.5)]
    [InlineData(-1.5, 0.5)]
    [InlineData(-3, 0)]
    [InlineData(9, 10)]
    public void Place_MovesAndStaysOnTheBeam(double by, double place)
    {
        Assert.Equal(new Load.Point(place, 10, 4), LoadOf(Point, (new InputSpread.LoadPosition(Point, 9), by)));
        Assert.Equal(
            new Load.Couple(Math.Clamp(3 + by, 0, 10), 5, Side.Right),
            LoadOf(Couple, (new InputSpread.LoadPosition(Couple, 9), by)));
    }

    [Fact]
    public void IntensitiesAtTheTwoEnds_ChangeApart() => Assert.Equal(
        new Load.Distributed(4, 6, 180, 375),
        LoadOf(
            Spread,
            (new InputSpread.StartIntensity(Spread, 99), 20),
            (new InputSpread.EndIntensity(Spread, 99), -50),
            (new InputSpread.LoadSize(Spread, 1), 0.5)));

    [Theory]
    [InlineData(-1, 0.5, 3, 6.5)]
    [InlineData(1, -0.5, 5, 5.5)]
    [InlineData(-9, 9, 0, 10)]
    public void Ends_MoveApartWithTheIntensityKept(double from, double to, double left, double right) => Assert.Equal(
        new Load.Distributed(left, right, 100, 300),
        LoadOf(Spread, (new InputSpread.LoadFrom(Spread, 9), from), (new InputSpread.LoadTo(Spread, 9), to)));

    // 400 N on 2 m; on 2.5 m four fifths of the intensity.
    [Fact]
    public void Ends_MoveApartWithTheTotalKept()
    {
        Load.Distributed thinner = new(3.5, 6, 80, 240);

        Assert.Equal(thinner, LoadOf(Spread, (new InputSpread.LoadFrom(Spread, 1, KeepsTotal: true), -0.5)));
        Assert.Equal(
            thinner,
            LoadOf(
                Spread,
                (new InputSpread.LoadTo(Spread, 1, KeepsTotal: true), 0),
                (new InputSpread.LoadFrom(Spread, 1), -0.5)));
    }

    [Theory]
    [InlineData(1, -1)]
    [InlineData(2, -1)]
    public void EndsThatMeet_LeaveNoBeam(double from, double to) => Assert.Null(
        Altered((new InputSpread.LoadFrom(Spread, 9), from), (new InputSpread.LoadTo(Spread, 9), to)));

    [Fact]
    public void WhatIsNotNamed_StaysAsItIs()
    {
        BeamModel altered = Altered((new InputSpread.LoadPosition(Point, 1), 1), (new InputSpread.OfBeam(1), 1))!;

        Assert.Equal(Typed.Cases[0].Loads.Skip(1), altered.Cases[0].Loads.Skip(1));
        Assert.Equal(Typed.Cases[1].Loads.AsEnumerable(), altered.Cases[1].Loads);
        Assert.Equal(Typed.Spans.AsEnumerable(), altered.Spans);
        Assert.Equal(
            new Load.Distributed(1, 9, 25, 35, ActsAlong: true),
            Altered((new InputSpread.LoadSize(new LoadIndex(1, 0), 1), -0.5))!.Cases[1].Loads[0]);
    }

    private static Load LoadOf(LoadIndex index, params (InputSpread Input, double Offset)[] changes) =>
        Altered(changes)!.Cases[index.Case].Loads[index.Load];

    private static BeamModel? Altered(params (InputSpread Input, double Offset)[] changes) => LoadAlterations.Apply(
        Typed, [.. changes.Select(change => change.Input)], [.. changes.Select(change => change.Offset)]);
}
