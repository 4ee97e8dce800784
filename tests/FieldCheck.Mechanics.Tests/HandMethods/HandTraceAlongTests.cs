using FieldCheck.Mechanics.Model;
using static FieldCheck.Mechanics.Tests.Solving.Beams;

namespace FieldCheck.Mechanics.Tests.HandMethods;

/// <summary>
/// What holds along. Between two pins a force along goes to each in inverse ratio of the give, length over rigidity, on its sides;
/// worked apart so.
/// </summary>
public sealed class HandTraceAlongTests
{
    [Fact]
    public void OnePin_HoldsAllOfIt() => Assert.Equal(
        """
        # FreeBody
        - SupportHolds Support 0 SupportPlace0[0] Unknowns [V0]
        - SupportHolds Support 1 SupportPlace1[6] Unknowns [H1, V1]
        - Count Unknowns [V0, H1, V1] Hinges 0 CountsAlong Equations 3 DegreeAlong 0 DegreeAcross 0 Degree 0
        # Along
        - HorizontalSum H1
        H1 = -LoadAlong0.only[500] + LoadAlong1.only[300] - LoadAlong2.only = -800 N
        # Proof SupportPlace1[6]
        - MomentsClose SupportPlace1[6]
        - PassesThrough Actors [Named V1]
        ? = V0 * SupportPlace1[6] = 0 Nm Clockwise of Named V0
        ? closes -[0] = 0 Nm of 0
        - ForcesClose
        ? closes V0 + V1 = 0 N of 0
        - ForcesClose IsAlong
        ? closes H1 + LoadAlong0.only[500] - LoadAlong1.only[300] + LoadAlong2.only = 0 N of 2200
        # AlongTheBeam
        - Jumps SupportPlace0[0] HasForces
        ShearRight0 = ShearLeft0 + V0 = 0 N
        - Stretch SupportPlace0[0] SupportPlace1[6] Nothing IsFirst
        SectionMomentLeft1 = SectionMomentLeft0 + ShearRight0 * SupportPlace1[6] = 0 Nm
        - Jumps SupportPlace1[6] HasForces
        ShearRight1 = ShearRight0 + V1 = 0 N
        - EndsWithNothing
        ShearRight1 closes ShearRight1 = 0 N of 0
        SectionMomentLeft1 closes SectionMomentLeft1 = 0 Nm of 0
        | 0: V 0|0 M 0
        | 6: V 0|0 M 0
        - AxialForces
        AxialRight0 = -LoadAlong0.only[500] = -500 N at 2
        AxialRight1 = AxialRight0 + LoadAlong1.only[300] = -200 N at 4
        AxialRight2 = AxialRight1 - H1 - LoadAlong2.only = 0 N at SupportPlace1[6]
        = Whole
        0: V 0 N
        1: H -800 N V 0 N
        """,
        Trace(
            6,
            [Support.Roller(0), Support.Pin(6)],
            new Load.Point(2, 0, 500), new Load.Point(4, 0, -300), new Load.Distributed(0, 6, 100, 100, ActsAlong: true)));

    [Fact]
    public void NoLoadAlong_EachPinIsSaidToHoldNothing() => Assert.Equal(
        """
        # FreeBody
        - SupportHolds Support 0 SupportPlace0[0] Unknowns [H0, V0]
        - SupportHolds Support 1 SupportPlace1[6] Unknowns [H1, V1]
        - Count Unknowns [H0, V0, H1, V1] Hinges 0 CountsAlong Equations 3 DegreeAlong 1 DegreeAcross 0 Degree 1
        # Along
        - NothingAlong Supports [0, 1]
        H0 = 0 N
        H1 = 0 N
        = Whole
        0: H 0 N V 600 N
        1: H 0 N V 300 N
        """,
        HandTrace.Of(
            HandAgreement.Work(Beam(6, [Support.Pin(0), Support.Pin(6)], [new Load.Point(2, 900)])),
            "FreeBody", "Along", HandTrace.Found));

