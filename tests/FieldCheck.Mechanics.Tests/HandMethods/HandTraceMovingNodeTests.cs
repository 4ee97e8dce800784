using FieldCheck.Mechanics.Model;
using static FieldCheck.Mechanics.Tests.Solving.Beams;

namespace FieldCheck.Mechanics.Tests.HandMethods;

/// <summary>
/// Three-moment workings where nodes move: hinges, springs, supports that settle or are turned. Reactions were worked apart from the
/// stiffness of each bay and the balance of each node, in fractions.
/// </summary>
public sealed class HandTraceMovingNodeTests
{
    /// <summary>A hinge in the middle of a clamped span moves; couples beside it are the moments there.</summary>
    [Fact]
    public void HingeInAClampedSpan() => Holds(
        """
        # ThreeMoments SupportPlace0[0] SupportPlace1[6] Degree 1
        BayLength0.1 = HingePlace0[3] = 3 m
        BayLength1.2 = SupportPlace1[6] - HingePlace0[3] = 3 m
        - HingeHasNoMoment Hinge 0 HasCouples
        MomentLeft1 = LoadCouple0.only[30] + LoadCouple1.only[12] = 42 Nm
        MomentRight1 = -LoadCouple2.only[50] - LoadCouple3.only[16] = -66 Nm
        - ThreeMomentRow HasMovements
        - TurnIsHeld Node 0 Other 1
        - LoadTermOf Left 0 Right 1 Rules [Point]
        FromBayRight4.only = HingePlace0[3] - 2 = 1 m
        LoadTermLeft0.1 = (LoadForce4.only[90] * FromBayRight4.only * (BayLength0.1^2 - FromBayRight4.only^2)) / BayLength0.1 = 240 N1m2
        ? = 2 * BayLength0.1 = 6 m of Coefficient SupportMoment0
        ? = 6 / BayLength0.1 = 2 N0m-1 of Coefficient ScaledMovement1
        ? = -(BayLength0.1 * MomentLeft1) - LoadTermLeft0.1 = -366 N1m2 of RightSide
        (1) [6] SupportMoment0 + [2] ScaledMovement1 = [-366]
        - NodeBalance Node 1
        - SimpleSpan Left 0 Right 1
        SimpleLeft0.1 = (LoadForce4.only[90] * FromBayRight4.only) / BayLength0.1 = 30 N
        SimpleRight0.1 = LoadForce4.only[90] - SimpleLeft0.1 = 60 N
        ? = -(1 / BayLength0.1) = -0.333333 N0m-1 of Coefficient SupportMoment0
        ? = -(1 / BayLength1.2) = -0.333333 N0m-1 of Coefficient SupportMoment2
        ? = -(MomentLeft1 / BayLength0.1) + SimpleRight0.1 - (MomentRight1 / BayLength1.2) = 68 N of RightSide
        (2) [-0.333333] SupportMoment0 + [-0.333333] SupportMoment2 = [68]
        - TurnIsHeld Node 2 Other 1 AtRight
        ? = 2 * BayLength1.2 = 6 m of Coefficient SupportMoment2
        ? = 6 / BayLength1.2 = 2 N0m-1 of Coefficient ScaledMovement1
        ? = -(BayLength1.2 * MomentRight1) = 198 N1m2 of RightSide
        (3) [6] SupportMoment2 + [2] ScaledMovement1 = [198]
        (1) SupportMoment0 = [-366] / [6] = -61 Nm, less [2] / [6] = 0.333333 N0m-2 ScaledMovement1
        - PutsInto SupportMoment0 Row 2
        ? = -([-0.333333] * [0.333333]) = 0.111111 N0m-3 of Coefficient ScaledMovement1
        ? = [68] - ([-0.333333] * [-61]) = 47.6667 N of RightSide
        (2) [0.111111] ScaledMovement1 + [-0.333333] SupportMoment2 = [47.6667]
        (2) ScaledMovement1 = [47.6667] / [0.111111] = 429 N1m3, less [-0.333333] / [0.111111] = -3 N0m2 SupportMoment2
        - PutsInto ScaledMovement1 Row 3
        ? = [6] - ([2] * [-3]) = 12 m of Coefficient SupportMoment2
        ? = [198] - ([2] * [429]) = -660 N1m2 of RightSide
        (3) [12] SupportMoment2 = [-660]
        SupportMoment2 = [-660] / [12] = -55 Nm
        ScaledMovement1 = [429] - ([-3] * SupportMoment2) = 264 N1m3
        SupportMoment0 = [-61] - ([0.333333] * ScaledMovement1) = -149 Nm
        # ReactionsFromMoments
        - EndForces HasCouples HasHinges
        MomentShare0.1 = (MomentLeft1 - SupportMoment0) / BayLength0.1 = 63.6667 N
        MomentShare1.2 = (SupportMoment2 - MomentRight1) / BayLength1.2 = 3.66667 N
        V0 = SimpleLeft0.1 + MomentShare0.1 = 93.6667 N
        C0 = -SupportMoment0 = 149 Nm
        G0 = MomentShare1.2 = 3.66667 N
        Rigidity0.1 = 2E+06 N1m2
        NodeMovement1 = ScaledMovement1 / Rigidity0.1[2E+06] = 0.000132 m
        V1 = -MomentShare1.2 = -3.66667 N
        C1 = SupportMoment2 = -55 Nm
        = Whole
        0: H 0 N V 93.6667 N C 149 Nm
        1: H 0 N V -3.66667 N C -55 Nm
        """,
        Beam(
            6,
            [Support.Fixed(0), Support.Fixed(6)],
            [
                new Load.Couple(3, 30), new Load.Couple(3, 12), new Load.Couple(3, 50, Side.Right), new Load.Couple(3, 16, Side.Right),
                new Load.Point(2, 90),
            ],
            [3]));

