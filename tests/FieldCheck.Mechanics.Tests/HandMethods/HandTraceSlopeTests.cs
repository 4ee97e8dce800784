using FieldCheck.Mechanics.Model;
using static FieldCheck.Mechanics.Tests.Solving.Beams;

namespace FieldCheck.Mechanics.Tests.HandMethods;

/// <summary>
/// Sloped surfaces of 3 in 4: sine 0.6, cosine 0.8. One that rises to the right pushes up and to the left. Worked apart from the three
/// sums.
/// </summary>
public sealed class HandTraceSlopeTests
{
    private static readonly double Slope = Math.Atan(0.75);

    /// <summary>The only one that holds along: the horizontal sum gives its push, 300 / 0.6.</summary>
    [Theory]
    [InlineData(1, """
        # FreeBody
        - SupportHolds Support 0 SupportPlace0[0] Unknowns [N0]
        - SupportHolds Support 1 SupportPlace1[2] Unknowns [V1]
        - SupportHolds Support 2 SupportPlace2[6] Unknowns [V2]
        - Count Unknowns [N0, V1, V2] Hinges 0 CountsAlong Equations 3 IsTied DegreeAlong 0 DegreeAcross 0 Degree 0
        # Along
        - HorizontalSum H0
        H0 = -LoadAlong0.only = -300 N
        - PushesSquare Support 0 RisesRight
        SurfaceSine0 = sin(Surface0[0.643501]) = 0.6
        SurfaceCosine0 = cos(Surface0[0.643501]) = 0.8
        N0 = -(H0 / SurfaceSine0) = 500 N
        V0 = N0 * SurfaceCosine0 = 400 N
        # Part SupportPlace0[0] SupportPlace2[6] IsWhole
        - MomentsAbout SupportPlace1[2] DropsOut [V1]
        ? = V0 * SupportPlace1[2] = 800 Nm Clockwise of Named V0
        ? = LoadForce0.only * (4 - SupportPlace1[2]) = 1200 Nm Clockwise of OfLoad Index 0 Part -1
        V1 turns None
        V2 turns CounterClockwise by SupportPlace2[6] - SupportPlace1[2] = 4 m
        ? = -[800] - [1200] = -2000 Nm of Together
        [4] V2 + [-2000] = 0
        V2 = (-[-2000]) / [4] = 500 N
        - VerticalSum V1
        V1 = LoadForce0.only - V0 - V2 = -300 N
        # Proof SupportPlace2[6]
        - MomentsClose SupportPlace2[6]
        - PassesThrough Actors [Named V2]
        ? = V0 * SupportPlace2[6] = 2400 Nm Clockwise of Named V0
        ? = |V1| * (SupportPlace2[6] - SupportPlace1[2]) = 1200 Nm CounterClockwise of Named V1
        ? = LoadForce0.only * (SupportPlace2[6] - 4) = 1200 Nm CounterClockwise of OfLoad Index 0 Part -1
        ? closes -[2400] + [1200] + [1200] = 0 Nm of 4800
        - ForcesClose
        ? closes V0 + V1 + V2 - LoadForce0.only = 0 N of 1800
        - ForcesClose IsAlong
        ? closes H0 + LoadAlong0.only = 0 N of 600
        = Whole
        0: H -300 N V 400 N N 500 N
        1: V -300 N
        2: V 500 N
        """)]
    [InlineData(-1, """
        # FreeBody
        - SupportHolds Support 0 SupportPlace0[0] Unknowns [N0]
        - SupportHolds Support 1 SupportPlace1[2] Unknowns [V1]
        - SupportHolds Support 2 SupportPlace2[6] Unknowns [V2]
        - Count Unknowns [N0, V1, V2] Hinges 0 CountsAlong Equations 3 IsTied DegreeAlong 0 DegreeAcross 0 Degree 0
        # Along
        - HorizontalSum H0
        H0 = -LoadAlong0.only = -300 N
        - PushesSquare Support 0
        SurfaceSine0 = sin(Surface0[0.643501]) = 0.6
        SurfaceCosine0 = cos(Surface0[0.643501]) = 0.8
        N0 = H0 / SurfaceSine0 = -500 N
        V0 = N0 * SurfaceCosine0 = -400 N
        # Part SupportPlace0[0] SupportPlace2[6] IsWhole
        - MomentsAbout SupportPlace1[2] DropsOut [V1]
        ? = |V0| * SupportPlace1[2] = 800 Nm CounterClockwise of Named V0
        ? = LoadForce0.only * (4 - SupportPlace1[2]) = 1200 Nm Clockwise of OfLoad Index 0 Part -1
        V1 turns None
        V2 turns CounterClockwise by SupportPlace2[6] - SupportPlace1[2] = 4 m
        ? = [800] - [1200] = -400 Nm of Together
        [4] V2 + [-400] = 0
        V2 = (-[-400]) / [4] = 100 N
        - VerticalSum V1
        V1 = LoadForce0.only - V0 - V2 = 900 N
        # Proof SupportPlace2[6]
        - MomentsClose SupportPlace2[6]
        - PassesThrough Actors [Named V2]
        ? = |V0| * SupportPlace2[6] = 2400 Nm CounterClockwise of Named V0
        ? = V1 * (SupportPlace2[6] - SupportPlace1[2]) = 3600 Nm Clockwise of Named V1
        ? = LoadForce0.only * (SupportPlace2[6] - 4) = 1200 Nm CounterClockwise of OfLoad Index 0 Part -1
        ? closes [2400] - [3600] + [1200] = 0 Nm of 7200
        - ForcesClose
        ? closes V0 + V1 + V2 - LoadForce0.only = 0 N of 2000
        - ForcesClose IsAlong
        ? closes H0 + LoadAlong0.only = 0 N of 600
        = Whole
        0: H -300 N V -400 N N -500 N
        1: V 900 N
        2: V 100 N
        """)]
    public void OneAlone_IsFoundFromTheHorizontalSum(double sign, string expected) => Assert.Equal(
        expected,
        Trace(
            Beam(6, [Support.Roller(0, sign * Slope), Support.Roller(2), Support.Roller(6)], [new Load.Point(4, 600, 300)]),
            "FreeBody", "Along", "Part", "Proof", HandTrace.Found));