    [Fact]
    public void TwoPins_ShareByTheOppositeLengths() => Assert.Equal(
        """
        # FreeBody
        - SupportHolds Support 0 SupportPlace0[0] Unknowns [H0, V0]
        - SupportHolds Support 1 SupportPlace1[6] Unknowns [H1, V1]
        - Count Unknowns [H0, V0, H1, V1] Hinges 0 CountsAlong Equations 3 DegreeAlong 1 DegreeAcross 0 Degree 1
        # Along
        - NoStretchBetween From 0 To 1 IsEven
        ? = LoadAlong0.only[600] * (SupportPlace1[6] - 2) = 2400 Nm of OfLoad Index 0 Part -1
        AxialBetween0 = ([2400]) / SupportPlace1[6] = 400 N
        - HoldsTheChange
        H0 = -AxialBetween0 = -400 N
        H1 = AxialBetween0 - LoadAlong0.only[600] - LoadAlong1.only[70] = -270 N
        # Proof SupportPlace1[6]
        - MomentsClose SupportPlace1[6]
        - PassesThrough Actors [Named V1]
        ? = V0 * SupportPlace1[6] = 0 Nm Clockwise of Named V0
        ? closes -[0] = 0 Nm of 0
        - ForcesClose
        ? closes V0 + V1 = 0 N of 0
        - ForcesClose IsAlong
        ? closes H0 + H1 + LoadAlong0.only[600] + LoadAlong1.only[70] = 0 N of 1340
        # AlongTheBeam
        - Jumps SupportPlace0[0] HasForces
        ShearRight0 = ShearLeft0 + V0 = 0 N
        - Stretch SupportPlace0[0] SupportPlace1[6] Nothing IsFirst
        SectionMomentLeft1 = SectionMomentLeft0 + ShearRight0 * SupportPlace1[6] = 0 Nm
        - Jumps SupportPlace1[6] HasForces
        ShearRight1 = ShearRight0 + V1 = 0 N
        - EndsWithNothing
        ShearRight1 closes ShearRight1 = 0 N of 0
        SectionMomentLeft1 closes SectionMomentLeft1 = 0 Nm of 0
        | 0: V 0|0 M 0
        | 6: V 0|0 M 0
        - AxialForces
        AxialRight0 = -H0 = 400 N at SupportPlace0[0]
        AxialRight1 = AxialRight0 - LoadAlong0.only[600] = -200 N at 2
        AxialRight2 = AxialRight1 - H1 - LoadAlong1.only[70] = 0 N at SupportPlace1[6]
        = Whole
        0: H -400 N V 0 N
        1: H -270 N V 0 N
        """,
        Trace(6, [Support.Pin(0), Support.Pin(6)], new Load.Point(2, 0, 600), new Load.Point(6, 0, 70)));

    /// <summary>Half as stiff on the left: lengths count by the ratio of rigidities, neighbours of one rigidity as one.</summary>
    [Fact]
    public void TwoPins_UnevenRigidity_ShareByReducedLengths() => Assert.Equal(
        """
        # Along
        - NoStretchBetween From 0 To 1
        PortionRigidity0 = 1E+09 N
        PortionRigidity0.1 = 2E+09 N
        PortionRatio0.1 = PortionRigidity0[1E+09] / PortionRigidity0.1[2E+09] = 0.5
        ? = LoadAlong0.only[900] * ((3 - 2) + (SupportPlace1[6] - 3) * PortionRatio0.1) = 2250 Nm of OfLoad Index 0 Part -1
        ? = (-LoadAlong1.only[450]) * (SupportPlace1[6] - 5) * PortionRatio0.1 = -225 Nm of OfLoad Index 1 Part -1
        AxialBetween0 = ([2250] + [-225]) / (3 + (SupportPlace1[6] - 3) * PortionRatio0.1) = 450 N
        - HoldsTheChange
        H0 = -AxialBetween0 = -450 N
        H1 = AxialBetween0 - LoadAlong0.only[900] + LoadAlong1.only[450] = 0 N
        = Whole
        0: H -450 N V 0 N
        1: H 0 N V 0 N
        """,
        HandTrace.Of(
            HandAgreement.Work(Beam(
                [new Span(1, Rigidity, 1e9), new Span(2, Rigidity, 1e9), new Span(3, Rigidity, 2e9), new Span(2, Rigidity, 4e9)],
                [Support.Pin(0), Support.Pin(6)],
                [new Load.Point(2, 0, 900), new Load.Point(5, 0, -450)])),
            "Along", HandTrace.Found));

