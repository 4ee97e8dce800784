using FieldCheck.Mechanics.Model;
using static FieldCheck.Mechanics.Tests.Solving.Beams;

namespace FieldCheck.Mechanics.Tests.HandMethods;

/// <summary>
/// A beam that only sloped surfaces hold lengthways, of 3 in 4: tangent 0.75. Worked apart: the three sums, solved by elimination.
/// </summary>
public sealed class HandTraceCoupledTests
{
    private static readonly double Slope = Math.Atan(0.75);

    /// <summary>Two surfaces and a level roller.</summary>
    [Fact]
    public void TwoSurfaces_AreSolvedTogether() => Assert.Equal(
        """
        # FreeBody
        - SupportHolds Support 0 SupportPlace0[0] Unknowns [N0]
        - SupportHolds Support 1 SupportPlace1[2] Unknowns [V1]
        - SupportHolds Support 2 SupportPlace2[6] Unknowns [N2]
        - Count Unknowns [N0, V1, N2] Hinges 0 CountsAlong Equations 3 IsTied DegreeAlong 0 DegreeAcross 0 Degree 0
        # Loads
        LoadForce0.only = 1000 N Down of Whole Index 0 at SupportPlace1[2]
        LoadAlong1.only = 300 N Right of Whole Index 1 at 4
        # Together
        - SolvedTogether Unknowns [V0, V1, V2]
        - VerticalRow SupportPlace0[0] SupportPlace2[6]
        ? = LoadForce0.only[1000] = 1000 N of RightSide
        - MomentsAbout SupportPlace0[0] DropsOut [V0]
        ? = LoadForce0.only[1000] * SupportPlace1[2] = 2000 Nm Clockwise of OfLoad Index 0 Part -1
        V0 turns None
        V1 turns CounterClockwise by 2 m
        V2 turns CounterClockwise by 6 m
        ? = [2000] = 2000 Nm of RightSide
        - HorizontalRow
        - PushesSquare Support 0 RisesRight
        SurfaceSine0 = sin(Surface0[0.643501]) = 0.6
        SurfaceCosine0 = cos(Surface0[0.643501]) = 0.8
        SurfaceTangent0 = SurfaceSine0 / SurfaceCosine0 = 0.75
        - PushesSquare Support 2
        SurfaceSine2 = sin(Surface2[0.643501]) = 0.6
        SurfaceCosine2 = cos(Surface2[0.643501]) = 0.8
        SurfaceTangent2 = SurfaceSine2 / SurfaceCosine2 = 0.75
        ? = -LoadAlong1.only[300] = -300 N of RightSide
        (1) 1 V0 + 1 V1 + 1 V2 = [1000]
        (2) SupportPlace1[2] V1 + SupportPlace2[6] V2 = [2000]
        (3) (-SurfaceTangent0) V0 + SurfaceTangent2 V2 = [-300]
        (2) V1 = [2000] / SupportPlace1[2] = 1000 N, less SupportPlace2[6] / SupportPlace1[2] = 3 V2
        - PutsInto V1 Row 1
        ? = 1 - [3] = -2 of Coefficient V2
        ? = [1000] - [1000] = 0 N of RightSide
        (1) 1 V0 + [-2] V2 = [0]
        (1) V0 = [1000] - [1000] = 0 N, less 1 - [3] = -2 V2
        - PutsInto V0 Row 3
        ? = SurfaceTangent2 - ((-SurfaceTangent0) * [-2]) = -0.75 of Coefficient V2
        ? = [-300] - ((-SurfaceTangent0) * [0]) = -300 N of RightSide
        (3) [-0.75] V2 = [-300]
        V2 = [-300] / [-0.75] = 400 N
        V0 = [0] - ([-2] * V2) = 800 N
        V1 = [1000] - ([3] * V2) = -200 N
        # Slope Support 0
        N0 = V0 / SurfaceCosine0 = 1000 N
        H0 = -(N0 * SurfaceSine0) = -600 N
        # Slope Support 2
        N2 = V2 / SurfaceCosine2 = 500 N
        H2 = N2 * SurfaceSine2 = 300 N
        # Proof SupportPlace2[6]
        - MomentsClose SupportPlace2[6]
        - PassesThrough Actors [Named V2]
        ? = V0 * SupportPlace2[6] = 4800 Nm Clockwise of Named V0
        ? = |V1| * (SupportPlace2[6] - SupportPlace1[2]) = 800 Nm CounterClockwise of Named V1
        ? = LoadForce0.only[1000] * (SupportPlace2[6] - SupportPlace1[2]) = 4000 Nm CounterClockwise of OfLoad Index 0 Part -1
        ? closes -[4800] + [800] + [4000] = 0 Nm of 9600
        - ForcesClose
        ? closes V0 + V1 + V2 - LoadForce0.only[1000] = 0 N of 2400
        - ForcesClose IsAlong
        ? closes H0 + H2 + LoadAlong1.only[300] = 0 N of 1200
        # Reactions
        - Reactions
        # AlongTheBeam
        - Jumps SupportPlace0[0] HasForces
        ShearRight0 = ShearLeft0 + V0 = 800 N
        - Stretch SupportPlace0[0] SupportPlace1[2] Nothing IsFirst
        SectionMomentLeft1 = SectionMomentLeft0 + ShearRight0 * SupportPlace1[2] = 1600 Nm
        - Jumps SupportPlace1[2] HasForces
        ShearRight1 = ShearRight0 + V1 - LoadForce0.only[1000] = -400 N
        - Stretch SupportPlace1[2] SupportPlace2[6] Nothing
        StretchLength2 = SupportPlace2[6] - SupportPlace1[2] = 4 m
        SectionMomentLeft2 = SectionMomentLeft1 + ShearRight1 * StretchLength2 = 0 Nm
        - Jumps SupportPlace2[6] HasForces
        ShearRight2 = ShearRight1 + V2 = 0 N
        - EndsWithNothing
        ShearRight2 closes ShearRight2 = 0 N of 800
        SectionMomentLeft2 closes SectionMomentLeft2 = 0 Nm of 1600
        | 0: V 0|800 M 0
        | 2: V 800|-400 M 1600
        | 6: V -400|0 M 0
        - AxialForces
        AxialRight0 = -H0 = 600 N at SupportPlace0[0]
        AxialRight1 = AxialRight0 - LoadAlong1.only[300] = 300 N at 4
        AxialRight2 = AxialRight1 - H2 = 0 N at SupportPlace2[6]
        = Whole
        0: H -600 N V 800 N N 1000 N
        1: V -200 N
        2: H 300 N V 400 N N 500 N
        """,
        Trace(Beam(
            6,
            [Support.Roller(0, Slope), Support.Roller(2), Support.Roller(6, -Slope)],
            [new Load.Point(2, 1000), new Load.Point(4, 0, 300)])));

