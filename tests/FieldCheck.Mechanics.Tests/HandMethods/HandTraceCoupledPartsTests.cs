using FieldCheck.Mechanics.Model;
using static FieldCheck.Mechanics.Tests.Solving.Beams;

namespace FieldCheck.Mechanics.Tests.HandMethods;

/// <summary>
/// Beams of parts that only sloped surfaces hold lengthways, of 3 in 4: tangent 0.75. Worked apart: two sums for each part and the
/// horizontal one, solved by elimination.
/// </summary>
public sealed class HandTraceCoupledPartsTests
{
    private static readonly double Slope = Math.Atan(0.75);

    /// <summary>Of the left part statics finds the push; its horizontal part goes into the row of the others.</summary>
    [Fact]
    public void OneFoundBefore_IsKnownInTheHorizontalRow() => Assert.Equal(
        """
        # Part SupportPlace0[0] HingePlace0[2]
        - PartUnknowns Unknowns [V0, G0]
        - MomentsAbout SupportPlace0[0] DropsOut [V0]
        ? = LoadForce0.only[400] * 1 = 400 Nm Clockwise of OfLoad Index 0 Part -1
        V0 turns None
        G0 turns CounterClockwise by 2 m
        ? = -[400] = -400 Nm of Together
        HingePlace0[2] G0 + [-400] = 0
        G0 = (-[-400]) / HingePlace0[2] = 200 N
        - VerticalSum V0
        V0 = LoadForce0.only[400] - G0 = 200 N
        # Together
        - SolvedTogether Unknowns [V1, V2, V3]
        - VerticalRow HingePlace0[2] SupportPlace3[6]
        ? = G0 = 200 N of RightSide
        - MomentsAbout SupportPlace1[3] DropsOut [V1]
        ? = G0 * (SupportPlace1[3] - HingePlace0[2]) = 200 Nm CounterClockwise of Named G0
        V1 turns None
        V2 turns CounterClockwise by SupportPlace2[5] - SupportPlace1[3] = 2 m
        V3 turns CounterClockwise by SupportPlace3[6] - SupportPlace1[3] = 3 m
        ? = -[200] = -200 Nm of RightSide
        - HorizontalRow
        - PushesSquare Support 0 RisesRight
        SurfaceSine0 = sin(Surface0[0.643501]) = 0.6
        SurfaceCosine0 = cos(Surface0[0.643501]) = 0.8
        SurfaceTangent0 = SurfaceSine0 / SurfaceCosine0 = 0.75
        - PushesSquare Support 2
        SurfaceSine2 = sin(Surface2[0.643501]) = 0.6
        SurfaceCosine2 = cos(Surface2[0.643501]) = 0.8
        SurfaceTangent2 = SurfaceSine2 / SurfaceCosine2 = 0.75
        ? = SurfaceTangent0 * V0 = 150 N of RightSide
        (1) 1 V1 + 1 V2 + 1 V3 = [200]
        (2) [2] V2 + [3] V3 = [-200]
        (3) SurfaceTangent2 V2 = [150]
        V2 = [150] / SurfaceTangent2 = 200 N
        - PutsInto V2 Row 1
        ? = [200] - V2 = 0 N of RightSide
        (1) 1 V1 + 1 V3 = [0]
        - PutsInto V2 Row 2
        ? = [-200] - ([2] * V2) = -600 Nm of RightSide
        (2) [3] V3 = [-600]
        V3 = [-600] / [3] = -200 N
        - PutsInto V3 Row 1
        ? = [0] - V3 = 200 N of RightSide
        (1) 1 V1 = [200]
        V1 = [0] - V3 = 200 N
        # Slope Support 0
        N0 = V0 / SurfaceCosine0 = 250 N
        H0 = -(N0 * SurfaceSine0) = -150 N
        # Slope Support 2
        N2 = V2 / SurfaceCosine2 = 250 N
        H2 = N2 * SurfaceSine2 = 150 N
        = Whole
        0: H -150 N V 200 N N 250 N
        1: V 200 N
        2: H 150 N V 200 N N 250 N
        3: V -200 N
        """,
        Trace(
            Beam(
                6,
                [Support.Roller(0, Slope), Support.Roller(3), Support.Roller(5, -Slope), Support.Roller(6)],
                [new Load.Point(1, 400)],
                [2]),
            "Part", "Together", "Slope", "Along", HandTrace.Found));

    /// <summary>The same with both surfaces turned round: what acts across is the same, what acts along the other way.</summary>
    [Fact]
    public void OneFoundBefore_FallsToTheRight() => Assert.Equal(
        """
        # Slope Support 0
        N0 = V0 / SurfaceCosine0 = 250 N
        H0 = N0 * SurfaceSine0 = 150 N
        # Slope Support 2
        N2 = V2 / SurfaceCosine2 = 250 N
        H2 = -(N2 * SurfaceSine2) = -150 N
        = Whole
        0: H 150 N V 200 N N 250 N
        1: V 200 N
        2: H -150 N V 200 N N 250 N
        3: V -200 N
        """,
        Trace(
            Beam(
                6,
                [Support.Roller(0, -Slope), Support.Roller(3), Support.Roller(5, Slope), Support.Roller(6)],
                [new Load.Point(1, 400)],
                [2]),
            "Slope", HandTrace.Found));