    /// <summary>Loads at and beyond pins go to the nearest one; a bay without a load pulls at neither of its pins.</summary>
    [Fact]
    public void ThreePins_LoadsBeyondAndAtThem() => Assert.Equal(
        """
        # FreeBody
        - SupportHolds Support 0 SupportPlace0[1] Unknowns [H0, V0]
        - SupportHolds Support 1 SupportPlace1[4] Unknowns [H1, V1]
        - SupportHolds Support 2 SupportPlace2[7] Unknowns [H2, V2]
        - HingeTurns Hinge 0 HingePlace0[3]
        - Count Unknowns [H0, V0, H1, V1, H2, V2] Hinges 1 CountsAlong Equations 4 DegreeAlong 2 DegreeAcross 0 Degree 2
        # Along
        - NoStretchBetween From 0 To 1 IsEven
        AxialBetween0 = 0 N
        - NoStretchBetween From 1 To 2 IsEven
        ? = LoadAlong2.only[300] * (SupportPlace2[7] - 5) = 600 Nm of OfLoad Index 2 Part -1
        AxialBetween1 = ([600]) / (SupportPlace2[7] - SupportPlace1[4]) = 200 N
        - HoldsTheChange
        H0 = -LoadAlong0.only[100] - AxialBetween0 = -100 N
        H1 = AxialBetween0 - AxialBetween1 - LoadAlong1.only[200] = -400 N
        H2 = AxialBetween1 - LoadAlong2.only[300] - LoadAlong3.only[400] = -500 N
        # Proof SupportPlace2[7]
        - MomentsClose SupportPlace2[7]
        - PassesThrough Actors [Named V2]
        ? = V0 * (SupportPlace2[7] - SupportPlace0[1]) = 0 Nm Clockwise of Named V0
        ? = V1 * (SupportPlace2[7] - SupportPlace1[4]) = 0 Nm Clockwise of Named V1
        ? closes -[0] - [0] = 0 Nm of 0
        - ForcesClose
        ? closes V0 + V1 + V2 = 0 N of 0
        - ForcesClose IsAlong
        ? closes H0 + H1 + H2 + LoadAlong0.only[100] + LoadAlong1.only[200] + LoadAlong2.only[300] + LoadAlong3.only[400] = 0 N of 2000
        # AlongTheBeam
        - Stretch 0 SupportPlace0[1] Nothing IsFirst
        SectionMomentLeft1 = SectionMomentLeft0 + ShearLeft0 * SupportPlace0[1] = 0 Nm
        - Jumps SupportPlace0[1] HasForces
        ShearRight1 = ShearLeft0 + V0 = 0 N
        - Stretch SupportPlace0[1] HingePlace0[3] Nothing
        StretchLength2 = HingePlace0[3] - SupportPlace0[1] = 2 m
        SectionMomentLeft2 = SectionMomentLeft1 + ShearRight1 * StretchLength2 = 0 Nm
        - HingeIsFree Hinge 0
        SectionMomentLeft2 closes SectionMomentLeft2 = 0 Nm of 0
        - Stretch HingePlace0[3] SupportPlace1[4] Nothing
        StretchLength3 = SupportPlace1[4] - HingePlace0[3] = 1 m
        SectionMomentLeft3 = SectionMomentLeft2 + ShearRight1 * StretchLength3 = 0 Nm
        - Jumps SupportPlace1[4] HasForces
        ShearRight3 = ShearRight1 + V1 = 0 N
        - Stretch SupportPlace1[4] SupportPlace2[7] Nothing
        StretchLength4 = SupportPlace2[7] - SupportPlace1[4] = 3 m
        SectionMomentLeft4 = SectionMomentLeft3 + ShearRight3 * StretchLength4 = 0 Nm
        - Jumps SupportPlace2[7] HasForces
        ShearRight4 = ShearRight3 + V2 = 0 N
        - Stretch SupportPlace2[7] 8 Nothing
        StretchLength5 = 8 - SupportPlace2[7] = 1 m
        SectionMomentLeft5 = SectionMomentLeft4 + ShearRight4 * StretchLength5 = 0 Nm
        - EndsWithNothing
        ShearRight4 closes ShearRight4 = 0 N of 0
        SectionMomentLeft5 closes SectionMomentLeft5 = 0 Nm of 0
        | 0: V 0 M 0
        | 1: V 0|0 M 0
        | 3: V 0 M 0
        | 4: V 0|0 M 0
        | 7: V 0|0 M 0
        | 8: V 0 M 0
        - AxialForces
        AxialRight0 = -LoadAlong0.only[100] = -100 N at 0
        AxialRight1 = AxialRight0 - H0 = 0 N at SupportPlace0[1]
        AxialRight2 = AxialRight1 - H1 - LoadAlong1.only[200] = 200 N at SupportPlace1[4]
        AxialRight3 = AxialRight2 - LoadAlong2.only[300] = -100 N at 5
        AxialRight4 = AxialRight3 - H2 = 400 N at SupportPlace2[7]
        AxialRight5 = AxialRight4 - LoadAlong3.only[400] = 0 N at 8
        = Whole
        0: H -100 N V 0 N
        1: H -400 N V 0 N
        2: H -500 N V 0 N
        """,
        HandTrace.Of(
            HandAgreement.Work(Beam(
                8,
                [Support.Pin(1), Support.Pin(4), Support.Pin(7)],
                [
                    new Load.Point(0, 0, 100), new Load.Point(4, 0, 200), new Load.Point(5, 0, 300), new Load.Point(8, 0, 400),
                ],
                [3])),
            "FreeBody", "Along", "Proof", "AlongTheBeam", HandTrace.Found));

