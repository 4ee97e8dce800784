using FieldCheck.Mechanics.Model;
using static FieldCheck.Mechanics.Tests.Solving.Beams;

namespace FieldCheck.Mechanics.Tests.HandMethods;

/// <summary>
/// Whole workings of beams that statics alone solves. Every reaction, arm, sense, shear and moment was worked apart from moments
/// about one support and the sum of forces.
/// </summary>
public sealed class HandTracePartTests
{
    [Fact]
    public void SimpleSpan_Point() => Holds(
        """
        # FreeBody
        - SupportHolds Support 0 SupportPlace0[0] Unknowns [H0, V0]
        - SupportHolds Support 1 SupportPlace1[6] Unknowns [V1]
        - Count Unknowns [H0, V0, V1] Hinges 0 CountsAlong Equations 3 DegreeAlong 0 DegreeAcross 0 Degree 0
        # Loads
        LoadForce0.only = 900 N Down of Whole Index 0 at 2
        # Along
        - NothingAlong Supports [0]
        H0 = 0 N
        # Part SupportPlace0[0] SupportPlace1[6] IsWhole
        - MomentsAbout SupportPlace0[0] DropsOut [V0]
        ? = LoadForce0.only[900] * 2 = 1800 Nm Clockwise of OfLoad Index 0 Part -1
        V0 turns None
        V1 turns CounterClockwise by 6 m
        ? = -[1800] = -1800 Nm of Together
        SupportPlace1[6] V1 + [-1800] = 0
        V1 = (-[-1800]) / SupportPlace1[6] = 300 N
        - VerticalSum V0
        V0 = LoadForce0.only[900] - V1 = 600 N
        # Proof SupportPlace1[6]
        - MomentsClose SupportPlace1[6]
        - PassesThrough Actors [Named V1]
        ? = V0 * SupportPlace1[6] = 3600 Nm Clockwise of Named V0
        ? = LoadForce0.only[900] * (SupportPlace1[6] - 2) = 3600 Nm CounterClockwise of OfLoad Index 0 Part -1
        ? closes -[3600] + [3600] = 0 Nm of 7200
        - ForcesClose
        ? closes V0 + V1 - LoadForce0.only[900] = 0 N of 1800
        # Reactions
        - Reactions
        # AlongTheBeam
        - Jumps SupportPlace0[0] HasForces
        ShearRight0 = ShearLeft0 + V0 = 600 N
        - Stretch SupportPlace0[0] 2 Nothing IsFirst
        SectionMomentLeft1 = SectionMomentLeft0 + ShearRight0 * 2 = 1200 Nm
        - Jumps 2 HasForces
        ShearRight1 = ShearRight0 - LoadForce0.only[900] = -300 N
        - Stretch 2 SupportPlace1[6] Nothing
        StretchLength2 = SupportPlace1[6] - 2 = 4 m
        SectionMomentLeft2 = SectionMomentLeft1 + ShearRight1 * StretchLength2 = 0 Nm
        - Jumps SupportPlace1[6] HasForces
        ShearRight2 = ShearRight1 + V1 = 0 N
        - EndsWithNothing
        ShearRight2 closes ShearRight2 = 0 N of 600
        SectionMomentLeft2 closes SectionMomentLeft2 = 0 Nm of 1200
        | 0: V 0|600 M 0
        | 2: V 600|-300 M 1200
        | 6: V -300|0 M 0
        = Whole
        0: H 0 N V 600 N
        1: V 300 N
        """,
        Beam(6, [Support.Pin(0), Support.Roller(6)], [new Load.Point(2, 900)]));

