using FieldCheck.Mechanics.Model;
using static FieldCheck.Mechanics.Tests.Solving.Beams;

namespace FieldCheck.Mechanics.Tests.HandMethods;

/// <summary>
/// Loads at one place as they are taken: what is said of each, its size, its sense. A force that leans 3 in 4 was worked apart as its
/// parts across and along.
/// </summary>
public sealed class HandTraceLoadTests
{
    private static readonly Support[] Simple = [Support.Pin(0), Support.Roller(6)];

    [Fact]
    public void PointsAndCouples_FactorsScaleThem_ANegativeOneTurnsThem_NothingLeavesThemOut()
    {
        BeamModel plain = Beam(6, Simple, []);
        BeamModel model = new(
            plain.Spans,
            plain.Supports,
            [],
            [
                new LoadCase("doubled", [
                    new Load.Point(1, 3e3), new Load.Point(2, -1e3), new Load.Point(2, 0, 500), new Load.Point(4, 0, 0),
                    new Load.Point(3, 300, 400), new Load.Point(3, -300, -400), new Load.Couple(1, 600), new Load.Couple(2, -600),
                    new Load.Couple(3, 0)]),
                new LoadCase("turned", [new Load.Point(6, 3e3), new Load.Couple(4, 100), new Load.Point(5, 30, 40)]),
                new LoadCase("left out", [new Load.Point(1, 3e3), new Load.Couple(4, 100)]),
                new LoadCase("half turned", [new Load.Point(5, 0, 7e3)]),
            ],
            [new Combination("all", CombinationBasis.Service, [2, -1, 0, -0.5])]);

        string text = HandTrace.Of(HandAgreement.Work(model), "Loads");

        Assert.Equal(
            """
            # Loads
            LoadForce0.only = 2 * 3000 = 6000 N Down of Whole Index 0 at 1
            LoadForce1.only = 2 * 1000 = 2000 N Up of Whole Index 1 at 2
            LoadAlong2.only = 2 * 500 = 1000 N Right of Whole Index 2 at 2
            - LoadLeans Load 4 500 0.927295 Right
            LoadForce4.only = 2 * 500 * cos(0.927295) = 600 N Down of Whole Index 4 at 3
            LoadAlong4.only = 2 * 500 * sin(0.927295) = 800 N Right of Whole Index 4 at 3
            - LoadLeans Load 5 500 0.927295 Left
            LoadForce5.only = 2 * 500 * cos(0.927295) = 600 N Up of Whole Index 5 at 3
            LoadAlong5.only = 2 * 500 * sin(0.927295) = 800 N Left of Whole Index 5 at 3
            LoadCouple6.only = 2 * 600 = 1200 Nm CounterClockwise of Whole Index 6 at 1
            LoadCouple7.only = 2 * 600 = 1200 Nm Clockwise of Whole Index 7 at 2
            - LoadTurned Load 9
            LoadForce9.only = 3000 N Up of Whole Index 9 at SupportPlace1[6]
            - LoadTurned Load 10
            LoadCouple10.only = 100 Nm Clockwise of Whole Index 10 at 4
            - LoadTurned Load 11
            - LoadLeans Load 11 50 0.927295 Left
            LoadForce11.only = 50 * cos(0.927295) = 30 N Up of Whole Index 11 at 5
            LoadAlong11.only = 50 * sin(0.927295) = 40 N Left of Whole Index 11 at 5
            - LoadLeftOut Load 12
            - LoadLeftOut Load 13
            - LoadTurned Load 14
            LoadAlong14.only = 0.5 * 7000 = 3500 N Left of Whole Index 14 at 5
            """,
            text);
    }

    [Fact]
    public void NoLoad_IsSaid_ALoadOfNothingAsWell()
    {
        string none = HandTrace.Of(HandAgreement.Work(Beam(6, Simple, [])), "Loads");
        string nothing = HandTrace.Of(HandAgreement.Work(Beam(6, Simple, [new Load.Distributed(1, 3, 0, 0)])), "Loads");

        Assert.Equal(
            """
            # Loads
            - NoLoads
            """,
            none);
        Assert.Equal(
            """
            # Loads
            - LoadIs Load 0 1 3
            - NoLoads
            """,
            nothing);
    }

    [Fact]
    public void CoupleAtAHinge_NamesThePartThatItTurns()
    {
        string text = HandTrace.Of(
            HandAgreement.Work(Beam(
                6,
                [Support.Fixed(0), Support.Roller(6)],
                [new Load.Couple(2, 300), new Load.Couple(2, -50, Side.Right), new Load.Couple(1, 40, Side.Right)],
                [2])),
            "Loads");

        Assert.Equal(
            """
            # Loads
            LoadCouple0.only = 300 Nm CounterClockwise of Whole Index 0 at HingePlace0[2]
            - TurnsSide Load 0 Left
            LoadCouple1.only = 50 Nm Clockwise of Whole Index 1 at HingePlace0[2]
            - TurnsSide Load 1 Right
            LoadCouple2.only = 40 Nm CounterClockwise of Whole Index 2 at 1
            """,
            text);
    }
}