    /// <summary>Even between the pins, whatever lies beyond them.</summary>
    [Fact]
    public void RigidityBeyondThePins_DoesNotCount() => Assert.Equal(
        """
        # Along
        - NoStretchBetween From 0 To 1 IsEven
        ? = LoadAlong0.only[400] * (SupportPlace1[6] - 3) = 1200 Nm of OfLoad Index 0 Part -1
        AxialBetween0 = ([1200]) / (SupportPlace1[6] - SupportPlace0[2]) = 300 N
        - HoldsTheChange
        H0 = -AxialBetween0 = -300 N
        H1 = AxialBetween0 - LoadAlong0.only[400] = -100 N
        """,
        HandTrace.Of(
            HandAgreement.Work(Beam(
                [new Span(2, Rigidity, 4e9), new Span(4, Rigidity, 1e9), new Span(2, Rigidity, 2e9)],
                [Support.Pin(2), Support.Pin(6)],
                [new Load.Point(3, 0, 400)])),
            "Along"));

    /// <summary>A force where the rigidity changes: the portion that ends there has no length to count.</summary>
    [Fact]
    public void ForceWhereTheRigidityChanges_CountsWhatIsBeyond() => Assert.Equal(
        """
        # Along
        - NoStretchBetween From 0 To 1
        PortionRigidity0 = 1E+09 N
        PortionRigidity0.1 = 2E+09 N
        PortionRatio0.1 = PortionRigidity0[1E+09] / PortionRigidity0.1[2E+09] = 0.5
        ? = LoadAlong0.only[900] * (SupportPlace1[6] - 3) * PortionRatio0.1 = 1350 Nm of OfLoad Index 0 Part -1
        AxialBetween0 = ([1350]) / (3 + (SupportPlace1[6] - 3) * PortionRatio0.1) = 300 N
        - HoldsTheChange
        H0 = -AxialBetween0 = -300 N
        H1 = AxialBetween0 - LoadAlong0.only[900] = -600 N
        = Whole
        0: H -300 N V 0 N
        1: H -600 N V 0 N
        """,
        HandTrace.Of(
            HandAgreement.Work(Beam(
                [new Span(3, Rigidity, 1e9), new Span(3, Rigidity, 2e9)],
                [Support.Pin(0), Support.Pin(6)],
                [new Load.Point(3, 0, 900)])),
            "Along", HandTrace.Found));

    private static string Trace(double length, Support[] supports, params Load[] loads) => HandTrace.Of(
        HandAgreement.Work(Beam(length, supports, loads)),
        "FreeBody", "Along", "Proof", "AlongTheBeam", HandTrace.Found);
}