    /// <summary>A roller stands under the hinge, which moves nowhere; a spring under the other.</summary>
    [Fact]
    public void HingesOverSupports() => Holds(
        """
        # ThreeMoments SupportPlace0[0] SupportPlace4[8] Degree 3
        BayLength0.1 = SupportPlace1[2] = 2 m
        BayLength1.2 = SupportPlace2[4] - SupportPlace1[2] = 2 m
        BayLength2.3 = SupportPlace3[6] - SupportPlace2[4] = 2 m
        BayLength3.4 = SupportPlace4[8] - SupportPlace3[6] = 2 m
        - HingeHasNoMoment Hinge 0 IsHeld
        - HingeHasNoMoment Hinge 1
        - ThreeMomentRow HasMovements
        - TurnIsHeld Node 0 Other 1
        - LoadTermOf Left 0 Right 1 Rules [Point]
        FromBayRight0.only = SupportPlace1[2] - 1 = 1 m
        LoadTermLeft0.1 = (LoadForce0.only[64] * FromBayRight0.only * (BayLength0.1^2 - FromBayRight0.only^2)) / BayLength0.1 = 96 N1m2
        ? = 2 * BayLength0.1 = 4 m of Coefficient SupportMoment0
        ? = -LoadTermLeft0.1 = -96 N1m2 of RightSide
        (1) [4] SupportMoment0 = [-96]
        - TurnsAgree Left 1 Node 2 Right 3
        ? = 2 * (BayLength1.2 + BayLength2.3) = 8 m of Coefficient SupportMoment2
        ? = 6 / BayLength2.3 = 3 N0m-1 of Coefficient ScaledMovement3
        ? = 0 N1m2 of RightSide
        (2) [8] SupportMoment2 + [3] ScaledMovement3 = [0]
        - NodeBalance Node 3 HasSpring
        Rigidity0.1 = 2E+06 N1m2
        ? = -(1 / BayLength2.3) = -0.5 N0m-1 of Coefficient SupportMoment2
        ? = -(1 / BayLength3.4) = -0.5 N0m-1 of Coefficient SupportMoment4
        ? = Stiffness3[1E+06] / Rigidity0.1[2E+06] = 0.5 N0m-3 of Coefficient ScaledMovement3
        (3) [-0.5] SupportMoment2 + [-0.5] SupportMoment4 + [0.5] ScaledMovement3 = LoadForce1.only[10]
        - TurnIsHeld Node 4 Other 3 AtRight
        ? = 2 * BayLength3.4 = 4 m of Coefficient SupportMoment4
        ? = 6 / BayLength3.4 = 3 N0m-1 of Coefficient ScaledMovement3
        ? = 0 N1m2 of RightSide
        (4) [4] SupportMoment4 + [3] ScaledMovement3 = [0]
        SupportMoment0 = [-96] / [4] = -24 Nm
        (2) SupportMoment2 = [0] / [8] = 0 Nm, less [3] / [8] = 0.375 N0m-2 ScaledMovement3
        - PutsInto SupportMoment2 Row 3
        ? = [0.5] - ([-0.5] * [0.375]) = 0.6875 N0m-3 of Coefficient ScaledMovement3
        ? = LoadForce1.only[10] - ([-0.5] * [0]) = 10 N of RightSide
        (3) [-0.5] SupportMoment4 + [0.6875] ScaledMovement3 = [10]
        (3) ScaledMovement3 = [10] / [0.6875] = 14.5455 N1m3, less [-0.5] / [0.6875] = -0.727273 N0m2 SupportMoment4
        - PutsInto ScaledMovement3 Row 4
        ? = [4] - ([3] * [-0.727273]) = 6.18182 m of Coefficient SupportMoment4
        ? = [0] - ([3] * [14.5455]) = -43.6364 N1m2 of RightSide
        (4) [6.18182] SupportMoment4 = [-43.6364]
        SupportMoment4 = [-43.6364] / [6.18182] = -7.05882 Nm
        ScaledMovement3 = [14.5455] - ([-0.727273] * SupportMoment4) = 9.41176 N1m3
        SupportMoment2 = [0] - ([0.375] * ScaledMovement3) = -3.52941 Nm
        # ReactionsFromMoments
        - EndForces HasCouples HasHinges
        - SimpleSpan Left 0 Right 1
        SimpleLeft0.1 = (LoadForce0.only[64] * FromBayRight0.only) / BayLength0.1 = 32 N
        SimpleRight0.1 = LoadForce0.only[64] - SimpleLeft0.1 = 32 N
        MomentShare0.1 = (-SupportMoment0) / BayLength0.1 = 12 N
        MomentShare1.2 = SupportMoment2 / BayLength1.2 = -1.76471 N
        MomentShare2.3 = (-SupportMoment2) / BayLength2.3 = 1.76471 N
        MomentShare3.4 = SupportMoment4 / BayLength3.4 = -3.52941 N
        V0 = SimpleLeft0.1 + MomentShare0.1 = 44 N
        C0 = -SupportMoment0 = 24 Nm
        V1 = SimpleRight0.1 - MomentShare0.1 + MomentShare1.2 = 18.2353 N
        G0 = MomentShare1.2 = -1.76471 N
        V2 = -MomentShare1.2 + MomentShare2.3 = 3.52941 N
        V3 = -MomentShare2.3 + MomentShare3.4 + LoadForce1.only[10] = 4.70588 N
        G1 = MomentShare3.4 = -3.52941 N
        - SpringMoves Support 3
        NodeMovement3 = V3 / Stiffness3[1E+06] = 4.70588E-06 m
        V4 = -MomentShare3.4 = 3.52941 N
        C4 = SupportMoment4 = -7.05882 Nm
        = Whole
        0: H 0 N V 44 N C 24 Nm
        1: V 18.2353 N
        2: V 3.52941 N
        3: V 4.70588 N
        4: H 0 N V 3.52941 N C -7.05882 Nm
        """,
        Beam(
            8,
            [Support.Fixed(0), Support.Roller(2), Support.Roller(4), Support.Spring(6, 1e6), Support.Fixed(8)],
            [new Load.Point(1, 64), new Load.Point(6, 10)],
            [2, 6]));

