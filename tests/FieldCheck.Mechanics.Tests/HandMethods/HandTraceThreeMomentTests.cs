using FieldCheck.Mechanics.Model;
using static FieldCheck.Mechanics.Tests.Solving.Beams;

namespace FieldCheck.Mechanics.Tests.HandMethods;

/// <summary>
/// Three-moment workings as they are written. Reactions were worked apart from the stiffness of each bay and the balance of each node,
/// in fractions; load terms from the integral that <see cref="ThreeMomentLoadTermTests"/> takes.
/// </summary>
public sealed class HandTraceThreeMomentTests
{
    [Fact]
    public void TwoSpansAndAnOverhang() => Holds(
        """
        # ThreeMoments SupportPlace0[0] 10 Degree 1
        BayLength0.1 = SupportPlace1[4] = 4 m
        BayLength1.2 = SupportPlace2[8] - SupportPlace1[4] = 4 m
        - OverhangMoment Node 2
        SupportMoment2 = -(LoadForce4.only[50] * (10 - SupportPlace2[8])) = -100 Nm
        - EndsTurnFreely Nodes [0]
        - MomentJumps Node 1
        - ThreeMomentRow
        - TurnsAgree Left 0 Node 1 Right 2
        - LoadTermOf Left 0 Right 1 AtRight Rules [WholeUniform]
        LoadTermRight0.1 = (LoadForce0.only * BayLength0.1^2) / 4 = 4800 N1m2
        - LoadTermOf Left 1 Right 2 Rules [Point]
        FromBayRight1.only = SupportPlace2[8] - 6 = 2 m
        LoadTermLeft1.2 = (LoadForce1.only[800] * FromBayRight1.only * (BayLength1.2^2 - FromBayRight1.only^2)) / BayLength1.2 = 4800 N1m2
        ? = 2 * (BayLength0.1 + BayLength1.2) = 16 m of Coefficient MomentLeft1
        ? = -LoadTermRight0.1 - (2 * BayLength1.2 * (-(LoadCouple2.only[100] + LoadCouple3.only[20]))) - (BayLength1.2 * SupportMoment2) - LoadTermLeft1.2 = -8240 N1m2 of RightSide
        (1) [16] MomentLeft1 = [-8240]
        MomentLeft1 = [-8240] / [16] = -515 Nm
        # ReactionsFromMoments
        - EndForces
        MomentRight1 = MomentLeft1 - (LoadCouple2.only[100] + LoadCouple3.only[20]) = -635 Nm
        - SimpleSpan Left 0 Right 1
        FromBayRight0.only = SupportPlace1[4] - LoadPlace0.only = 2 m
        SimpleLeft0.1 = (LoadForce0.only * FromBayRight0.only) / BayLength0.1 = 600 N
        SimpleRight0.1 = LoadForce0.only - SimpleLeft0.1 = 600 N
        MomentShare0.1 = MomentLeft1 / BayLength0.1 = -128.75 N
        - SimpleSpan Left 1 Right 2
        SimpleLeft1.2 = (LoadForce1.only[800] * FromBayRight1.only) / BayLength1.2 = 400 N
        SimpleRight1.2 = LoadForce1.only[800] - SimpleLeft1.2 = 400 N
        MomentShare1.2 = (SupportMoment2 - MomentRight1) / BayLength1.2 = 133.75 N
        V0 = SimpleLeft0.1 + MomentShare0.1 = 471.25 N
        V1 = SimpleRight0.1 - MomentShare0.1 + SimpleLeft1.2 + MomentShare1.2 = 1262.5 N
        V2 = SimpleRight1.2 - MomentShare1.2 + LoadForce4.only[50] = 316.25 N
        = Whole
        0: H 0 N V 471.25 N
        1: V 1262.5 N
        2: V 316.25 N
        """,
        Beam(
            10,
            [Support.Pin(0), Support.Roller(4), Support.Roller(8)],
            [Uniform(0, 4, 300), new Load.Point(6, 800), new Load.Couple(4, 100), new Load.Couple(4, 20), new Load.Point(10, 50)]));

