using FieldCheck.Mechanics.Model;
using static FieldCheck.Mechanics.Tests.Solving.Beams;

namespace FieldCheck.Mechanics.Tests.HandMethods;

/// <summary>
/// Moments about a point that is asked for: the unknowns that turn about it, and the proof about another. Reactions, arms and senses
/// were worked apart from moments about one support and the sum of forces.
/// </summary>
public sealed class HandTraceAskedTests
{
    /// <summary>Both reactions turn about it: two rows with two unknowns. The proof is about the last support.</summary>
    [Fact]
    public void PointAskedBetweenSupports_GivesTwoRows() => Holds(
        """
        # Part SupportPlace0[0] SupportPlace1[6] IsWhole
        - MomentsAbout 3 IsAsked DropsOut []
        - PassesThrough Actors [OfLoad Index 1 Part -1]
        ? = LoadForce0.only[900] * (3 - 2) = 900 Nm CounterClockwise of OfLoad Index 0 Part -1
        V0 turns Clockwise by 3 m
        V1 turns CounterClockwise by SupportPlace1[6] - 3 = 3 m
        ? = [900] = 900 Nm of Together
        - TwoRows
        ? = LoadForce0.only[900] + LoadForce1.only[600] = 1500 N of RightSide
        (1) 1 V0 + 1 V1 = [1500]
        (2) (-3) V0 + [3] V1 = (-[900])
        (1) V0 = LoadForce0.only[900] + LoadForce1.only[600] = 1500 N, less 1 V1
        - PutsInto V0 Row 2
        ? = [3] - (-3) = 6 m of Coefficient V1
        ? = (-[900]) - ((-3) * [1500]) = 3600 Nm of RightSide
        (2) [6] V1 = [3600]
        V1 = [3600] / [6] = 600 N
        V0 = [1500] - V1 = 900 N
        # Proof SupportPlace1[6]
        - MomentsClose SupportPlace1[6]
        - PassesThrough Actors [Named V1]
        ? = V0 * SupportPlace1[6] = 5400 Nm Clockwise of Named V0
        ? = LoadForce0.only[900] * (SupportPlace1[6] - 2) = 3600 Nm CounterClockwise of OfLoad Index 0 Part -1
        ? = LoadForce1.only[600] * (SupportPlace1[6] - 3) = 1800 Nm CounterClockwise of OfLoad Index 1 Part -1
        ? closes -[5400] + [3600] + [1800] = 0 Nm of 10800
        - ForcesClose
        ? closes V0 + V1 - LoadForce0.only[900] - LoadForce1.only[600] = 0 N of 3000
        """,
        Beam(6, [Support.Pin(0), Support.Roller(6)], [new Load.Point(2, 900), new Load.Point(3, 600)]),
        3,
        "Part", "Proof");

    /// <summary>Where the load stands; the force is found first, then the couple.</summary>
    [Theory]
    [InlineData(4, """
        # Part SupportPlace0[0] 4 IsWhole
        - MomentsAbout 4 IsAsked DropsOut []
        ? = LoadForce0.only[500] * (4 - 3) = 500 Nm CounterClockwise of OfLoad Index 0 Part -1
        V0 turns Clockwise by 4 m
        C0 turns CounterClockwise
        ? = [500] = 500 Nm of Together
        - VerticalSum V0
        V0 = LoadForce0.only[500] = 500 N
        C0 = -[500] - ((-4) * V0) = 1500 Nm
        # Proof SupportPlace0[0]
        - MomentsClose SupportPlace0[0]
        - PassesThrough Actors [Named V0]
        ? = C0 = 1500 Nm CounterClockwise of Named C0
        ? = LoadForce0.only[500] * 3 = 1500 Nm Clockwise of OfLoad Index 0 Part -1
        ? closes [1500] - [1500] = 0 Nm of 3000
        - ForcesClose
        ? closes V0 - LoadForce0.only[500] = 0 N of 1000
        """)]
    [InlineData(0, """
        # Part SupportPlace0[0] 4 IsWhole
        - MomentsAbout SupportPlace0[0] IsAsked DropsOut [V0]
        ? = LoadForce0.only[500] * 3 = 1500 Nm Clockwise of OfLoad Index 0 Part -1
        V0 turns None
        C0 turns CounterClockwise
        ? = -[1500] = -1500 Nm of Together
        1 C0 + [-1500] = 0
        C0 = -[-1500] = 1500 Nm
        - VerticalSum V0
        V0 = LoadForce0.only[500] = 500 N
        # Proof 4
        - MomentsClose 4
        ? = V0 * 4 = 2000 Nm Clockwise of Named V0
        ? = C0 = 1500 Nm CounterClockwise of Named C0
        ? = LoadForce0.only[500] * (4 - 3) = 500 Nm CounterClockwise of OfLoad Index 0 Part -1
        ? closes -[2000] + [1500] + [500] = 0 Nm of 4000
        - ForcesClose
        ? closes V0 - LoadForce0.only[500] = 0 N of 1000
        """)]
    public void PointAskedOnACantilever_GivesForceThenCouple(double about, string expected) => Holds(
        expected,
        Beam(4, [Support.Fixed(0)], [new Load.Point(3, 500)]),
        about,
        "Part", "Proof");

