using FieldCheck.Mechanics.HandMethods;
using FieldCheck.Mechanics.Model;
using static FieldCheck.Mechanics.Tests.Solving.Beams;

namespace FieldCheck.Mechanics.Tests.HandMethods;

/// <summary>
/// Beams drawn free, that can move or that the methods do not reach: how far the working goes. Unknowns were counted apart against
/// two sums, a third where something acts or holds along, and one for each hinge.
/// </summary>
public sealed class HandTraceReachTests
{
    private static readonly double Slope = Math.Atan(0.75);

    /// <summary>A load along is counted against what holds along, whichever kind it is.</summary>
    [Theory]
    [InlineData(0, 0, 0, """
        # FreeBody
        - SupportHolds Support 0 SupportPlace0[0] Unknowns [V0]
        - Count Unknowns [V0] Hinges 0 Equations 2 DegreeAlong 0 DegreeAcross -1 Degree -1
        = CanMove
        """)]
    [InlineData(50, 0, 0, """
        # FreeBody
        - SupportHolds Support 0 SupportPlace0[0] Unknowns [V0]
        - Count Unknowns [V0] Hinges 0 CountsAlong Equations 3 DegreeAlong -1 DegreeAcross -1 Degree -2
        = CanMove
        """)]
    [InlineData(0, 0, 70, """
        # FreeBody
        - SupportHolds Support 0 SupportPlace0[0] Unknowns [V0]
        - Count Unknowns [V0] Hinges 0 CountsAlong Equations 3 DegreeAlong -1 DegreeAcross -1 Degree -2
        = CanMove
        """)]
    [InlineData(0, 70, 0, """
        # FreeBody
        - SupportHolds Support 0 SupportPlace0[0] Unknowns [V0]
        - Count Unknowns [V0] Hinges 0 CountsAlong CanMove Equations 3 DegreeAlong -1 DegreeAcross -1 Degree -2
        = CanMove
        """)]
    public void FreeBody_CountsAlongWhereALoadActsAlong(double right, double start, double end, string expected) => Assert.Equal(
        expected,
        HandTrace.Of(HandWorking.FreeBodyOf(
            Beam(
                6,
                [Support.Roller(0)],
                [new Load.Point(2, 9, right), new Load.Couple(1, 3), new Load.Distributed(1, 2, start, end, ActsAlong: true)]),
            canMove: start > 0)));

    [Fact]
    public void FreeBody_NamesWhatEachSupportGives_WhereTheHingesAre() => Assert.Equal(
        """
        # FreeBody
        - SupportHolds Support 0 SupportPlace0[0] Unknowns [H0, V0, C0]
        - SupportHolds Support 1 SupportPlace1[1] Unknowns [H1, C1]
        - SupportHolds Support 2 SupportPlace2[2] Unknowns [N2]
        - SupportHolds Support 3 SupportPlace3[6] Unknowns [V3]
        - HingeTurns Hinge 0 HingePlace0[3]
        - HingeTurns Hinge 1 HingePlace1[4]
        - Count Unknowns [H0, V0, C0, H1, C1, N2, V3] Hinges 2 CountsAlong Equations 5 IsTied DegreeAlong 0 DegreeAcross 2 Degree 2
        = CanMove
        """,
        HandTrace.Of(HandWorking.FreeBodyOf(
            Beam(
                6,
                [Support.Fixed(0), Support.Guide(1), Support.Roller(2, Slope), Support.Roller(6)],
                [Uniform(0, 6, 5)],
                [3, 4]),
            canMove: false)));

    /// <summary>Unknowns are too few for the sums of the one part.</summary>
    [Fact]
    public void PinAlone_HoldsNothingAgainstTurning() => Assert.Equal(
        """
        # Loads
        LoadForce0.only = 300 N Down of Whole Index 0 at 1
        = CanMove
        0: H 0 N
        """,
        Trace(Beam(6, [Support.Pin(0)], [new Load.Point(1, 300)])));