    /// <summary>Only the stretch between the hinges is beyond statics; forces and couples at its ends are known.</summary>
    [Fact]
    public void StretchBetweenHinges() => Holds(
        """
        # ThreeMoments HingePlace0[2] HingePlace1[8] Degree 1
        BayLength2.3 = SupportPlace2[5] - SupportPlace1[3] = 2 m
        BayLength3.4 = SupportPlace3[7] - SupportPlace2[5] = 2 m
        - OverhangMoment Node 2 IsLeft
        ? = -(G0 * (SupportPlace1[3] - HingePlace0[2])) = -45 Nm of Named G0
        ? = -LoadCouple3.only[20] = -20 Nm of OfLoad Index 3 Part -1
        ? = -LoadCouple6.only[5] = -5 Nm of OfLoad Index 6 Part -1
        SupportMoment2 = [-45] + [-20] + [-5] = -70 Nm
        - OverhangMoment Node 4
        ? = -(G1 * (HingePlace1[8] - SupportPlace3[7])) = -140 Nm of Named G1
        ? = LoadCouple4.only[40] = 40 Nm of OfLoad Index 4 Part -1
        SupportMoment4 = [-140] + [40] = -100 Nm
        - ThreeMomentRow
        - TurnsAgree Left 2 Node 3 Right 4
        ? = 2 * (BayLength2.3 + BayLength3.4) = 8 m of Coefficient SupportMoment3
        ? = -(BayLength2.3 * SupportMoment2) - (BayLength3.4 * SupportMoment4) = 340 N1m2 of RightSide
        (1) [8] SupportMoment3 = [340]
        SupportMoment3 = [340] / [8] = 42.5 Nm
        # ReactionsFromMoments
        - EndForces
        MomentShare2.3 = (SupportMoment3 - SupportMoment2) / BayLength2.3 = 56.25 N
        MomentShare3.4 = (SupportMoment4 - SupportMoment3) / BayLength3.4 = -71.25 N
        V1 = MomentShare2.3 + G0 = 101.25 N
        V2 = -MomentShare2.3 + MomentShare3.4 = -127.5 N
        V3 = -MomentShare3.4 + G1 = 211.25 N
        = Whole
        0: H 0 N V 55 N
        1: V 101.25 N
        2: V -127.5 N
        3: V 211.25 N
        4: V 60 N
        """,
        Beam(
            10,
            [Support.Pin(0), Support.Roller(3), Support.Roller(5), Support.Roller(7), Support.Roller(10)],
            [
                new Load.Point(1, 100), new Load.Point(9, 200),
                new Load.Couple(2, 10), new Load.Couple(2, 20, Side.Right),
                new Load.Couple(8, 40), new Load.Couple(8, 80, Side.Right),
                new Load.Couple(2.5, 5),
            ],
            [2, 8]));