    [Theory]
    [InlineData(0, """
        # Part SupportPlace0[0] SupportPlace1[6] IsWhole
        - MomentsAbout SupportPlace0[0] IsAsked DropsOut [V0]
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
        """)]
    [InlineData(6, """
        # Part SupportPlace0[0] SupportPlace1[6] IsWhole
        - MomentsAbout SupportPlace1[6] IsAsked DropsOut [V1]
        ? = LoadForce0.only[900] * (SupportPlace1[6] - 2) = 3600 Nm CounterClockwise of OfLoad Index 0 Part -1
        V0 turns Clockwise by 6 m
        V1 turns None
        ? = [3600] = 3600 Nm of Together
        (-SupportPlace1[6]) V0 + [3600] = 0
        V0 = [3600] / SupportPlace1[6] = 600 N
        - VerticalSum V1
        V1 = LoadForce0.only[900] - V0 = 300 N
        # Proof SupportPlace0[0]
        - MomentsClose SupportPlace0[0]
        - PassesThrough Actors [Named V0]
        ? = V1 * SupportPlace1[6] = 1800 Nm CounterClockwise of Named V1
        ? = LoadForce0.only[900] * 2 = 1800 Nm Clockwise of OfLoad Index 0 Part -1
        ? closes [1800] - [1800] = 0 Nm of 3600
        - ForcesClose
        ? closes V0 + V1 - LoadForce0.only[900] = 0 N of 1800
        """)]
    public void PointAskedAtASupport_LeavesTheOther(double about, string expected) => Holds(
        expected,
        Beam(6, [Support.Pin(0), Support.Roller(6)], [new Load.Point(2, 900)]),
        about,
        "Part", "Proof");

