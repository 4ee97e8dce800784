using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;
using static FieldCheck.Mechanics.Tests.Solving.Beams;

namespace FieldCheck.Mechanics.Tests.Solving;

/// <summary>What stands on each piece, as the sum of what each load has there.</summary>
public sealed class LoadGridTests
{
    private const double L = 10;

    private static readonly Load.Distributed[] Spread =
    [
        new(1, 7, 100, 400, true),
        new(2, 8, 0, -600),
        new(3, 9, 50, 50),
        new(3, 5, 80, 20, true),
        new(4, 10, 300, 120),
    ];

    [Theory]
    [InlineData(1)]
    [InlineData(-1.5)]
    public void Fill_OverlappingLoads_AddUpOnEachPiece(double factor)
    {
        BeamModel model = Beam(L, [Support.Pin(0), Support.Roller(L)], [.. Spread]);
        BeamGrid grid = Laid(model);
        LoadGrid loads = new();

        loads.Fill(grid, model, [factor]);

        for (int piece = 0; piece < grid.PieceCount; piece++)
        {
            LineLoad on = loads.On(piece);
            double at = grid.PointPosition(piece);
            Load.Distributed[] over = [.. Spread.Where(load => load.From <= at && at < load.To)];
            Assert.Equal(over.Length, on.Standing);
            Assert.Equal(-factor * Sum(over, false, load => Intensity(load, at)), (double)on.Up, 1e-10);
            Assert.Equal(-factor * Sum(over, false, Change), (double)on.UpChange, 1e-10);
            Assert.Equal(factor * Sum(over, true, load => Intensity(load, at)), (double)on.Right, 1e-10);
            Assert.Equal(factor * Sum(over, true, Change), (double)on.RightChange, 1e-10);
        }
    }

    [Fact]
    public void Fill_Again_LeavesNothingOfTheLoadsBefore()
    {
        BeamModel model = new(
            [new Span(L, Rigidity, 1e9)],
            [Support.Pin(0), Support.Roller(L)],
            [],
            [
                new LoadCase("all", [.. Spread, new Load.Point(6, 7, 8), new Load.Couple(9, 5)]),
                new LoadCase("one", [Uniform(2, 3, 10)]),
            ],
            []);
        BeamGrid grid = Laid(model);
        LoadGrid loads = new();
        loads.Fill(grid, model, [1, 0]);

        loads.Fill(grid, model, [0, 1]);

        Assert.False(loads.HasAlong);
        for (int piece = 0; piece < grid.PieceCount; piece++)
        {
            LineLoad on = loads.On(piece);
            Assert.Equal(grid.PointPosition(piece) == 2 ? 1 : 0, on.Standing);
            Assert.Equal(grid.PointPosition(piece) == 2 ? -10 : 0, (double)on.Up);
            Assert.True(on.Right.IsZero && on.RightChange.IsZero && on.UpChange.IsZero);
            Assert.False(loads.At(piece).IsLoaded);
        }
    }

    public static TheoryData<Load[], bool> Along() => new()
    {
        { [new Load.Point(2, 5, 3)], true },
        { [new Load.Point(2, 5, 3), new Load.Point(4, 0, 3)], true },
        { [new Load.Point(2, 5)], false },
        { [new Load.Distributed(1, 3, 4, 0, true)], true },
        { [new Load.Distributed(1, 3, 0, 4, true)], true },
        { [new Load.Distributed(1, 3, 4, 4, true), new Load.Distributed(3, 5, 4, 4, true)], true },
        { [new Load.Distributed(1, 3, 4, 4, true), new Load.Distributed(3, 5, 0, 0, true)], true },
        { [new Load.Distributed(1, 3, 0, 0, true)], false },
        { [new Load.Distributed(1, 3, 4, 4), new Load.Couple(2, 7)], false },
    };

    [Theory]
    [MemberData(nameof(Along))]
    public void HasAlong_TellsWhetherAnyLoadActsAlong(Load[] all, bool expected)
    {
        BeamModel model = Beam(L, [Support.Pin(0), Support.Roller(L)], all);
        LoadGrid loads = new();

        loads.Fill(Laid(model), model, [2]);

        Assert.Equal(expected, loads.HasAlong);
    }

    [Fact]
    public void IsLoaded_CountsWhatStandsInsideAnElement_NotAtItsEnds()
    {
        // Nodes at 0, 4, 7 and 10 m; points besides at 5 and 8 m.
        BeamModel model = Beam(
            L,
            [Support.Pin(0), Support.Roller(4), Support.Roller(7), Support.Roller(L)],
            [new Load.Point(4, 5), new Load.Point(5, 5), new Load.Point(7, 5), new Load.Couple(8, 5)]);
        BeamGrid grid = Laid(model);
        LoadGrid loads = new();
        loads.Fill(grid, model, [1]);

        Assert.Equal([0, 4, 5, 7, 8, 10], Enumerable.Range(0, grid.PointCount).Select(grid.PointPosition));
        Assert.False(loads.IsLoaded(0, 1));
        Assert.True(loads.IsLoaded(1, 3));
        Assert.False(loads.IsLoaded(2, 3));
        Assert.True(loads.IsLoaded(3, 5));
        Assert.False(loads.IsLoaded(4, 5));
    }

    private static BeamGrid Laid(BeamModel model)
    {
        BeamGrid grid = new();
        grid.Lay(model);
        return grid;
    }

    private static double Sum(Load.Distributed[] loads, bool along, Func<Load.Distributed, double> of) =>
        loads.Where(load => load.ActsAlong == along).Sum(of);

    private static double Change(Load.Distributed load) =>
        (load.EndIntensity - load.StartIntensity) / (load.To - load.From);

    private static double Intensity(Load.Distributed load, double at) =>
        load.StartIntensity + Change(load) * (at - load.From);
}
