using FieldCheck.Mechanics.Model;
using static FieldCheck.Mechanics.Tests.Solving.Beams;

namespace FieldCheck.Mechanics.Tests.HandMethods;

/// <summary>
/// Beams taken apart at hinges: which part is worked first, what a hinge carries over and what stands at it. Worked apart part by
/// part; the moment at every hinge is nothing.
/// </summary>
public sealed class HandTraceHingeTests
{
    /// <summary>The right part hangs on the left one; the load at the hinge is the left part's.</summary>
    [Fact]
    public void RightPartFirst_ItsHingeForcePressesTheLeftOne() => Holds(
        """
        # FreeBody
        - SupportHolds Support 0 SupportPlace0[0] Unknowns [H0, V0]
        - SupportHolds Support 1 SupportPlace1[4] Unknowns [V1]
        - SupportHolds Support 2 SupportPlace2[8] Unknowns [V2]
        - HingeTurns Hinge 0 HingePlace0[6]
        - Count Unknowns [H0, V0, V1, V2] Hinges 1 CountsAlong Equations 4 DegreeAlong 0 DegreeAcross 0 Degree 0
        # Loads
        LoadForce0.only = 1000 N Down of Whole Index 0 at 7
        LoadForce1.only = 600 N Down of Whole Index 1 at HingePlace0[6]
        LoadForce2.only = 200 N Down of Whole Index 2 at 2
        # Along
        - NothingAlong Supports [0]
        H0 = 0 N
        # Part HingePlace0[6] SupportPlace2[8]
        - PartUnknowns Unknowns [V2, G0]
        - MomentsAbout HingePlace0[6] DropsOut [G0]
        ? = LoadForce0.only[1000] * (7 - HingePlace0[6]) = 1000 Nm Clockwise of OfLoad Index 0 Part -1
        V2 turns CounterClockwise by SupportPlace2[8] - HingePlace0[6] = 2 m
        G0 turns None
        ? = -[1000] = -1000 Nm of Together
        [2] V2 + [-1000] = 0
        V2 = (-[-1000]) / [2] = 500 N
        - VerticalSum G0
        G0 = LoadForce0.only[1000] - V2 = 500 N
        # Part SupportPlace0[0] HingePlace0[6]
        - PartUnknowns Unknowns [V0, V1]
        - CarriesOver Hinge 0
        - StandsAtHinge Hinge 0 Actors [OfLoad Index 1 Part -1]
        - MomentsAbout SupportPlace0[0] DropsOut [V0]
        ? = G0 * HingePlace0[6] = 3000 Nm Clockwise of Named G0
        ? = LoadForce1.only[600] * HingePlace0[6] = 3600 Nm Clockwise of OfLoad Index 1 Part -1
        ? = LoadForce2.only[200] * 2 = 400 Nm Clockwise of OfLoad Index 2 Part -1
        V0 turns None
        V1 turns CounterClockwise by 4 m
        ? = -[3000] - [3600] - [400] = -7000 Nm of Together
        SupportPlace1[4] V1 + [-7000] = 0
        V1 = (-[-7000]) / SupportPlace1[4] = 1750 N
        - VerticalSum V0
        V0 = G0 + LoadForce1.only[600] + LoadForce2.only[200] - V1 = -450 N
        # Proof SupportPlace2[8]
        - MomentsClose SupportPlace2[8]
        - PassesThrough Actors [Named V2]
        ? = |V0| * SupportPlace2[8] = 3600 Nm CounterClockwise of Named V0
        ? = V1 * (SupportPlace2[8] - SupportPlace1[4]) = 7000 Nm Clockwise of Named V1
        ? = LoadForce0.only[1000] * (SupportPlace2[8] - 7) = 1000 Nm CounterClockwise of OfLoad Index 0 Part -1
        ? = LoadForce1.only[600] * (SupportPlace2[8] - HingePlace0[6]) = 1200 Nm CounterClockwise of OfLoad Index 1 Part -1
        ? = LoadForce2.only[200] * (SupportPlace2[8] - 2) = 1200 Nm CounterClockwise of OfLoad Index 2 Part -1
        ? closes [3600] - [7000] + [1000] + [1200] + [1200] = 0 Nm of 14000
        - ForcesClose
        ? closes V0 + V1 + V2 - LoadForce0.only[1000] - LoadForce1.only[600] - LoadForce2.only[200] = 0 N of 4500
        # Reactions
        - Reactions
        # AlongTheBeam
        - Jumps SupportPlace0[0] HasForces
        ShearRight0 = ShearLeft0 + V0 = -450 N
        - Stretch SupportPlace0[0] 2 Nothing IsFirst
        SectionMomentLeft1 = SectionMomentLeft0 + ShearRight0 * 2 = -900 Nm
        - Jumps 2 HasForces
        ShearRight1 = ShearRight0 - LoadForce2.only[200] = -650 N
        - Stretch 2 SupportPlace1[4] Nothing
        StretchLength2 = SupportPlace1[4] - 2 = 2 m
        SectionMomentLeft2 = SectionMomentLeft1 + ShearRight1 * StretchLength2 = -2200 Nm
        - Jumps SupportPlace1[4] HasForces
        ShearRight2 = ShearRight1 + V1 = 1100 N
        - Stretch SupportPlace1[4] HingePlace0[6] Nothing
        StretchLength3 = HingePlace0[6] - SupportPlace1[4] = 2 m
        SectionMomentLeft3 = SectionMomentLeft2 + ShearRight2 * StretchLength3 = 0 Nm
        - Jumps HingePlace0[6] HasForces
        ShearRight3 = ShearRight2 - LoadForce1.only[600] = 500 N
        - HingeIsFree Hinge 0
        SectionMomentLeft3 closes SectionMomentLeft3 = 0 Nm of 2200
        - Stretch HingePlace0[6] 7 Nothing
        StretchLength4 = 7 - HingePlace0[6] = 1 m
        SectionMomentLeft4 = SectionMomentLeft3 + ShearRight3 * StretchLength4 = 500 Nm
        - Jumps 7 HasForces
        ShearRight4 = ShearRight3 - LoadForce0.only[1000] = -500 N
        - Stretch 7 SupportPlace2[8] Nothing
        StretchLength5 = SupportPlace2[8] - 7 = 1 m
        SectionMomentLeft5 = SectionMomentLeft4 + ShearRight4 * StretchLength5 = 0 Nm
        - Jumps SupportPlace2[8] HasForces
        ShearRight5 = ShearRight4 + V2 = 0 N
        - EndsWithNothing
        ShearRight5 closes ShearRight5 = 0 N of 1100
        SectionMomentLeft5 closes SectionMomentLeft5 = 0 Nm of 2200
        | 0: V 0|-450 M 0
        | 2: V -450|-650 M -900
        | 4: V -650|1100 M -2200
        | 6: V 1100|500 M 0
        | 7: V 500|-500 M 500
        | 8: V -500|0 M 0
        = Whole
        0: H 0 N V -450 N
        1: V 1750 N
        2: V 500 N
        """,
        Beam(
            8,
            [Support.Pin(0), Support.Roller(4), Support.Roller(8)],
            [new Load.Point(7, 1000), new Load.Point(6, 600), new Load.Point(2, 200)],
            [6]));