    /// <summary>About 3 only the middle part has moments taken; about 2 its hinge drops out, and the left part's too.</summary>
    [Theory]
    [InlineData(3, """
        # Part HingePlace0[2] HingePlace1[4]
        - PartUnknowns Unknowns [G0, G1]
        - MomentsAbout 3 IsAsked DropsOut []
        ? = LoadForce0.only[800] * (3.5 - 3) = 400 Nm Clockwise of OfLoad Index 0 Part -1
        G0 turns Clockwise by 3 - HingePlace0[2] = 1 m
        G1 turns CounterClockwise by HingePlace1[4] - 3 = 1 m
        ? = -[400] = -400 Nm of Together
        - TwoRows
        ? = LoadForce0.only[800] = 800 N of RightSide
        (1) 1 G0 + 1 G1 = [800]
        (2) (-[1]) G0 + [1] G1 = (-[-400])
        (1) G0 = LoadForce0.only[800] = 800 N, less 1 G1
        - PutsInto G0 Row 2
        ? = [1] - (-[1]) = 2 m of Coefficient G1
        ? = (-[-400]) - ((-[1]) * [800]) = 1200 Nm of RightSide
        (2) [2] G1 = [1200]
        G1 = [1200] / [2] = 600 N
        G0 = [800] - G1 = 200 N
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
        ? = G1 * (SupportPlace1[6] - HingePlace1[4]) = 1200 Nm CounterClockwise of Named G1
        V1 turns None
        C1 turns CounterClockwise
        ? = [1200] = 1200 Nm of Together
        1 C1 + [1200] = 0
        C1 = -[1200] = -1200 Nm
        - VerticalSum V1
        V1 = G1 = 600 N
        # Proof SupportPlace1[6]
        - MomentsClose SupportPlace1[6]
        - PassesThrough Actors [Named V1]
        ? = V0 * SupportPlace1[6] = 1200 Nm Clockwise of Named V0
        ? = C0 = 400 Nm CounterClockwise of Named C0
        ? = |C1| = 1200 Nm Clockwise of Named C1
        ? = LoadForce0.only[800] * (SupportPlace1[6] - 3.5) = 2000 Nm CounterClockwise of OfLoad Index 0 Part -1
        ? closes -[1200] + [400] - [1200] + [2000] = 0 Nm of 4800
        - ForcesClose
        ? closes V0 + V1 - LoadForce0.only[800] = 0 N of 1600
        """)]
    [InlineData(2, """
        # Part HingePlace0[2] HingePlace1[4]
        - PartUnknowns Unknowns [G0, G1]
        - MomentsAbout HingePlace0[2] IsAsked DropsOut [G0]
        ? = LoadForce0.only[800] * (3.5 - HingePlace0[2]) = 1200 Nm Clockwise of OfLoad Index 0 Part -1
        G0 turns None
        G1 turns CounterClockwise by HingePlace1[4] - HingePlace0[2] = 2 m
        ? = -[1200] = -1200 Nm of Together
        [2] G1 + [-1200] = 0
        G1 = (-[-1200]) / [2] = 600 N
        - VerticalSum G0
        G0 = LoadForce0.only[800] - G1 = 200 N
        # Part SupportPlace0[0] HingePlace0[2]
        - PartUnknowns Unknowns [V0, C0]
        - CarriesOver Hinge 0
        - MomentsAbout HingePlace0[2] IsAsked DropsOut []
        - PassesThrough Actors [Named G0]
        V0 turns Clockwise by 2 m
        C0 turns CounterClockwise
        ? = 0 Nm of Together
        - VerticalSum V0
        V0 = G0 = 200 N
        C0 = -[0] - ((-HingePlace0[2]) * V0) = 400 Nm
        # Part HingePlace1[4] SupportPlace1[6]
        - PartUnknowns Unknowns [V1, C1]
        - CarriesOver Hinge 1
        - MomentsAbout SupportPlace1[6] DropsOut [V1]
        ? = G1 * (SupportPlace1[6] - HingePlace1[4]) = 1200 Nm CounterClockwise of Named G1
        V1 turns None
        C1 turns CounterClockwise
        ? = [1200] = 1200 Nm of Together
        1 C1 + [1200] = 0
        C1 = -[1200] = -1200 Nm
        - VerticalSum V1
        V1 = G1 = 600 N
        # Proof SupportPlace1[6]
        - MomentsClose SupportPlace1[6]
        - PassesThrough Actors [Named V1]
        ? = V0 * SupportPlace1[6] = 1200 Nm Clockwise of Named V0
        ? = C0 = 400 Nm CounterClockwise of Named C0
        ? = |C1| = 1200 Nm Clockwise of Named C1
        ? = LoadForce0.only[800] * (SupportPlace1[6] - 3.5) = 2000 Nm CounterClockwise of OfLoad Index 0 Part -1
        ? closes -[1200] + [400] - [1200] + [2000] = 0 Nm of 4800
        - ForcesClose
        ? closes V0 + V1 - LoadForce0.only[800] = 0 N of 1600
        """)]
    public void PointAsked_IsUsedInThePartsThatReachIt(double about, string expected) => Holds(
        expected,
        Beam(6, [Support.Fixed(0), Support.Fixed(6)], [new Load.Point(3.5, 800)], [2, 4]),
        about,
        "Part", "Proof");

    private static void Holds(string expected, BeamModel model, double? about = null, params string[] steps) =>
        Assert.Equal(expected, HandTrace.Of(HandAgreement.Work(model, about), steps));
}
