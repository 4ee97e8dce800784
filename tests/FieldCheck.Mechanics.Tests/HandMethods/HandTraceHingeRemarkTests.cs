using FieldCheck.Mechanics.HandMethods;
using FieldCheck.Mechanics.Model;
using static FieldCheck.Mechanics.Tests.Solving.Beams;

namespace FieldCheck.Mechanics.Tests.HandMethods;

/// <summary>What is said of hinges, and of stretches without enough to hold or to know them.</summary>
public sealed class HandTraceHingeRemarkTests
{
    /// <summary>A load at the hinge is said to be the left part's; one at the right end of the beam stands at no hinge.</summary>
    [Theory]
    [InlineData(4, true)]
    [InlineData(6, false)]
    public void OnlyLoad_StandsAtTheHinge(double at, bool expected)
    {
        HandWorking working = HandAgreement.Work(Beam(
            6, [Support.Pin(0), Support.Roller(3), Support.Roller(6)], [new Load.Point(at, 100)], [4]));

        HandRemark.StandsAtHinge[] said = [.. All<HandRemark.StandsAtHinge>(working)];

        HandActor[] actors = expected ? [new HandActor.OfLoad(0, HandName.OnlyPart)] : [];
        Assert.Equal(actors, said.SelectMany(one => one.Actors));
        Assert.All(said, one => Assert.Equal(0, one.Hinge));
    }

    [Theory]
    [InlineData(Side.Left)]
    [InlineData(Side.Right)]
    public void CoupleOnOneSideOfAHinge_IsSaid(Side side)
    {
        HandWorking working = HandAgreement.Work(Beam(
            6, [Support.Fixed(0), Support.Fixed(6)], [new Load.Couple(3, 10, side)], [3]));

        Assert.Equal(
            [new HandRemark.HingeHasNoMoment(0, IsHeld: false, HasCouples: true)], All<HandRemark.HingeHasNoMoment>(working));
    }

    /// <summary>The stretch ends at the hinge, over a roller: the hinge is none of its inside, and its force is known.</summary>
    [Fact]
    public void StretchThatEndsAtAHingeOverASupport() => Assert.Equal(
        """
        # ThreeMoments SupportPlace0[0] SupportPlace2[4] Degree 1
        BayLength0.1 = SupportPlace1[2] = 2 m
        BayLength1.2 = SupportPlace2[4] - SupportPlace1[2] = 2 m
        - EndsTurnFreely Nodes [0]
        - ThreeMomentRow
        - TurnsAgree Left 0 Node 1 Right 2
        ? = 2 * (BayLength0.1 + BayLength1.2) = 8 m of Coefficient SupportMoment1
        ? = -(BayLength1.2 * LoadCouple1.only[16]) = -32 N1m2 of RightSide
        (1) [8] SupportMoment1 = [-32]
        SupportMoment1 = [-32] / [8] = -4 Nm
        # ReactionsFromMoments
        - EndForces
        MomentShare0.1 = SupportMoment1 / BayLength0.1 = -2 N
        MomentShare1.2 = (LoadCouple1.only[16] - SupportMoment1) / BayLength1.2 = 10 N
        V0 = MomentShare0.1 + LoadForce3.only[7] = 5 N
        V1 = -MomentShare0.1 + MomentShare1.2 = 12 N
        V2 = -MomentShare1.2 + G0 = 60 N
        = Whole
        0: H 0 N V 5 N
        1: V 12 N
        2: V 60 N
        3: V 30 N
        """,
        HandTrace.Of(
            HandAgreement.Work(Beam(
                6,
                [Support.Pin(0), Support.Roller(2), Support.Roller(4), Support.Roller(6)],
                [new Load.Point(5, 100), new Load.Couple(4, 16), new Load.Couple(4, 40, Side.Right), new Load.Point(0, 7)],
                [4])),
            "ThreeMoments", "ReactionsFromMoments", HandTrace.Found));

    /// <summary>Shear deforms one of the spans, and no stiffness is known.</summary>
    [Fact]
    public void ShearWithoutStiffness_IsNotReached() => Assert.Equal(
        """
        = Partial
        0: H 0 N
        1:
        2:
        """,
        HandTrace.Of(
            HandAgreement.Work(Beam(
                [new Span(4, Rigidity, 1e9, 1e6), new Span(4, Rigidity, 1e9)],
                [Support.Pin(0), Support.Roller(4), Support.Roller(8)],
                [new Load.Point(1, 300)],
                hasAbsoluteStiffness: false)),
            "ThreeMoments", HandTrace.Found));

    [Fact]
    public void HingeWithoutAnySupport_CanMove() => Assert.Equal(
        """
        # FreeBody
        - HingeTurns Hinge 0 HingePlace0[3]
        - Count Unknowns [] Hinges 1 Equations 3 DegreeAlong 0 DegreeAcross -3 Degree -3
        # Loads
        LoadForce0.only = 300 N Down of Whole Index 0 at 1
        # Along
        - NothingAlong Supports []
        = CanMove
        """,
        HandTrace.Of(HandAgreement.Work(Beam(6, [], [new Load.Point(1, 300)], [3]))));

    private static IEnumerable<T> All<T>(HandWorking working)
        where T : HandRemark => working.Lines.OfType<HandLine.Says>().Select(line => line.What).OfType<T>();
}