    /// <summary>The left part hangs on the right one; couples at the hinge turn one part each.</summary>
    [Fact]
    public void LeftPartFirst_CouplesAtTheHingeTurnOnePartEach() => Holds(
        """
        # FreeBody
        - SupportHolds Support 0 SupportPlace0[0] Unknowns [H0, V0]
        - SupportHolds Support 1 SupportPlace1[3] Unknowns [V1]
        - SupportHolds Support 2 SupportPlace2[6] Unknowns [V2]
        - HingeTurns Hinge 0 HingePlace0[2]
        - Count Unknowns [H0, V0, V1, V2] Hinges 1 CountsAlong Equations 4 DegreeAlong 0 DegreeAcross 0 Degree 0
        # Loads
        LoadCouple0.only = 100 Nm CounterClockwise of Whole Index 0 at HingePlace0[2]
        - TurnsSide Load 0 Left
        LoadCouple1.only = 60 Nm Clockwise of Whole Index 1 at HingePlace0[2]
        - TurnsSide Load 1 Right
        - LoadIs Load 2 SupportPlace0[0] HingePlace0[2]
        Intensity2 = 300 N/m
        LoadForce2.only = Intensity2[300] * HingePlace0[2] = 600 N Down
        LoadPlace2.only = (SupportPlace0[0] + HingePlace0[2]) / 2 = 1 m
        # Along
        - NothingAlong Supports [0]
        H0 = 0 N
        # Part SupportPlace0[0] HingePlace0[2]
        - PartUnknowns Unknowns [V0, G0]
        - MomentsAbout SupportPlace0[0] DropsOut [V0]
        ? = LoadForce2.only * LoadPlace2.only = 600 Nm Clockwise of OfLoad Index 2 Part -1
        ? = LoadCouple0.only[100] = 100 Nm CounterClockwise of OfLoad Index 0 Part -1
        V0 turns None
        G0 turns CounterClockwise by 2 m
        ? = -[600] + [100] = -500 Nm of Together
        HingePlace0[2] G0 + [-500] = 0
        G0 = (-[-500]) / HingePlace0[2] = 250 N
        - VerticalSum V0
        V0 = LoadForce2.only - G0 = 350 N
        # Part HingePlace0[2] SupportPlace2[6]
        - PartUnknowns Unknowns [V1, V2]
        - CarriesOver Hinge 0
        - MomentsAbout SupportPlace1[3] DropsOut [V1]
        ? = G0 * (SupportPlace1[3] - HingePlace0[2]) = 250 Nm CounterClockwise of Named G0
        ? = LoadCouple1.only[60] = 60 Nm Clockwise of OfLoad Index 1 Part -1
        V1 turns None
        V2 turns CounterClockwise by SupportPlace2[6] - SupportPlace1[3] = 3 m
        ? = [250] - [60] = 190 Nm of Together
        [3] V2 + [190] = 0
        V2 = (-[190]) / [3] = -63.3333 N
        - VerticalSum V1
        V1 = G0 - V2 = 313.333 N
        # Proof SupportPlace2[6]
        - MomentsClose SupportPlace2[6]
        - PassesThrough Actors [Named V2]
        ? = V0 * SupportPlace2[6] = 2100 Nm Clockwise of Named V0
        ? = V1 * (SupportPlace2[6] - SupportPlace1[3]) = 940 Nm Clockwise of Named V1
        ? = LoadForce2.only * (SupportPlace2[6] - LoadPlace2.only) = 3000 Nm CounterClockwise of OfLoad Index 2 Part -1
        ? = LoadCouple0.only[100] = 100 Nm CounterClockwise of OfLoad Index 0 Part -1
        ? = LoadCouple1.only[60] = 60 Nm Clockwise of OfLoad Index 1 Part -1
        ? closes -[2100] - [940] + [3000] + [100] - [60] = 0 Nm of 6200
        - ForcesClose
        ? closes V0 + V1 + V2 - LoadForce2.only = 0 N of 1326.67
        # Reactions
        - Reactions
        # AlongTheBeam
        - Jumps SupportPlace0[0] HasForces
        ShearRight0 = ShearLeft0 + V0 = 350 N
        - Stretch SupportPlace0[0] HingePlace0[2] Uniform IsFirst
        ShearLeft1 = ShearRight0 - (Intensity2[300] * HingePlace0[2]) = -250 N
        SectionMomentLeft1 = SectionMomentLeft0 + ((ShearRight0 + ShearLeft1) * HingePlace0[2]) / 2 = 100 Nm
        - ZeroShear Uniform SupportPlace0[0]
        ZeroShearDistance0 = ShearRight0 / Intensity2[300] = 1.16667 m
        PeakMoment0 = SectionMomentLeft0 + (ShearRight0 * ZeroShearDistance0) / 2 = 204.167 Nm
        - Jumps HingePlace0[2] HasCouples
        SectionMomentRight2 = SectionMomentLeft1 - LoadCouple0.only[100] = 0 Nm
        - HingeIsFree Hinge 0
        SectionMomentRight2 closes SectionMomentRight2 = 0 Nm of 204.167
        SectionMomentRight2 = SectionMomentRight2 + LoadCouple1.only[60] = 60 Nm
        - Stretch HingePlace0[2] SupportPlace1[3] Nothing IsFirst
        StretchLength3 = SupportPlace1[3] - HingePlace0[2] = 1 m
        SectionMomentLeft3 = SectionMomentRight2 + ShearLeft1 * StretchLength3 = -190 Nm
        - Jumps SupportPlace1[3] HasForces
        ShearRight3 = ShearLeft1 + V1 = 63.3333 N
        - Stretch SupportPlace1[3] SupportPlace2[6] Nothing
        StretchLength4 = SupportPlace2[6] - SupportPlace1[3] = 3 m
        SectionMomentLeft4 = SectionMomentLeft3 + ShearRight3 * StretchLength4 = 0 Nm
        - Jumps SupportPlace2[6] HasForces
        ShearRight4 = ShearRight3 + V2 = 0 N
        - EndsWithNothing
        ShearRight4 closes ShearRight4 = 0 N of 350
        SectionMomentLeft4 closes SectionMomentLeft4 = 0 Nm of 204.167
        | 0: V 0|350 M 0
        | 1.16667: V 0 M 204.167 peak
        | 2: V -250 M 100|60
        | 3: V -250|63.3333 M -190
        | 6: V 63.3333|0 M 0
        = Whole
        0: H 0 N V 350 N
        1: V 313.333 N
        2: V -63.3333 N
        """,
        Beam(
            6,
            [Support.Pin(0), Support.Roller(3), Support.Roller(6)],
            [new Load.Couple(2, 100), new Load.Couple(2, -60, Side.Right), Uniform(0, 2, 300)],
            [2]));