    /// <summary>The clamp is turned and a couple stands at it; the other support settles and a spring turns with it.</summary>
    [Fact]
    public void TurnedClampAndSettledSupport() => Holds(
        """
        # ThreeMoments SupportPlace0[0] SupportPlace1[3] Degree 2
        BayLength0.1 = SupportPlace1[3] = 3 m
        - NodeSettles Node 1
        Rigidity0.1 = 2E+06 N1m2
        ScaledMovement1 = Rigidity0.1[2E+06] * Settlement1[0.002] = 4000 N1m3
        TurnLength1 = (6 * Rigidity0.1[2E+06]) / TurnStiffness1[4E+06] = 3 m
        - ThreeMomentRow HasMovements
        - TurnIsHeld Node 0 Other 1 ImposedTurn0[0.001]
        - LoadTermOf Left 0 Right 1 Rules [Couple]
        FromBayRight2 = SupportPlace1[3] - 1 = 2 m
        LoadTermLeft0.1 = (LoadCouple2.only[30] * (BayLength0.1^2 - (3 * FromBayRight2^2))) / BayLength0.1 = -30 N1m2
        ? = 2 * BayLength0.1 = 6 m of Coefficient MomentRight0
        ? = -((6 * ScaledMovement1) / BayLength0.1) - LoadTermLeft0.1 - (6 * Rigidity0.1[2E+06] * ImposedTurn0[0.001]) = -19970 N1m2 of RightSide
        (1) [6] MomentRight0 + BayLength0.1 MomentLeft1 = [-19970]
        - TurnSpring Node 1 Other 0 AtRight TurnStiffness1[4E+06] HasCouple
        - LoadTermOf Left 0 Right 1 AtRight Rules [Couple]
        LoadTermRight0.1 = -((LoadCouple2.only[30] * (BayLength0.1^2 - (3 * 1^2))) / BayLength0.1) = -60 N1m2
        ? = 2 * BayLength0.1 + TurnLength1 = 9 m of Coefficient MomentLeft1
        ? = (6 * ScaledMovement1) / BayLength0.1 - LoadTermRight0.1 + TurnLength1 * LoadCouple1.only[60] = 8240 N1m2 of RightSide
        (2) BayLength0.1 MomentRight0 + [9] MomentLeft1 = [8240]
        (1) MomentRight0 = [-19970] / [6] = -3328.33 Nm, less BayLength0.1 / [6] = 0.5 MomentLeft1
        - PutsInto MomentRight0 Row 2
        ? = [9] - (BayLength0.1 * [0.5]) = 7.5 m of Coefficient MomentLeft1
        ? = [8240] - (BayLength0.1 * [-3328.33]) = 18225 N1m2 of RightSide
        (2) [7.5] MomentLeft1 = [18225]
        MomentLeft1 = [18225] / [7.5] = 2430 Nm
        MomentRight0 = [-3328.33] - ([0.5] * MomentLeft1) = -4543.33 Nm
        # ReactionsFromMoments
        - EndForces HasCouples
        - SimpleSpan Left 0 Right 1
        SimpleLeft0.1 = LoadCouple2.only[30] / BayLength0.1 = 10 N
        SimpleRight0.1 = -SimpleLeft0.1 = -10 N
        MomentShare0.1 = (MomentLeft1 - MomentRight0) / BayLength0.1 = 2324.44 N
        V0 = SimpleLeft0.1 + MomentShare0.1 = 2334.44 N
        C0 = -LoadCouple0.only[100] - MomentRight0 = 4443.33 Nm
        V1 = SimpleRight0.1 - MomentShare0.1 = -2334.44 N
        C1 = MomentLeft1 - LoadCouple1.only[60] = 2370 Nm
        = Whole
        0: H 0 N V 2334.44 N C 4443.33 Nm
        1: V -2334.44 N C 2370 Nm
        """,
        Beam(
            3,
            [
                Support.Fixed(0) with { ImposedRotation = 0.001 },
                Support.Roller(3) with { Settlement = 0.002, Rotation = new Restraint.Spring(4e6) },
            ],
            [new Load.Couple(0, 100), new Load.Couple(3, 60), new Load.Couple(1, 30)]));

