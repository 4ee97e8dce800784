using FieldCheck.Mechanics.HandMethods;
using FieldCheck.Mechanics.Model;
using static FieldCheck.Mechanics.Tests.Solving.Beams;

namespace FieldCheck.Mechanics.Tests.HandMethods;

/// <summary>
/// Supports that act one way only and would have to act the other way: which one lets go, and what is left. Reactions of two
/// spans from the closed forms of the point load, of what is left from statics, worked apart.
/// </summary>
public sealed class HandTraceRoundTests
{
    private static readonly double Slope = Math.Atan(0.75);

    /// <summary>In the middle of one of two equal spans the far support is pulled by 3/32 of the load.</summary>
    [Fact]
    public void OneIsPulled_ItLetsGo() => Assert.Equal(
        """
        # FreeBody
        - SupportHolds Support 0 SupportPlace0[0] Unknowns [H0, V0]
        - SupportHolds Support 1 SupportPlace1[4] Unknowns [V1]
        - SupportHolds Support 2 SupportPlace2[8] Unknowns [V2]
        - Count Unknowns [H0, V0, V1, V2] Hinges 0 CountsAlong Equations 3 DegreeAlong 0 DegreeAcross 1 Degree 1
        # ReactionsFromMoments
        - EndForces
        - SimpleSpan Left 0 Right 1
        FromBayRight0.only = SupportPlace1[4] - 2 = 2 m
        SimpleLeft0.1 = (LoadForce0.only[1000] * FromBayRight0.only) / BayLength0.1 = 500 N
        SimpleRight0.1 = LoadForce0.only[1000] - SimpleLeft0.1 = 500 N
        MomentShare0.1 = SupportMoment1 / BayLength0.1 = -93.75 N
        MomentShare1.2 = (-SupportMoment1) / BayLength1.2 = 93.75 N
        V0 = SimpleLeft0.1 + MomentShare0.1 = 406.25 N
        V1 = SimpleRight0.1 - MomentShare0.1 + MomentShare1.2 = 687.5 N
        V2 = -MomentShare1.2 = -93.75 N
        # LiftOff Round 1
        - LetsGo Support 2
        - Count Unknowns [H0, V0, V1] Hinges 0 CountsAlong Equations 3 DegreeAlong 0 DegreeAcross 0 Degree 0
        # Part SupportPlace0[0] SupportPlace2[8] IsWhole
        - MomentsAbout SupportPlace0[0] DropsOut [V0]
        ? = LoadForce0.only[1000] * 2 = 2000 Nm Clockwise of OfLoad Index 0 Part -1
        V0 turns None
        V1 turns CounterClockwise by 4 m
        ? = -[2000] = -2000 Nm of Together
        SupportPlace1[4] V1 + [-2000] = 0
        V1 = (-[-2000]) / SupportPlace1[4] = 500 N
        - VerticalSum V0
        V0 = LoadForce0.only[1000] - V1 = 500 N
        = Whole
        0: H 0 N V 500 N
        1: V 500 N
        2: let go
        """,
        Trace(
            [Support.Pin(0), Pushes(Support.Roller(4)), Pushes(Support.Roller(8))],
            [new Load.Point(2, 1000)],
            "FreeBody", "ReactionsFromMoments", "LiftOff", "Part", HandTrace.Found));

    /// <summary>It would push 11/16 of the load.</summary>
    [Fact]
    public void OneThatOnlyHoldsDown_LetsGoWhereItWouldPush() => Assert.Equal(
        """
        # ReactionsFromMoments
        - EndForces
        - SimpleSpan Left 0 Right 1
        FromBayRight0.only = SupportPlace1[4] - 2 = 2 m
        SimpleLeft0.1 = (LoadForce0.only[1000] * FromBayRight0.only) / BayLength0.1 = 500 N
        SimpleRight0.1 = LoadForce0.only[1000] - SimpleLeft0.1 = 500 N
        MomentShare0.1 = SupportMoment1 / BayLength0.1 = -93.75 N
        MomentShare1.2 = (-SupportMoment1) / BayLength1.2 = 93.75 N
        V0 = SimpleLeft0.1 + MomentShare0.1 = 406.25 N
        V1 = SimpleRight0.1 - MomentShare0.1 + MomentShare1.2 = 687.5 N
        V2 = -MomentShare1.2 = -93.75 N
        # LiftOff Round 1
        - LetsGo Support 1
        - Count Unknowns [H0, V0, V2] Hinges 0 CountsAlong Equations 3 DegreeAlong 0 DegreeAcross 0 Degree 0
        = Whole
        0: H 0 N V 750 N
        1: let go
        2: V 250 N
        """,
        Trace(
            [Support.Pin(0), Support.Roller(4) with { Action = SupportAction.HoldsDownOnly }, Support.Roller(8)],
            [new Load.Point(2, 1000)],
            "ReactionsFromMoments", "LiftOff", HandTrace.Found));