    [Fact]
    public void TwoSurfaces_OneHeldAgainstTurning() => Assert.Equal(
        """
        # FreeBody
        - SupportHolds Support 0 SupportPlace0[0] Unknowns [N0, C0]
        - SupportHolds Support 1 SupportPlace1[6] Unknowns [N1]
        - Count Unknowns [N0, C0, N1] Hinges 0 CountsAlong Equations 3 IsTied DegreeAlong 0 DegreeAcross 0 Degree 0
        # Together
        - SolvedTogether Unknowns [V0, C0, V1]
        - VerticalRow SupportPlace0[0] SupportPlace1[6]
        ? = LoadForce0.only[1000] = 1000 N of RightSide
        - MomentsAbout SupportPlace0[0] DropsOut [V0]
        ? = LoadForce0.only[1000] * 2 = 2000 Nm Clockwise of OfLoad Index 0 Part -1
        ? = LoadCouple1.only[120] = 120 Nm CounterClockwise of OfLoad Index 1 Part -1
        V0 turns None
        C0 turns CounterClockwise
        V1 turns CounterClockwise by 6 m
        ? = [2000] - [120] = 1880 Nm of RightSide
        - HorizontalRow
        - PushesSquare Support 0
        SurfaceSine0 = sin(Surface0[0.643501]) = 0.6
        SurfaceCosine0 = cos(Surface0[0.643501]) = 0.8
        SurfaceTangent0 = SurfaceSine0 / SurfaceCosine0 = 0.75
        - PushesSquare Support 1 RisesRight
        SurfaceSine1 = sin(Surface1[0.643501]) = 0.6
        SurfaceCosine1 = cos(Surface1[0.643501]) = 0.8
        SurfaceTangent1 = SurfaceSine1 / SurfaceCosine1 = 0.75
        ? = 0 N of RightSide
        (1) 1 V0 + 1 V1 = [1000]
        (2) 1 C0 + SupportPlace1[6] V1 = [1880]
        (3) SurfaceTangent0 V0 + (-SurfaceTangent1) V1 = [0]
        (1) V0 = LoadForce0.only[1000] = 1000 N, less 1 V1
        - PutsInto V0 Row 3
        ? = (-SurfaceTangent1) - SurfaceTangent0 = -1.5 of Coefficient V1
        ? = [0] - (SurfaceTangent0 * [1000]) = -750 N of RightSide
        (3) [-1.5] V1 = [-750]
        V1 = [-750] / [-1.5] = 500 N
        - PutsInto V1 Row 2
        ? = [1880] - (SupportPlace1[6] * V1) = -1120 Nm of RightSide
        (2) 1 C0 = [-1120]
        C0 = [1880] - (SupportPlace1[6] * V1) = -1120 Nm
        V0 = [1000] - V1 = 500 N
        # Slope Support 0
        N0 = V0 / SurfaceCosine0 = 625 N
        H0 = N0 * SurfaceSine0 = 375 N
        # Slope Support 1
        N1 = V1 / SurfaceCosine1 = 625 N
        H1 = -(N1 * SurfaceSine1) = -375 N
        # Proof SupportPlace1[6]
        - MomentsClose SupportPlace1[6]
        - PassesThrough Actors [Named V1]
        ? = V0 * SupportPlace1[6] = 3000 Nm Clockwise of Named V0
        ? = |C0| = 1120 Nm Clockwise of Named C0
        ? = LoadForce0.only[1000] * (SupportPlace1[6] - 2) = 4000 Nm CounterClockwise of OfLoad Index 0 Part -1
        ? = LoadCouple1.only[120] = 120 Nm CounterClockwise of OfLoad Index 1 Part -1
        ? closes -[3000] - [1120] + [4000] + [120] = 0 Nm of 8240
        - ForcesClose
        ? closes V0 + V1 - LoadForce0.only[1000] = 0 N of 2000
        - ForcesClose IsAlong
        ? closes H0 + H1 = 0 N of 750
        = Whole
        0: H 375 N V 500 N C -1120 Nm N 625 N
        1: H -375 N V 500 N N 625 N
        """,
        Trace(
            Beam(
                6,
                [Support.Roller(0, -Slope) with { Rotation = Restraint.Held }, Support.Roller(6, Slope)],
                [new Load.Point(2, 1000), new Load.Couple(3, 120)]),
            "FreeBody", "Together", "Slope", "Proof", HandTrace.Found));

    private static string Trace(BeamModel model, params string[] steps) => HandTrace.Of(HandAgreement.Work(model), steps);
}
