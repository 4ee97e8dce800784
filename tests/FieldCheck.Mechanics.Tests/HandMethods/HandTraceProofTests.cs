using System.Collections.Immutable;
using FieldCheck.Mechanics.HandMethods;
using FieldCheck.Mechanics.Model;
using static FieldCheck.Mechanics.Tests.Solving.Beams;

namespace FieldCheck.Mechanics.Tests.HandMethods;

/// <summary>
/// Reactions that were found elsewhere, put to the proof. They were chosen so that they balance the loads: moments about the left end
/// and the sum of forces, worked apart.
/// </summary>
public sealed class HandTraceProofTests
{
    private static readonly double Slope = Math.Atan(0.75);

    private static readonly Support Settling = Support.Roller(3) with { Settlement = 0.01 };

    /// <summary>Of <see cref="Sloped"/>: 400 + 400 + 200 = 1000, 600 + 3 times 400 + 6 times 200 = 3000, 150 - 300 + 150 = 0.</summary>
    private static readonly ImmutableArray<GivenReaction> Balanced = [new(150, 400, 600), new(-300, 400, 0), new(150, 200, 0)];

    /// <summary>600 + 400 + 200 = 1200 and 400 times 3 + 200 times 6 = 1200 times 2.</summary>
    [Fact]
    public void Proved_SettlingAndSprungSupportsMove() => Assert.Equal(
        """
        # FreeBody
        - SupportHolds Support 0 SupportPlace0[0] Unknowns [H0, V0]
        - SupportHolds Support 1 SupportPlace1[3] Unknowns [V1]
        - SupportHolds Support 2 SupportPlace2[6] Unknowns [V2]
        - SupportHolds Support 3 SupportPlace3[6.5] Unknowns [V3]
        - SupportHolds Support 4 SupportPlace4[7] Unknowns [V4]
        - Count Unknowns [H0, V0, V1, V2, V3] Hinges 0 CountsAlong Equations 3 DegreeAlong 0 DegreeAcross 2 Degree 2
        # Loads
        LoadForce0.only = 1200 N Down of Whole Index 0 at 2
        # Compatibility
        - OutOfReach StiffnessUnknown
        H0 = 0 N
        V0 = 600 N
        - Moves Support 0 None
        V1 = 400 N
        - Moves Support 1 AsItSettles
        Movement1 = 0.01 m
        V2 = 200 N
        - Moves Support 2 ByItsSpring
        Movement2 = V2[200] / 100000 = 0.002 m
        V3 = 0 N
        - Moves Support 3 ByItsSpring
        Movement3 = V3[0] / 100000 + 0.002 = 0.002 m
        # Proof SupportPlace3[6.5]
        - MomentsClose SupportPlace3[6.5]
        - PassesThrough Actors [Named V3]
        ? = V0[600] * SupportPlace3[6.5] = 3900 Nm Clockwise of Named V0
        ? = V1[400] * (SupportPlace3[6.5] - SupportPlace1[3]) = 1400 Nm Clockwise of Named V1
        ? = V2[200] * (SupportPlace3[6.5] - SupportPlace2[6]) = 100 Nm Clockwise of Named V2
        ? = LoadForce0.only[1200] * (SupportPlace3[6.5] - 2) = 5400 Nm CounterClockwise of OfLoad Index 0 Part -1
        ? closes -[3900] - [1400] - [100] + [5400] = 0 Nm of 10800
        - ForcesClose
        ? closes V0[600] + V1[400] + V2[200] + V3[0] - LoadForce0.only[1200] = 0 N of 2400
        # Reactions
        - Reactions
        # AlongTheBeam
        - Jumps SupportPlace0[0] HasForces
        ShearRight0 = ShearLeft0 + V0[600] = 600 N
        - Stretch SupportPlace0[0] 2 Nothing IsFirst
        SectionMomentLeft1 = SectionMomentLeft0 + ShearRight0 * 2 = 1200 Nm
        - Jumps 2 HasForces
        ShearRight1 = ShearRight0 - LoadForce0.only[1200] = -600 N
        - Stretch 2 SupportPlace1[3] Nothing
        StretchLength2 = SupportPlace1[3] - 2 = 1 m
        SectionMomentLeft2 = SectionMomentLeft1 + ShearRight1 * StretchLength2 = 600 Nm
        - Jumps SupportPlace1[3] HasForces
        ShearRight2 = ShearRight1 + V1[400] = -200 N
        - Stretch SupportPlace1[3] SupportPlace2[6] Nothing
        StretchLength3 = SupportPlace2[6] - SupportPlace1[3] = 3 m
        SectionMomentLeft3 = SectionMomentLeft2 + ShearRight2 * StretchLength3 = 0 Nm
        - Jumps SupportPlace2[6] HasForces
        ShearRight3 = ShearRight2 + V2[200] = 0 N
        - Stretch SupportPlace2[6] SupportPlace3[6.5] Nothing
        StretchLength4 = SupportPlace3[6.5] - SupportPlace2[6] = 0.5 m
        SectionMomentLeft4 = SectionMomentLeft3 + ShearRight3 * StretchLength4 = 0 Nm
        - Jumps SupportPlace3[6.5] HasForces
        ShearRight4 = ShearRight3 + V3[0] = 0 N
        - Stretch SupportPlace3[6.5] SupportPlace4[7] Nothing
        StretchLength5 = SupportPlace4[7] - SupportPlace3[6.5] = 0.5 m
        SectionMomentLeft5 = SectionMomentLeft4 + ShearRight4 * StretchLength5 = 0 Nm
        - EndsWithNothing
        ShearRight4 closes ShearRight4 = 0 N of 600
        SectionMomentLeft5 closes SectionMomentLeft5 = 0 Nm of 1200
        | 0: V 0|600 M 0
        | 2: V 600|-600 M 1200
        | 3: V -600|-200 M 600
        | 6: V -200|0 M 0
        | 6.5: V 0|0 M 0
        | 7: V 0 M 0
        = Partial
        0:
        1:
        2:
        3:
        4: let go
        """,
        Trace(
            Beam(
                7,
                [
                    Support.Pin(0), Settling, Support.Spring(6, 1e5),
                    Support.Spring(6.5, 1e5) with { Settlement = 0.002 },
                    Support.Spring(7, 1e5) with { Action = SupportAction.PushesOnly },
                ],
                [new Load.Point(2, 1200)]),
            [new(0, 600, 0), new(0, 400, 0), new(0, 200, 0), new(0, 0, 0), new(0, 0, 0)],
            [false, false, false, false, true]));