    /// <summary>Both ends are pulled, the left one more as the load is nearer to it; the other one goes in the second round.</summary>
    [Fact]
    public void TwoArePulled_TheWorseGoesFirst() => Assert.Equal(
        """
        # LiftOff Round 1
        - LetsGo Support 0 IsWorst
        - Count Unknowns [H1, V1, V2, V3] Hinges 0 CountsAlong Equations 3 DegreeAlong 0 DegreeAcross 1 Degree 1
        # LiftOff Round 2
        - LetsGo Support 3
        - Count Unknowns [H1, V1, V2] Hinges 0 CountsAlong Equations 3 DegreeAlong 0 DegreeAcross 0 Degree 0
        # Part SupportPlace0[0] SupportPlace3[8] IsWhole
        - MomentsAbout SupportPlace1[2] DropsOut [V1]
        ? = LoadForce0.only[1000] * (3 - SupportPlace1[2]) = 1000 Nm Clockwise of OfLoad Index 0 Part -1
        V1 turns None
        V2 turns CounterClockwise by SupportPlace2[6] - SupportPlace1[2] = 4 m
        ? = -[1000] = -1000 Nm of Together
        [4] V2 + [-1000] = 0
        V2 = (-[-1000]) / [4] = 250 N
        - VerticalSum V1
        V1 = LoadForce0.only[1000] - V2 = 750 N
        = Whole
        0: let go
        1: H 0 N V 750 N
        2: V 250 N
        3: let go
        """,
        Trace(
            [Pushes(Support.Roller(0)), Support.Pin(2), Support.Roller(6), Pushes(Support.Roller(8))],
            [new Load.Point(3, 1000)],
            "LiftOff", "Part", HandTrace.Found));

    /// <summary>Of two alike the left one goes; what is left can turn.</summary>
    [Fact]
    public void BothArePulledAlike_TheBeamTips() => Assert.Equal(
        """
        # FreeBody
        - SupportHolds Support 0 SupportPlace0[0] Unknowns [H0, V0]
        - SupportHolds Support 1 SupportPlace1[8] Unknowns [V1]
        - Count Unknowns [H0, V0, V1] Hinges 0 CountsAlong Equations 3 DegreeAlong 0 DegreeAcross 0 Degree 0
        # Part SupportPlace0[0] SupportPlace1[8] IsWhole
        - MomentsAbout SupportPlace0[0] DropsOut [V0]
        ? = LoadForce0.only[1000] * 4 = 4000 Nm CounterClockwise of OfLoad Index 0 Part -1
        V0 turns None
        V1 turns CounterClockwise by 8 m
        ? = [4000] = 4000 Nm of Together
        SupportPlace1[8] V1 + [4000] = 0
        V1 = (-[4000]) / SupportPlace1[8] = -500 N
        - VerticalSum V0
        V0 = -V1 - LoadForce0.only[1000] = -500 N
        # LiftOff Round 1
        - LetsGo Support 0 IsWorst
        - Count Unknowns [V1] Hinges 0 Equations 2 DegreeAlong 0 DegreeAcross -1 Degree -1
        = CanMove
        0: let go
        1:
        """,
        Trace(
            [Pushes(Support.Pin(0)), Pushes(Support.Roller(8))],
            [new Load.Point(4, -1000)],
            "FreeBody", "Part", "LiftOff", HandTrace.Found));

    /// <summary>With the pin goes what holds along: with a load along the beam can slide, without one it stands.</summary>
    [Theory]
    [InlineData(100, """
        # LiftOff Round 1
        - LetsGo Support 0
        - Count Unknowns [V1, V2] Hinges 0 CountsAlong Equations 3 DegreeAlong -1 DegreeAcross 0 Degree -1
        = CanMove
        0: let go
        1:
        2:
        """)]
    [InlineData(0, """
        # LiftOff Round 1
        - LetsGo Support 0
        - Count Unknowns [V1, V2] Hinges 0 Equations 2 DegreeAlong 0 DegreeAcross 0 Degree 0
        = Whole
        0: let go
        1: V 500 N
        2: V 500 N
        """)]
    public void ThePinIsPulled_WhatHoldsAlongGoesWithIt(double along, string expected) => Assert.Equal(
        expected,
        Trace(
            [Pushes(Support.Pin(0)), Support.Roller(4), Support.Roller(8)],
            [new Load.Point(6, 1000, along)],
            "LiftOff", HandTrace.Found));

    /// <summary>Square to its surface the roller is pulled by 450 / 0.8, more than the 550 of the pin.</summary>
    [Fact]
    public void SlopedRoller_IsMeasuredBySquareToItsSurface() => Assert.Equal(
        """
        # Slope Support 1
        - PushesSquare Support 1 RisesRight
        SurfaceSine1 = sin(Surface1[0.643501]) = 0.6
        SurfaceCosine1 = cos(Surface1[0.643501]) = 0.8
        N1 = V1 / SurfaceCosine1 = -562.5 N
        H1 = -(N1 * SurfaceSine1) = 337.5 N
        # LiftOff Round 1
        - LetsGo Support 1 IsWorst
        - Count Unknowns [H0, V0] Hinges 0 CountsAlong Equations 3 DegreeAlong 0 DegreeAcross -1 Degree -1
        = CanMove
        0:
        1: let go
        """,
        Trace(
            [Pushes(Support.Pin(0)), Pushes(Support.Roller(8, Slope))],
            [new Load.Point(3.6, -1000)],
            "Slope", "LiftOff", HandTrace.Found));