    /// <summary>Beside a pin it waits for its vertical part.</summary>
    [Theory]
    [InlineData(1, """
        # FreeBody
        - SupportHolds Support 0 SupportPlace0[0] Unknowns [H0, V0]
        - SupportHolds Support 1 SupportPlace1[6] Unknowns [N1]
        - Count Unknowns [H0, V0, N1] Hinges 0 CountsAlong Equations 3 IsTied DegreeAlong 0 DegreeAcross 0 Degree 0
        # Slope Support 1
        - PushesSquare Support 1 RisesRight
        SurfaceSine1 = sin(Surface1[0.643501]) = 0.6
        SurfaceCosine1 = cos(Surface1[0.643501]) = 0.8
        N1 = V1 / SurfaceCosine1 = 500 N
        H1 = -(N1 * SurfaceSine1) = -300 N
        # Along
        - HorizontalSum H0
        H0 = -LoadAlong0.only - H1 = 250 N
        # Proof SupportPlace1[6]
        - MomentsClose SupportPlace1[6]
        - PassesThrough Actors [Named V1]
        ? = V0 * SupportPlace1[6] = 4800 Nm Clockwise of Named V0
        ? = LoadForce0.only * (SupportPlace1[6] - 2) = 4800 Nm CounterClockwise of OfLoad Index 0 Part -1
        ? closes -[4800] + [4800] = 0 Nm of 9600
        - ForcesClose
        ? closes V0 + V1 - LoadForce0.only = 0 N of 2400
        - ForcesClose IsAlong
        ? closes H0 + H1 + LoadAlong0.only = 0 N of 600
        = Whole
        0: H 250 N V 800 N
        1: H -300 N V 400 N N 500 N
        """)]
    [InlineData(-1, """
        # FreeBody
        - SupportHolds Support 0 SupportPlace0[0] Unknowns [H0, V0]
        - SupportHolds Support 1 SupportPlace1[6] Unknowns [N1]
        - Count Unknowns [H0, V0, N1] Hinges 0 CountsAlong Equations 3 IsTied DegreeAlong 0 DegreeAcross 0 Degree 0
        # Slope Support 1
        - PushesSquare Support 1
        SurfaceSine1 = sin(Surface1[0.643501]) = 0.6
        SurfaceCosine1 = cos(Surface1[0.643501]) = 0.8
        N1 = V1 / SurfaceCosine1 = 500 N
        H1 = N1 * SurfaceSine1 = 300 N
        # Along
        - HorizontalSum H0
        H0 = -LoadAlong0.only - H1 = -350 N
        # Proof SupportPlace1[6]
        - MomentsClose SupportPlace1[6]
        - PassesThrough Actors [Named V1]
        ? = V0 * SupportPlace1[6] = 4800 Nm Clockwise of Named V0
        ? = LoadForce0.only * (SupportPlace1[6] - 2) = 4800 Nm CounterClockwise of OfLoad Index 0 Part -1
        ? closes -[4800] + [4800] = 0 Nm of 9600
        - ForcesClose
        ? closes V0 + V1 - LoadForce0.only = 0 N of 2400
        - ForcesClose IsAlong
        ? closes H0 + H1 + LoadAlong0.only = 0 N of 700
        = Whole
        0: H -350 N V 800 N
        1: H 300 N V 400 N N 500 N
        """)]
    public void BesideAPin_FollowsFromItsVerticalPart(double sign, string expected) => Assert.Equal(
        expected,
        Trace(
            Beam(6, [Support.Pin(0), Support.Roller(6, sign * Slope)], [new Load.Point(2, 1200, 50)]),
            "FreeBody", "Slope", "Along", "Proof", HandTrace.Found));