    /// <summary>Sections differ and no stiffness is known: rigidities are plain numbers.</summary>
    [Fact]
    public void ReactionsOfRatiosAlone() => Holds(
        """
        # ThreeMoments SupportPlace0[0] SupportPlace2[8] Degree 1
        BayLength0.1 = SupportPlace1[4] = 4 m
        BayLength1.2 = SupportPlace2[8] - SupportPlace1[4] = 4 m
        Rigidity0.1 = 1
        Rigidity1.2 = 2
        RigidityRatio1.2 = Rigidity0.1[1] / Rigidity1.2[2] = 0.5
        ReducedLength1.2 = RigidityRatio1.2 * BayLength1.2 = 2 m
        - EndsTurnFreely Nodes [0, 2]
        - ThreeMomentRow HasRatios
        - TurnsAgree Left 0 Node 1 Right 2
        - LoadTermOf Left 0 Right 1 AtRight Rules [Point]
        LoadTermRight0.1 = (LoadForce0.only[96] * 2 * (BayLength0.1^2 - 2^2)) / BayLength0.1 = 576 N1m2
        - LoadTermOf Left 1 Right 2 Rules [GrowsAway]
        FromBayRight1.only = SupportPlace2[8] - LoadPlace1.only = 1 m
        LoadTermLeft1.2 = (LoadForce1.only * (FromBayRight1.only * (BayLength1.2^2 - FromBayRight1.only^2 - (LoadWidth1.only^2 / 6)) - (LoadWidth1.only^3 / 135))) / BayLength1.2 = 299.25 N1m2
        ? = 2 * (BayLength0.1 + ReducedLength1.2) = 12 m of Coefficient SupportMoment1
        ? = -LoadTermRight0.1 - (RigidityRatio1.2 * LoadTermLeft1.2) = -725.625 N1m2 of RightSide
        (1) [12] SupportMoment1 = [-725.625]
        SupportMoment1 = [-725.625] / [12] = -60.4688 Nm
        # ReactionsFromMoments
        - EndForces
        - SimpleSpan Left 0 Right 1
        FromBayRight0.only = SupportPlace1[4] - 2 = 2 m
        SimpleLeft0.1 = (LoadForce0.only[96] * FromBayRight0.only) / BayLength0.1 = 48 N
        SimpleRight0.1 = LoadForce0.only[96] - SimpleLeft0.1 = 48 N
        MomentShare0.1 = SupportMoment1 / BayLength0.1 = -15.1172 N
        - SimpleSpan Left 1 Right 2
        SimpleLeft1.2 = (LoadForce1.only * FromBayRight1.only) / BayLength1.2 = 22.5 N
        SimpleRight1.2 = LoadForce1.only - SimpleLeft1.2 = 67.5 N
        MomentShare1.2 = (-SupportMoment1) / BayLength1.2 = 15.1172 N
        V0 = SimpleLeft0.1 + MomentShare0.1 = 32.8828 N
        V1 = SimpleRight0.1 - MomentShare0.1 + SimpleLeft1.2 + MomentShare1.2 = 100.734 N
        V2 = SimpleRight1.2 - MomentShare1.2 = 52.3828 N
        = Whole
        0: H 0 N V 32.8828 N
        1: V 100.734 N
        2: V 52.3828 N
        """,
        Beam(
            [new Span(4, 1, 1), new Span(4, 2, 1)],
            [Support.Pin(0), Support.Roller(4), Support.Roller(8)],
            [new Load.Point(2, 96), new Load.Distributed(5, 8, 0, 60)],
            hasAbsoluteStiffness: false));

    /// <summary>The one sloped surface that holds along is known before, and loads its bay.</summary>
    [Fact]
    public void KnownSupportInABay() => Holds(
        """
        # ThreeMoments SupportPlace0[0] SupportPlace3[8] Degree 1
        BayLength0.2 = SupportPlace2[4] = 4 m
        BayLength2.3 = SupportPlace3[8] - SupportPlace2[4] = 4 m
        - EndsTurnFreely Nodes [0, 3]
        - ThreeMomentRow
        - TurnsAgree Left 0 Node 2 Right 3
        - LoadTermOf Left 0 Right 2 AtRight Rules [Point]
        LoadTermRight0.2 = -((V1 * SupportPlace1[2] * (BayLength0.2^2 - SupportPlace1[2]^2)) / BayLength0.2) = -1200 N1m2
        ? = 2 * (BayLength0.2 + BayLength2.3) = 16 m of Coefficient SupportMoment2
        ? = -LoadTermRight0.2 = 1200 N1m2 of RightSide
        (1) [16] SupportMoment2 = [1200]
        SupportMoment2 = [1200] / [16] = 75 Nm
        # ReactionsFromMoments
        - EndForces
        - SimpleSpan Left 0 Right 2
        SimpleLeft0.2 = (-(V1 * (SupportPlace2[4] - SupportPlace1[2]))) / BayLength0.2 = -100 N
        SimpleRight0.2 = -V1 - SimpleLeft0.2 = -100 N
        MomentShare0.2 = SupportMoment2 / BayLength0.2 = 18.75 N
        MomentShare2.3 = (-SupportMoment2) / BayLength2.3 = -18.75 N
        V0 = SimpleLeft0.2 + MomentShare0.2 = -81.25 N
        V2 = SimpleRight0.2 - MomentShare0.2 + MomentShare2.3 = -137.5 N
        V3 = -MomentShare2.3 = 18.75 N
        = Whole
        0: V -81.25 N
        1: H -150 N V 200 N N 250 N
        2: V -137.5 N
        3: V 18.75 N
        """,
        Beam(
            8,
            [Support.Roller(0), Support.Roller(2, Math.Atan(0.75)), Support.Roller(4), Support.Roller(8)],
            [new Load.Point(6, 0, 150)]));