    /// <summary>Pushes of 500 and 250 square to slopes of 3 in 4.</summary>
    [Fact]
    public void Proved_SlopesAndTurningSpring() => Assert.Equal(
        """
        # Compatibility
        - OutOfReach SlopesTied
        H0 = 150 N
        V0 = 400 N
        - Moves Support 0 None
        C0 = 600 Nm
        - TurnsBy Support 0
        Turn0 = C0[600] / 50000 = 0.012
        V1 = 400 N
        - PushesSquare Support 1 RisesRight
        SurfaceSine1 = sin(Surface1[0.643501]) = 0.6
        SurfaceCosine1 = cos(Surface1[0.643501]) = 0.8
        N1 = V1[400] / SurfaceCosine1 = 500 N
        H1 = -(N1 * SurfaceSine1) = -300 N
        - Moves Support 1 AlongItsSurface
        Movement1 = 0.003 m
        V2 = 200 N
        - PushesSquare Support 2
        SurfaceSine2 = sin(Surface2[0.643501]) = 0.6
        SurfaceCosine2 = cos(Surface2[0.643501]) = 0.8
        N2 = V2[200] / SurfaceCosine2 = 250 N
        H2 = N2 * SurfaceSine2 = 150 N
        - Moves Support 2 AlongItsSurface
        Movement2 = N2 / 20000 = 0.0125 m
        # Proof 1
        - MomentsClose 1
        ? = V0[400] * 1 = 400 Nm Clockwise of Named V0
        ? = C0[600] = 600 Nm CounterClockwise of Named C0
        ? = V1[400] * (SupportPlace1[3] - 1) = 800 Nm CounterClockwise of Named V1
        ? = V2[200] * (SupportPlace2[6] - 1) = 1000 Nm CounterClockwise of Named V2
        ? = LoadForce0.only[1000] * (SupportPlace1[3] - 1) = 2000 Nm Clockwise of OfLoad Index 0 Part -1
        ? closes -[400] + [600] + [800] + [1000] - [2000] = 0 Nm of 4800
        - ForcesClose
        ? closes V0[400] + V1[400] + V2[200] - LoadForce0.only[1000] = 0 N of 2000
        - ForcesClose IsAlong
        ? closes H0[150] + H1 + H2 = 0 N of 600
        """,
        Trace(Sloped(hasStiffness: true), Balanced, [false, false, false], 1, "Compatibility", "Proof"));

    /// <summary>Why the methods do not reach it: two slopes, or stiffness that is not known.</summary>
    [Theory]
    [InlineData(true, HandObstacle.SlopesTied)]
    [InlineData(false, HandObstacle.StiffnessUnknown)]
    public void Proved_SaysWhyItWasNotWorked(bool hasStiffness, HandObstacle why) => Assert.Contains(
        new HandLine.Says(new HandRemark.OutOfReach(why)),
        HandWorking.Prove(Sloped(hasStiffness), [1], Balanced, [false, false, false]).Lines);

    [Fact]
    public void Proved_AskedForEachSupport_ForFewerItIsAMistake()
    {
        BeamModel model = Beam(6, [Support.Pin(0), Support.Roller(6)], []);

        ArgumentException mistake = Assert.Throws<ArgumentException>(
            () => HandWorking.Prove(model, [1], [default], [false, false]));

        Assert.StartsWith("One reaction for each support.", mistake.Message, StringComparison.Ordinal);
    }

    private static BeamModel Sloped(bool hasStiffness) => Beam(
        [new Span(6, Rigidity, 1e9)],
        [
            Support.Pin(0) with { Rotation = new Restraint.Spring(5e4) },
            Support.Roller(3, Slope) with { Settlement = 0.003 },
            Support.Roller(6, -Slope) with { Across = new Restraint.Spring(2e4) },
        ],
        [new Load.Point(3, 1000)],
        hasAbsoluteStiffness: hasStiffness);

    private static string Trace(
        BeamModel model,
        ImmutableArray<GivenReaction> reactions,
        ImmutableArray<bool> lifted,
        double? about = null,
        params string[] steps) =>
        HandTrace.Of(HandWorking.Prove(model, [1], reactions, lifted, about), steps);
}