    /// <summary>The part between two hinges is worked first, and both clamps carry what it brings.</summary>
    [Fact]
    public void MiddlePartFirst() => Holds(
        """
        # FreeBody
        - SupportHolds Support 0 SupportPlace0[0] Unknowns [H0, V0, C0]
        - SupportHolds Support 1 SupportPlace1[6] Unknowns [H1, V1, C1]
        - HingeTurns Hinge 0 HingePlace0[2]
        - HingeTurns Hinge 1 HingePlace1[4]
        - Count Unknowns [H0, V0, C0, H1, V1, C1] Hinges 2 CountsAlong Equations 5 DegreeAlong 1 DegreeAcross 0 Degree 1
        # Along
        - NothingAlong Supports [0, 1]
        H0 = 0 N
        H1 = 0 N
        # Part HingePlace0[2] HingePlace1[4]
        - PartUnknowns Unknowns [G0, G1]
        - StandsAtHinge Hinge 1 Actors [OfLoad Index 1 Part -1]
        - MomentsAbout HingePlace0[2] DropsOut [G0]
        ? = LoadForce0.only[800] * (3.5 - HingePlace0[2]) = 1200 Nm Clockwise of OfLoad Index 0 Part -1
        ? = LoadForce1.only[100] * (HingePlace1[4] - HingePlace0[2]) = 200 Nm Clockwise of OfLoad Index 1 Part -1
        G0 turns None
        G1 turns CounterClockwise by HingePlace1[4] - HingePlace0[2] = 2 m
        ? = -[1200] - [200] = -1400 Nm of Together
        [2] G1 + [-1400] = 0
        G1 = (-[-1400]) / [2] = 700 N
        - VerticalSum G0
        G0 = LoadForce0.only[800] + LoadForce1.only[100] - G1 = 200 N
        # Part SupportPlace0[0] HingePlace0[2]
        - PartUnknowns Unknowns [V0, C0]
        - CarriesOver Hinge 0
        - MomentsAbout SupportPlace0[0] DropsOut [V0]
        ? = G0 * HingePlace0[2] = 400 Nm Clockwise of Named G0
        V0 turns None
        C0 turns CounterClockwise
        ? = -[400] = -400 Nm of Together
        1 C0 + [-400] = 0
        C0 = -[-400] = 400 Nm
        - VerticalSum V0
        V0 = G0 = 200 N
        # Part HingePlace1[4] SupportPlace1[6]
        - PartUnknowns Unknowns [V1, C1]
        - CarriesOver Hinge 1
        - MomentsAbout SupportPlace1[6] DropsOut [V1]
        ? = G1 * (SupportPlace1[6] - HingePlace1[4]) = 1400 Nm CounterClockwise of Named G1
        V1 turns None
        C1 turns CounterClockwise
        ? = [1400] = 1400 Nm of Together
        1 C1 + [1400] = 0
        C1 = -[1400] = -1400 Nm
        - VerticalSum V1
        V1 = G1 = 700 N
        # Proof SupportPlace1[6]
        - MomentsClose SupportPlace1[6]
        - PassesThrough Actors [Named V1]
        ? = V0 * SupportPlace1[6] = 1200 Nm Clockwise of Named V0
        ? = C0 = 400 Nm CounterClockwise of Named C0
        ? = |C1| = 1400 Nm Clockwise of Named C1
        ? = LoadForce0.only[800] * (SupportPlace1[6] - 3.5) = 2000 Nm CounterClockwise of OfLoad Index 0 Part -1
        ? = LoadForce1.only[100] * (SupportPlace1[6] - HingePlace1[4]) = 200 Nm CounterClockwise of OfLoad Index 1 Part -1
        ? closes -[1200] + [400] - [1400] + [2000] + [200] = 0 Nm of 5200
        - ForcesClose
        ? closes V0 + V1 - LoadForce0.only[800] - LoadForce1.only[100] = 0 N of 1800
        = Whole
        0: H 0 N V 200 N C 400 Nm
        1: H 0 N V 700 N C -1400 Nm
        """,
        Beam(6, [Support.Fixed(0), Support.Fixed(6)], [new Load.Point(3.5, 800), new Load.Point(4, 100)], [2, 4]),
        null,
        "FreeBody", "Along", "Part", "Proof", HandTrace.Found);

    private static void Holds(string expected, BeamModel model, double? about = null, params string[] steps) =>
        Assert.Equal(expected, HandTrace.Of(HandAgreement.Work(model, about), steps));
}