    /// <summary>Overhangs at clamped ends and beside couples: left and right of a node the moment has its own name.</summary>
    [Fact]
    public void OverhangsBeyondClampsAndCouples() => Holds(
        """
        # ThreeMoments 0 8 Degree 2
        BayLength1.2 = SupportPlace1[4] - SupportPlace0[1] = 3 m
        BayLength2.3 = SupportPlace2[7] - SupportPlace1[4] = 3 m
        - OverhangMoment Node 1 IsLeft
        ? = -(LoadForce0.only[10] * SupportPlace0[1]) = -10 Nm of OfLoad Index 0 Part -1
        ? = -LoadCouple1.only[4] = -4 Nm of OfLoad Index 1 Part -1
        MomentLeft1 = [-10] + [-4] = -14 Nm
        - OverhangMoment Node 3
        ? = -(LoadForce3.only[20] * (8 - SupportPlace2[7])) = -20 Nm of OfLoad Index 3 Part -1
        ? = LoadCouple5.only[2] = 2 Nm of OfLoad Index 5 Part -1
        MomentRight3 = [-20] + [2] = -18 Nm
        MomentLeft3 = MomentRight3 + LoadCouple4.only[8] = -10 Nm
        - ThreeMomentRow
        - TurnIsHeld Node 1 Other 2
        ? = 2 * BayLength1.2 = 6 m of Coefficient MomentRight1
        ? = 0 N1m2 of RightSide
        (1) [6] MomentRight1 + BayLength1.2 SupportMoment2 = [0]
        - TurnsAgree Left 1 Node 2 Right 3
        ? = 2 * (BayLength1.2 + BayLength2.3) = 12 m of Coefficient SupportMoment2
        ? = -(BayLength2.3 * MomentLeft3) = 30 N1m2 of RightSide
        (2) BayLength1.2 MomentRight1 + [12] SupportMoment2 = [30]
        (1) MomentRight1 = [0] / [6] = 0 Nm, less BayLength1.2 / [6] = 0.5 SupportMoment2
        - PutsInto MomentRight1 Row 2
        ? = [12] - (BayLength1.2 * [0.5]) = 10.5 m of Coefficient SupportMoment2
        ? = [30] - (BayLength1.2 * [0]) = 30 N1m2 of RightSide
        (2) [10.5] SupportMoment2 = [30]
        SupportMoment2 = [30] / [10.5] = 2.85714 Nm
        MomentRight1 = [0] - ([0.5] * SupportMoment2) = -1.42857 Nm
        # ReactionsFromMoments
        - EndForces HasCouples
        MomentShare1.2 = (SupportMoment2 - MomentRight1) / BayLength1.2 = 1.42857 N
        MomentShare2.3 = (MomentLeft3 - SupportMoment2) / BayLength2.3 = -4.28571 N
        V0 = MomentShare1.2 + LoadForce0.only[10] = 11.4286 N
        C0 = MomentLeft1 - LoadCouple2.only[6] - MomentRight1 = -18.5714 Nm
        V1 = -MomentShare1.2 + MomentShare2.3 = -5.71429 N
        V2 = -MomentShare2.3 + LoadForce3.only[20] = 24.2857 N
        = Whole
        0: H 0 N V 11.4286 N C -18.5714 Nm
        1: V -5.71429 N
        2: V 24.2857 N
        """,
        Beam(
            8,
            [Support.Fixed(1), Support.Roller(4), Support.Roller(7)],
            [
                new Load.Point(0, 10), new Load.Couple(0.5, 4), new Load.Couple(1, 6), new Load.Point(8, 20), new Load.Couple(7, 8),
                new Load.Couple(7.5, 2),
            ]));

    private static void Holds(string expected, BeamModel model) => Assert.Equal(
        expected,
        HandTrace.Of(HandAgreement.Work(model), "ThreeMoments", "ReactionsFromMoments", HandTrace.Found));
}