    /// <summary>What is given is not tried: the far support is pulled and stays, or is out from the start.</summary>
    [Theory]
    [InlineData(false, """
        # FreeBody
        - SupportHolds Support 0 SupportPlace0[0] Unknowns [H0, V0]
        - SupportHolds Support 1 SupportPlace1[4] Unknowns [V1]
        - SupportHolds Support 2 SupportPlace2[8] Unknowns [V2]
        - Count Unknowns [H0, V0, V1, V2] Hinges 0 CountsAlong Equations 3 DegreeAlong 0 DegreeAcross 1 Degree 1
        = Whole
        0: H 0 N V 406.25 N
        1: V 687.5 N
        2: V -93.75 N
        """)]
    [InlineData(true, """
        # FreeBody
        - SupportHolds Support 0 SupportPlace0[0] Unknowns [H0, V0]
        - SupportHolds Support 1 SupportPlace1[4] Unknowns [V1]
        - SupportHolds Support 2 SupportPlace2[8] Unknowns [V2]
        - Count Unknowns [H0, V0, V1] Hinges 0 CountsAlong Equations 3 DegreeAlong 0 DegreeAcross 0 Degree 0
        = Whole
        0: H 0 N V 500 N
        1: V 500 N
        2: let go
        """)]
    public void GivenSupports_AreNotTried(bool isLifted, string expected)
    {
        BeamModel model = Beam(8, [Support.Pin(0), Support.Roller(4), Pushes(Support.Roller(8))], [new Load.Point(2, 1000)]);

        HandWorking working = HandWorking.Of(model, [1], lifted: [false, false, isLifted]);

        Assert.Equal(expected, HandTrace.Of(working, "FreeBody", "LiftOff", HandTrace.Found));
    }

    /// <summary>The two loads turn about the roller alike but for rounding, which is no pull and none of several.</summary>
    [Fact]
    public void PullOfRounding_IsNone()
    {
        Load[] loads = [new Load.Point(1.3, 100), new Load.Point(2.2, 350)];
        Support[] supports = [Pushes(Support.Pin(0)), Support.Roller(2)];

        HandWorking working = HandAgreement.Work(Beam(3, supports, loads));
        HandWorking pulled = HandAgreement.Work(Beam(
            6, [.. supports, Pushes(Support.Roller(6))], [.. loads, new Load.Point(6, -500)], [3]));

        Assert.InRange(working.Reactions[0].Vertical!.Value, -1e-12, -1e-14);
        Assert.False(working.Reactions[0].HasLetGo);
        Assert.Contains(new HandLine.Says(new HandRemark.LetsGo(2, IsWorst: false)), pulled.Lines);
    }

    /// <summary>Couples alone: three of them leave rounding behind the hinge, beside the reactions of 20 before it.</summary>
    [Fact]
    public void PullOfRoundingFromCouples_IsNone()
    {
        HandWorking working = HandAgreement.Work(Beam(
            6,
            [Support.Pin(0), Support.Roller(3), Pushes(Support.Roller(6))],
            [new Load.Couple(1, 60), new Load.Couple(4.5, 0.1), new Load.Couple(5, 0.2), new Load.Couple(5.5, -0.3)],
            [4]));

        Assert.InRange(working.Reactions[2].Vertical!.Value, -1e-15, -1e-18);
        Assert.All(working.Reactions, one => Assert.False(one.HasLetGo));
    }

    /// <summary>Statics finds that the right end is pulled; of the rest nothing is known, so nothing lets go.</summary>
    [Fact]
    public void PulledWhereTheRestIsNotReached_LetsNothingGo()
    {
        BeamModel model = Beam(
            [new Span(8, Rigidity, 1e9)],
            [
                Support.Pin(0), Support.Roller(3) with { Settlement = 0.01 }, Support.Roller(6),
                Pushes(Support.Roller(8)),
            ],
            [new Load.Point(8, -300)],
            [7],
            hasAbsoluteStiffness: false);

        Assert.Equal(
            """
            = Partial
            0: H 0 N
            1:
            2:
            3: V -300 N
            """,
            HandTrace.Of(HandAgreement.Work(model), "LiftOff", HandTrace.Found));
    }

    private static Support Pushes(Support support) => support with { Action = SupportAction.PushesOnly };

    private static string Trace(Support[] supports, Load[] loads, params string[] steps) =>
        HandTrace.Of(HandAgreement.Work(Beam(8, supports, loads)), steps);
}