    /// <summary>No roller, no load along: nothing to hold along. Loads at both supports, one of them lifting.</summary>
    [Fact]
    public void OverhangsAndLoadsOnSupports() => Holds(
        """
        # FreeBody
        - SupportHolds Support 0 SupportPlace0[1] Unknowns [V0]
        - SupportHolds Support 1 SupportPlace1[5] Unknowns [V1]
        - Count Unknowns [V0, V1] Hinges 0 Equations 2 DegreeAlong 0 DegreeAcross 0 Degree 0
        # Loads
        LoadForce0.only = 400 N Down of Whole Index 0 at 0
        LoadForce1.only = 50 N Down of Whole Index 1 at SupportPlace0[1]
        LoadForce2.only = 70 N Up of Whole Index 2 at SupportPlace1[5]
        # Along
        - NothingAlong Supports []
        # Part 0 6 IsWhole
        - MomentsAbout SupportPlace0[1] DropsOut [V0]
        - PassesThrough Actors [OfLoad Index 1 Part -1]
        ? = LoadForce0.only[400] * SupportPlace0[1] = 400 Nm CounterClockwise of OfLoad Index 0 Part -1
        ? = LoadForce2.only[70] * (SupportPlace1[5] - SupportPlace0[1]) = 280 Nm CounterClockwise of OfLoad Index 2 Part -1
        V0 turns None
        V1 turns CounterClockwise by SupportPlace1[5] - SupportPlace0[1] = 4 m
        ? = [400] + [280] = 680 Nm of Together
        [4] V1 + [680] = 0
        V1 = (-[680]) / [4] = -170 N
        - VerticalSum V0
        V0 = LoadForce0.only[400] + LoadForce1.only[50] - V1 - LoadForce2.only[70] = 550 N
        # Proof SupportPlace1[5]
        - MomentsClose SupportPlace1[5]
        - PassesThrough Actors [Named V1, OfLoad Index 2 Part -1]
        ? = V0 * (SupportPlace1[5] - SupportPlace0[1]) = 2200 Nm Clockwise of Named V0
        ? = LoadForce0.only[400] * SupportPlace1[5] = 2000 Nm CounterClockwise of OfLoad Index 0 Part -1
        ? = LoadForce1.only[50] * (SupportPlace1[5] - SupportPlace0[1]) = 200 Nm CounterClockwise of OfLoad Index 1 Part -1
        ? closes -[2200] + [2000] + [200] = 0 Nm of 4400
        - ForcesClose
        ? closes V0 + V1 - LoadForce0.only[400] - LoadForce1.only[50] + LoadForce2.only[70] = 0 N of 1240
        # Reactions
        - Reactions
        # AlongTheBeam
        - Jumps 0 HasForces
        ShearRight0 = ShearLeft0 - LoadForce0.only[400] = -400 N
        - Stretch 0 SupportPlace0[1] Nothing IsFirst
        SectionMomentLeft1 = SectionMomentLeft0 + ShearRight0 * SupportPlace0[1] = -400 Nm
        - Jumps SupportPlace0[1] HasForces
        ShearRight1 = ShearRight0 + V0 - LoadForce1.only[50] = 100 N
        - Stretch SupportPlace0[1] SupportPlace1[5] Nothing
        StretchLength2 = SupportPlace1[5] - SupportPlace0[1] = 4 m
        SectionMomentLeft2 = SectionMomentLeft1 + ShearRight1 * StretchLength2 = 0 Nm
        - Jumps SupportPlace1[5] HasForces
        ShearRight2 = ShearRight1 + V1 + LoadForce2.only[70] = 0 N
        - Stretch SupportPlace1[5] 6 Nothing
        StretchLength3 = 6 - SupportPlace1[5] = 1 m
        SectionMomentLeft3 = SectionMomentLeft2 + ShearRight2 * StretchLength3 = 0 Nm
        - EndsWithNothing
        ShearRight2 closes ShearRight2 = 0 N of 400
        SectionMomentLeft3 closes SectionMomentLeft3 = 0 Nm of 400
        | 0: V 0|-400 M 0
        | 1: V -400|100 M -400
        | 5: V 100|0 M 0
        | 6: V 0 M 0
        = Whole
        0: V 550 N
        1: V -170 N
        """,
        Beam(6, [Support.Roller(1), Support.Roller(5)], [new Load.Point(0, 400), new Load.Point(1, 50), new Load.Point(5, -70)]));