    /// <summary>The other part has more unknowns than sums.</summary>
    [Fact]
    public void PartBehindAHingeAlone_IsHeldByNothing() => Assert.Equal(
        """
        # Loads
        LoadForce0.only = 300 N Down of Whole Index 0 at 1
        = CanMove
        0: H 0 N
        1:
        2:
        """,
        Trace(Beam(6, [Support.Fixed(0), Support.Roller(2), Support.Roller(3)], [new Load.Point(1, 300)], [4])));

    /// <summary>As many unknowns as sums, but both are couples: the rows of the three moments contradict each other.</summary>
    [Fact]
    public void TwoGuides_HoldNothingAcross()
    {
        HandWorking working = HandAgreement.Work(Beam(6, [Support.Guide(0), Support.Guide(6)], [new Load.Point(1, 300)]));

        Assert.Equal(
            """
            # Along
            - NothingAlong Supports [0, 1]
            H0 = 0 N
            H1 = 0 N
            = CanMove
            0: H 0 N
            1: H 0 N
            """,
            HandTrace.Of(working, "Along", "Part", HandTrace.Found));
        Assert.Single(working.Lines, line => line is HandLine.Begins { Title: HandStep.ThreeMoments { Degree: 0 } });
        Assert.Empty(Assert.IsType<HandLine.Sets>(working.Lines[^1]).Equation.Terms);
    }

    [Fact]
    public void TwoSurfacesWhereStaticsIsNotEnough_AreNotReached() => Assert.Equal(
        """
        # Loads
        LoadForce0.only = 300 N Down of Whole Index 0 at 1
        = Partial
        0:
        1:
        2:
        3:
        """,
        Trace(Beam(
            6,
            [Support.Roller(0, Slope), Support.Roller(2), Support.Roller(4), Support.Roller(6, -Slope)],
            [new Load.Point(1, 300)])));

    /// <summary>What acts along and the part that statics solves are found; the part with the settling support is not.</summary>
    [Fact]
    public void SettlingWithoutStiffness_IsWorkedInPart() => Assert.Equal(
        """
        # Loads
        LoadForce0.only = 300 N Down of Whole Index 0 at 7
        # Part HingePlace0[6.5] SupportPlace3[8]
        - PartUnknowns Unknowns [V3, G0]
        - MomentsAbout HingePlace0[6.5] DropsOut [G0]
        ? = LoadForce0.only[300] * (7 - HingePlace0[6.5]) = 150 Nm Clockwise of OfLoad Index 0 Part -1
        V3 turns CounterClockwise by SupportPlace3[8] - HingePlace0[6.5] = 1.5 m
        G0 turns None
        ? = -[150] = -150 Nm of Together
        [1.5] V3 + [-150] = 0
        V3 = (-[-150]) / [1.5] = 100 N
        - VerticalSum G0
        G0 = LoadForce0.only[300] - V3 = 200 N
        = Partial
        0: H 0 N
        1:
        2:
        3: V 100 N
        """,
        Trace(Beam(
            [new Span(8, Rigidity, 1e9)],
            [Support.Pin(0), Support.Roller(3) with { Settlement = 0.01 }, Support.Roller(6), Support.Roller(8)],
            [new Load.Point(7, 300)],
            [6.5],
            hasAbsoluteStiffness: false)));

    /// <summary>The pushes of two equal slopes meet over a roller in the middle: there is no telling what each carries.</summary>
    [Fact]
    public void PushesThatMeetInOnePoint_AreNotDecided()
    {
        BeamModel model = Beam(
            6, [Support.Roller(0, Slope), Support.Roller(3), Support.Roller(6, -Slope)], [new Load.Point(1, 300)]);

        ArgumentException mistake = Assert.Throws<ArgumentException>(() => HandAgreement.Work(model));

        Assert.StartsWith("The equations must decide the unknowns.", mistake.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void FactorsAskedForEachCase_ForMoreItIsAMistake()
    {
        BeamModel model = Beam(6, [Support.Pin(0), Support.Roller(6)], []);

        ArgumentException mistake = Assert.Throws<ArgumentException>(() => HandWorking.Of(model, [1, 1]));

        Assert.StartsWith("One factor for each case.", mistake.Message, StringComparison.Ordinal);
    }

    private static string Trace(BeamModel model) => HandTrace.Of(
        HandAgreement.Work(model), "Loads", "Part", "ThreeMoments", "Together", HandTrace.Found);
}