    /// <summary>The hinge force lifts the left part and presses the right one.</summary>
    [Fact]
    public void TwoSurfacesInTwoParts_AreSolvedTogether() => Assert.Equal(
        """
        # FreeBody
        - SupportHolds Support 0 SupportPlace0[0] Unknowns [N0]
        - SupportHolds Support 1 SupportPlace1[2] Unknowns [V1]
        - SupportHolds Support 2 SupportPlace2[4] Unknowns [N2]
        - SupportHolds Support 3 SupportPlace3[6] Unknowns [V3]
        - HingeTurns Hinge 0 HingePlace0[3]
        - Count Unknowns [N0, V1, N2, V3] Hinges 1 CountsAlong Equations 4 IsTied DegreeAlong 0 DegreeAcross 0 Degree 0
        # Together
        - SolvedTogether Unknowns [V0, V1, G0, V2, V3]
        - VerticalRow SupportPlace0[0] HingePlace0[3]
        ? = LoadForce0.only[600] = 600 N of RightSide
        - MomentsAbout SupportPlace0[0] DropsOut [V0]
        ? = LoadForce0.only[600] * 1 = 600 Nm Clockwise of OfLoad Index 0 Part -1
        V0 turns None
        V1 turns CounterClockwise by 2 m
        G0 turns CounterClockwise by 3 m
        ? = [600] = 600 Nm of RightSide
        - VerticalRow HingePlace0[3] SupportPlace3[6]
        ? = 0 N of RightSide
        - MomentsAbout SupportPlace2[4] DropsOut [V2]
        V2 turns None
        V3 turns CounterClockwise by SupportPlace3[6] - SupportPlace2[4] = 2 m
        G0 turns CounterClockwise by SupportPlace2[4] - HingePlace0[3] = 1 m
        ? = 0 Nm of RightSide
        - HorizontalRow
        - PushesSquare Support 0 RisesRight
        SurfaceSine0 = sin(Surface0[0.643501]) = 0.6
        SurfaceCosine0 = cos(Surface0[0.643501]) = 0.8
        SurfaceTangent0 = SurfaceSine0 / SurfaceCosine0 = 0.75
        - PushesSquare Support 2
        SurfaceSine2 = sin(Surface2[0.643501]) = 0.6
        SurfaceCosine2 = cos(Surface2[0.643501]) = 0.8
        SurfaceTangent2 = SurfaceSine2 / SurfaceCosine2 = 0.75
        ? = 0 N of RightSide
        (1) 1 V0 + 1 V1 + 1 G0 = [600]
        (2) SupportPlace1[2] V1 + HingePlace0[3] G0 = [600]
        (3) 1 V2 + 1 V3 + (-1) G0 = [0]
        (4) [2] V3 + [1] G0 = [0]
        (5) (-SurfaceTangent0) V0 + SurfaceTangent2 V2 = [0]
        (2) V1 = [600] / SupportPlace1[2] = 300 N, less HingePlace0[3] / SupportPlace1[2] = 1.5 G0
        - PutsInto V1 Row 1
        ? = 1 - [1.5] = -0.5 of Coefficient G0
        ? = [600] - [300] = 300 N of RightSide
        (1) 1 V0 + [-0.5] G0 = [300]
        (1) V0 = [600] - [300] = 300 N, less 1 - [1.5] = -0.5 G0
        - PutsInto V0 Row 5
        ? = -((-SurfaceTangent0) * [-0.5]) = -0.375 of Coefficient G0
        ? = [0] - ((-SurfaceTangent0) * [300]) = 225 N of RightSide
        (5) [-0.375] G0 + SurfaceTangent2 V2 = [225]
        (4) V3 = [0] / [2] = 0 N, less [1] / [2] = 0.5 G0
        - PutsInto V3 Row 3
        ? = (-1) - [0.5] = -1.5 of Coefficient G0
        ? = [0] - [0] = 0 N of RightSide
        (3) 1 V2 + [-1.5] G0 = [0]
        (3) V2 = [0] - [0] = 0 N, less (-1) - [0.5] = -1.5 G0
        - PutsInto V2 Row 5
        ? = [-0.375] - (SurfaceTangent2 * [-1.5]) = 0.75 of Coefficient G0
        ? = [225] - (SurfaceTangent2 * [0]) = 225 N of RightSide
        (5) [0.75] G0 = [225]
        G0 = [225] / [0.75] = 300 N
        V2 = [0] - ([-1.5] * G0) = 450 N
        V3 = [0] - ([0.5] * G0) = -150 N
        V0 = [300] - ([-0.5] * G0) = 450 N
        V1 = [300] - ([1.5] * G0) = -150 N
        # Slope Support 0
        N0 = V0 / SurfaceCosine0 = 562.5 N
        H0 = -(N0 * SurfaceSine0) = -337.5 N
        # Slope Support 2
        N2 = V2 / SurfaceCosine2 = 562.5 N
        H2 = N2 * SurfaceSine2 = 337.5 N
        = Whole
        0: H -337.5 N V 450 N N 562.5 N
        1: V -150 N
        2: H 337.5 N V 450 N N 562.5 N
        3: V -150 N
        """,
        Trace(
            Beam(
                6,
                [Support.Roller(0, Slope), Support.Roller(2), Support.Roller(4, -Slope), Support.Roller(6)],
                [new Load.Point(1, 600)],
                [3]),
            "FreeBody", "Together", "Slope", HandTrace.Found));

    private static string Trace(BeamModel model, params string[] steps) => HandTrace.Of(HandAgreement.Work(model), steps);
}