    [Fact]
    public void Cantilever_ForceLeansAndCouple() => Holds(
        """
        # FreeBody
        - SupportHolds Support 0 SupportPlace0[0] Unknowns [H0, V0, C0]
        - Count Unknowns [H0, V0, C0] Hinges 0 CountsAlong Equations 3 DegreeAlong 0 DegreeAcross 0 Degree 0
        # Loads
        - LoadLeans Load 0 500 0.927295 Right
        LoadForce0.only = 500 * cos(0.927295) = 300 N Down of Whole Index 0 at 4
        LoadAlong0.only = 500 * sin(0.927295) = 400 N Right of Whole Index 0 at 4
        LoadCouple1.only = 500 Nm CounterClockwise of Whole Index 1 at 2
        # Along
        - HorizontalSum H0
        H0 = -LoadAlong0.only = -400 N
        # Part SupportPlace0[0] 4 IsWhole
        - MomentsAbout SupportPlace0[0] DropsOut [V0]
        ? = LoadForce0.only * 4 = 1200 Nm Clockwise of OfLoad Index 0 Part -1
        ? = LoadCouple1.only[500] = 500 Nm CounterClockwise of OfLoad Index 1 Part -1
        V0 turns None
        C0 turns CounterClockwise
        ? = -[1200] + [500] = -700 Nm of Together
        1 C0 + [-700] = 0
        C0 = -[-700] = 700 Nm
        - VerticalSum V0
        V0 = LoadForce0.only = 300 N
        # Proof 4
        - MomentsClose 4
        - PassesThrough Actors [OfLoad Index 0 Part -1]
        ? = V0 * 4 = 1200 Nm Clockwise of Named V0
        ? = C0 = 700 Nm CounterClockwise of Named C0
        ? = LoadCouple1.only[500] = 500 Nm CounterClockwise of OfLoad Index 1 Part -1
        ? closes -[1200] + [700] + [500] = 0 Nm of 2400
        - ForcesClose
        ? closes V0 - LoadForce0.only = 0 N of 600
        - ForcesClose IsAlong
        ? closes H0 + LoadAlong0.only = 0 N of 800
        # Reactions
        - Reactions
        # AlongTheBeam
        - Jumps SupportPlace0[0] HasForces HasCouples
        ShearRight0 = ShearLeft0 + V0 = 300 N
        SectionMomentRight0 = SectionMomentLeft0 - C0 = -700 Nm
        - Stretch SupportPlace0[0] 2 Nothing IsFirst
        SectionMomentLeft1 = SectionMomentRight0 + ShearRight0 * 2 = -100 Nm
        - Jumps 2 HasCouples
        SectionMomentRight1 = SectionMomentLeft1 - LoadCouple1.only[500] = -600 Nm
        - Stretch 2 4 Nothing
        StretchLength2 = 4 - 2 = 2 m
        SectionMomentLeft2 = SectionMomentRight1 + ShearRight0 * StretchLength2 = 0 Nm
        - Jumps 4 HasForces
        ShearRight2 = ShearRight0 - LoadForce0.only = 0 N
        - EndsWithNothing
        ShearRight2 closes ShearRight2 = 0 N of 300
        SectionMomentLeft2 closes SectionMomentLeft2 = 0 Nm of 700
        | 0: V 0|300 M 0|-700
        | 2: V 300 M -100|-600
        | 4: V 300|0 M 0
        - AxialForces
        AxialRight0 = -H0 = 400 N at SupportPlace0[0]
        AxialRight1 = AxialRight0 - LoadAlong0.only = 0 N at 4
        = Whole
        0: H -400 N V 300 N C 700 Nm
        """,
        Beam(4, [Support.Fixed(0)], [new Load.Point(4, 300, 400), new Load.Couple(2, 500)]));

    [Fact]
    public void Guide_GivesItsCoupleFirst() => Holds(
        """
        # FreeBody
        - SupportHolds Support 0 SupportPlace0[0] Unknowns [H0, C0]
        - SupportHolds Support 1 SupportPlace1[6] Unknowns [V1]
        - Count Unknowns [H0, C0, V1] Hinges 0 CountsAlong Equations 3 DegreeAlong 0 DegreeAcross 0 Degree 0
        # Part SupportPlace0[0] SupportPlace1[6] IsWhole
        - MomentsAbout SupportPlace1[6] DropsOut [V1]
        ? = LoadForce0.only[900] * (SupportPlace1[6] - 2) = 3600 Nm CounterClockwise of OfLoad Index 0 Part -1
        C0 turns CounterClockwise
        V1 turns None
        ? = [3600] = 3600 Nm of Together
        1 C0 + [3600] = 0
        C0 = -[3600] = -3600 Nm
        - VerticalSum V1
        V1 = LoadForce0.only[900] = 900 N
        # Proof SupportPlace0[0]
        - MomentsClose SupportPlace0[0]
        ? = |C0| = 3600 Nm Clockwise of Named C0
        ? = V1 * SupportPlace1[6] = 5400 Nm CounterClockwise of Named V1
        ? = LoadForce0.only[900] * 2 = 1800 Nm Clockwise of OfLoad Index 0 Part -1
        ? closes -[3600] + [5400] - [1800] = 0 Nm of 10800
        - ForcesClose
        ? closes V1 - LoadForce0.only[900] = 0 N of 1800
        """,
        Beam(6, [Support.Guide(0), Support.Roller(6)], [new Load.Point(2, 900)]),
        null,
        "FreeBody", "Part", "Proof");

    private static void Holds(string expected, BeamModel model, double? about = null, params string[] steps) =>
        Assert.Equal(expected, HandTrace.Of(HandAgreement.Work(model, about), steps));
}