    /// <summary>The foot of the spring settles; a spring turns with the left end, which nothing loads.</summary>
    [Fact]
    public void SpringWhoseFootSettles() => Holds(
        """
        # ThreeMoments SupportPlace0[0] SupportPlace2[6] Degree 2
        BayLength0.1 = SupportPlace1[3] = 3 m
        BayLength1.2 = SupportPlace2[6] - SupportPlace1[3] = 3 m
        - EndsTurnFreely Nodes [2]
        Rigidity0.1 = 2E+06 N1m2
        TurnLength0 = (6 * Rigidity0.1[2E+06]) / TurnStiffness0[4E+06] = 3 m
        - NodeSettles Node 1 HasSpring
        ScaledMovement1.1 = Rigidity0.1[2E+06] * Settlement1[0.001] = 2000 N1m3
        - ThreeMomentRow HasMovements
        - TurnSpring Node 0 Other 1 TurnStiffness0[4E+06]
        ? = 2 * BayLength0.1 + TurnLength0 = 9 m of Coefficient SupportMoment0
        ? = 6 / BayLength0.1 = 2 N0m-1 of Coefficient ScaledMovement1
        ? = 0 N1m2 of RightSide
        (1) [9] SupportMoment0 + BayLength0.1 SupportMoment1 + [2] ScaledMovement1 = [0]
        - TurnsAgree Left 0 Node 1 Right 2
        ? = 2 * (BayLength0.1 + BayLength1.2) = 12 m of Coefficient SupportMoment1
        ? = -(6 * (1 / BayLength0.1 + 1 / BayLength1.2)) = -4 N0m-1 of Coefficient ScaledMovement1
        ? = 0 N1m2 of RightSide
        (2) BayLength0.1 SupportMoment0 + [12] SupportMoment1 + [-4] ScaledMovement1 = [0]
        - NodeBalance Node 1 HasSpring Settles
        ? = -(1 / BayLength0.1) = -0.333333 N0m-1 of Coefficient SupportMoment0
        ? = 1 / BayLength0.1 + 1 / BayLength1.2 = 0.666667 N0m-1 of Coefficient SupportMoment1
        ? = Stiffness1[1E+06] / Rigidity0.1[2E+06] = 0.5 N0m-3 of Coefficient ScaledMovement1
        ? = (Stiffness1[1E+06] / Rigidity0.1[2E+06]) * ScaledMovement1.1 + LoadForce0.only[600] = 1600 N of RightSide
        (3) [-0.333333] SupportMoment0 + [0.666667] SupportMoment1 + [0.5] ScaledMovement1 = [1600]
        (1) SupportMoment0 = [0] / [9] = 0 Nm, less BayLength0.1 / [9] = 0.333333 SupportMoment1 + [2] / [9] = 0.222222 N0m-2 ScaledMovement1
        - PutsInto SupportMoment0 Row 2
        ? = [12] - (BayLength0.1 * [0.333333]) = 11 m of Coefficient SupportMoment1
        ? = [-4] - (BayLength0.1 * [0.222222]) = -4.66667 N0m-1 of Coefficient ScaledMovement1
        ? = [0] - (BayLength0.1 * [0]) = 0 N1m2 of RightSide
        (2) [11] SupportMoment1 + [-4.66667] ScaledMovement1 = [0]
        - PutsInto SupportMoment0 Row 3
        ? = [0.666667] - ([-0.333333] * [0.333333]) = 0.777778 N0m-1 of Coefficient SupportMoment1
        ? = [0.5] - ([-0.333333] * [0.222222]) = 0.574074 N0m-3 of Coefficient ScaledMovement1
        ? = [1600] - ([-0.333333] * [0]) = 1600 N of RightSide
        (3) [0.777778] SupportMoment1 + [0.574074] ScaledMovement1 = [1600]
        (2) SupportMoment1 = [0] / [11] = 0 Nm, less [-4.66667] / [11] = -0.424242 N0m-2 ScaledMovement1
        - PutsInto SupportMoment1 Row 3
        ? = [0.574074] - ([0.777778] * [-0.424242]) = 0.90404 N0m-3 of Coefficient ScaledMovement1
        ? = [1600] - ([0.777778] * [0]) = 1600 N of RightSide
        (3) [0.90404] ScaledMovement1 = [1600]
        ScaledMovement1 = [1600] / [0.90404] = 1769.83 N1m3
        SupportMoment1 = [0] - ([-0.424242] * ScaledMovement1) = 750.838 Nm
        SupportMoment0 = [0] - ([0.333333] * SupportMoment1) - ([0.222222] * ScaledMovement1) = -643.575 Nm
        # ReactionsFromMoments
        - EndForces HasCouples
        MomentShare0.1 = (SupportMoment1 - SupportMoment0) / BayLength0.1 = 464.804 N
        MomentShare1.2 = (-SupportMoment1) / BayLength1.2 = -250.279 N
        V0 = MomentShare0.1 = 464.804 N
        C0 = -SupportMoment0 = 643.575 Nm
        V1 = -MomentShare0.1 + MomentShare1.2 + LoadForce0.only[600] = -115.084 N
        - SpringMoves Support 1 Settles
        NodeMovement1 = V1 / Stiffness1[1E+06] + Settlement1[0.001] = 0.000884916 m
        V2 = -MomentShare1.2 = 250.279 N
        = Whole
        0: H 0 N V 464.804 N C 643.575 Nm
        1: V -115.084 N
        2: V 250.279 N
        """,
        Beam(
            6,
            [
                Support.Pin(0) with { Rotation = new Restraint.Spring(4e6) },
                Support.Spring(3, 1e6) with { Settlement = 0.001 },
                Support.Roller(6),
            ],
            [new Load.Point(3, 600)]));

    private static void Holds(string expected, BeamModel model) => Assert.Equal(
        expected,
        HandTrace.Of(HandAgreement.Work(model), "ThreeMoments", "ReactionsFromMoments", HandTrace.Found));
}