    /// <summary>Between pins the surface's horizontal part is a load along like any other.</summary>
    [Fact]
    public void BetweenPins_PullsAlong() => Assert.Equal(
        """
        # Slope Support 1
        - PushesSquare Support 1 RisesRight
        SurfaceSine1 = sin(Surface1[0.643501]) = 0.6
        SurfaceCosine1 = cos(Surface1[0.643501]) = 0.8
        N1 = V1 / SurfaceCosine1 = 1000 N
        H1 = -(N1 * SurfaceSine1) = -600 N
        # Along
        - NoStretchBetween From 0 To 2 IsEven
        ? = LoadAlong1.only[600] * (SupportPlace2[6] - 3) = 1800 Nm of OfLoad Index 1 Part -1
        ? = H1 * (SupportPlace2[6] - SupportPlace1[4]) = -1200 Nm of Named H1
        AxialBetween0 = ([1800] + [-1200]) / SupportPlace2[6] = 100 N
        - HoldsTheChange
        H0 = -AxialBetween0 = -100 N
        H2 = AxialBetween0 - LoadAlong1.only[600] - H1 = 100 N
        # Proof SupportPlace2[6]
        - MomentsClose SupportPlace2[6]
        - PassesThrough Actors [Named V2]
        ? = V0 * SupportPlace2[6] = 0 Nm Clockwise of Named V0
        ? = V1 * (SupportPlace2[6] - SupportPlace1[4]) = 1600 Nm Clockwise of Named V1
        ? = LoadForce0.only[800] * (SupportPlace2[6] - SupportPlace1[4]) = 1600 Nm CounterClockwise of OfLoad Index 0 Part -1
        ? closes -[0] - [1600] + [1600] = 0 Nm of 3200
        - ForcesClose
        ? closes V0 + V1 + V2 - LoadForce0.only[800] = 0 N of 1600
        - ForcesClose IsAlong
        ? closes H0 + H1 + H2 + LoadAlong1.only[600] = 0 N of 1400
        # AlongTheBeam
        - Jumps SupportPlace0[0] HasForces
        ShearRight0 = ShearLeft0 + V0 = 0 N
        - Stretch SupportPlace0[0] HingePlace0[2] Nothing IsFirst
        SectionMomentLeft1 = SectionMomentLeft0 + ShearRight0 * HingePlace0[2] = 0 Nm
        - HingeIsFree Hinge 0
        SectionMomentLeft1 closes SectionMomentLeft1 = 0 Nm of 0
        - Stretch HingePlace0[2] SupportPlace1[4] Nothing
        StretchLength2 = SupportPlace1[4] - HingePlace0[2] = 2 m
        SectionMomentLeft2 = SectionMomentLeft1 + ShearRight0 * StretchLength2 = 0 Nm
        - Jumps SupportPlace1[4] HasForces
        ShearRight2 = ShearRight0 + V1 - LoadForce0.only[800] = 0 N
        - Stretch SupportPlace1[4] SupportPlace2[6] Nothing
        StretchLength3 = SupportPlace2[6] - SupportPlace1[4] = 2 m
        SectionMomentLeft3 = SectionMomentLeft2 + ShearRight2 * StretchLength3 = 0 Nm
        - Jumps SupportPlace2[6] HasForces
        ShearRight3 = ShearRight2 + V2 = 0 N
        - EndsWithNothing
        ShearRight3 closes ShearRight3 = 0 N of 0
        SectionMomentLeft3 closes SectionMomentLeft3 = 0 Nm of 0
        | 0: V 0|0 M 0
        | 2: V 0 M 0
        | 4: V 0|0 M 0
        | 6: V 0|0 M 0
        - AxialForces
        AxialRight0 = -H0 = 100 N at SupportPlace0[0]
        AxialRight1 = AxialRight0 - LoadAlong1.only[600] = -500 N at 3
        AxialRight2 = AxialRight1 - H1 = 100 N at SupportPlace1[4]
        AxialRight3 = AxialRight2 - H2 = 0 N at SupportPlace2[6]
        = Whole
        0: H -100 N V 0 N
        1: H -600 N V 800 N N 1000 N
        2: H 100 N V 0 N
        """,
        Trace(
            Beam(
                6,
                [Support.Pin(0), Support.Roller(4, Slope), Support.Pin(6)],
                [new Load.Point(4, 800), new Load.Point(3, 0, 600)],
                [2]),
            "Slope", "Along", "Proof", "AlongTheBeam", HandTrace.Found));

    private static string Trace(BeamModel model, params string[] steps) => HandTrace.Of(HandAgreement.Work(model), steps);
}
