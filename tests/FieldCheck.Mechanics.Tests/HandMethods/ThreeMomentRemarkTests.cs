using FieldCheck.Mechanics.HandMethods;
using FieldCheck.Mechanics.Model;
using static FieldCheck.Mechanics.Tests.Solving.Beams;

namespace FieldCheck.Mechanics.Tests.HandMethods;

/// <summary>What the working says: a remark stands where it applies, names the right nodes, and nowhere else.</summary>
public sealed class ThreeMomentRemarkTests
{
    private const double L = 6;
    private static readonly Load[] Even = [Uniform(0, 2 * L, 3e3)];

    [Fact]
    public void EvenContinuousBeam_OneRowPerInnerSupport_NothingMoves()
    {
        HandBeam beam = ThreeMomentCase.Work(Beam(2 * L, [Support.Pin(0), Support.Roller(L), Support.Roller(2 * L)], Even));

        Assert.Equal(new HandRemark.ThreeMomentRow(false, false, false), Single<HandRemark.ThreeMomentRow>(beam));
        Assert.Equal(new HandRemark.TurnsAgree(0, 1, 2), Single<HandRemark.TurnsAgree>(beam));
        Assert.Equal(new HandRemark.EndForces(false, false), Single<HandRemark.EndForces>(beam));
        Assert.Empty(All<HandRemark.TurnIsHeld>(beam));
        Assert.Empty(All<HandRemark.NodeBalance>(beam));
        Assert.Equal([1], beam.Writer.Lines.OfType<HandLine.Sets>().Select(line => line.Row));
        Assert.Contains(
            beam.Writer.Lines, line => line is HandLine.Begins { Title: HandStep.ReactionsFromMoments });
    }

    /// <summary>Each in one span or at one node only: one is enough for the words.</summary>
    [Fact]
    public void StepsSettlementsAndShear_AreNamedWhereAnyBayHasThem()
    {
        Support[] supports = [Support.Pin(0), Support.Roller(L), Support.Roller(2 * L)];
        Support[] settling = [Support.Pin(0), Support.Roller(L) with { Settlement = 0.01 }, Support.Roller(2 * L)];

        Assert.Equal(
            new HandRemark.ThreeMomentRow(true, false, false),
            Single<HandRemark.ThreeMomentRow>(Work([new Span(L, Rigidity, 1e9), new Span(L, 2 * Rigidity, 1e9)], supports)));
        Assert.Equal(
            new HandRemark.ThreeMomentRow(false, true, false),
            Single<HandRemark.ThreeMomentRow>(Work([new Span(2 * L, Rigidity, 1e9)], settling)));
        Assert.Equal(
            new HandRemark.ThreeMomentRow(false, false, true),
            Single<HandRemark.ThreeMomentRow>(Work(
                [new Span(L, Rigidity, 1e9), new Span(L, Rigidity, 1e9, 5e5)], supports)));
    }

    [Fact]
    public void ClampsAtBothEnds_HoldTheTurnsOfTheirBay()
    {
        HandBeam beam = ThreeMomentCase.Work(Beam(
            L, [Support.Fixed(0) with { ImposedRotation = 0.002 }, Support.Fixed(L)], [new Load.Point(2, 5e3)]));

        HandRemark.TurnIsHeld[] held = All<HandRemark.TurnIsHeld>(beam);
        Assert.Equal([(0, 1, false), (1, 0, true)], held.Select(one => (one.Node, one.Other, one.AtRight)));
        Assert.Equal(0.002, held[0].Imposed!.Value);
        Assert.Null(held[1].Imposed);
        Assert.Equal(new HandRemark.EndForces(true, false), Single<HandRemark.EndForces>(beam));
    }

    [Fact]
    public void InnerClamp_HoldsTheTurnsOnBothSides()
    {
        HandBeam beam = ThreeMomentCase.Work(Beam(
            2 * L, [Support.Pin(0), Support.Fixed(L), Support.Roller(2 * L)], Even));

        Assert.Equal(
            [(1, 0, true), (1, 2, false)],
            All<HandRemark.TurnIsHeld>(beam).Select(one => (one.Node, one.Other, one.AtRight)));
    }

    [Theory]
    [InlineData(0, false)]
    [InlineData(0, true)]
    [InlineData(2 * L, false)]
    [InlineData(2 * L, true)]
    public void SpringInRotation_NamesItsBayAndWhetherACoupleActsThere(double at, bool hasCouple)
    {
        Support Held(Support support) => support.Position == at
            ? support with { Rotation = new Restraint.Spring(3e5) }
            : support;
        Load[] loads = hasCouple ? [.. Even, new Load.Couple(at, 700)] : Even;

        HandBeam beam = ThreeMomentCase.Work(Beam(
            2 * L, [Held(Support.Pin(0)), Support.Roller(L), Held(Support.Roller(2 * L))], loads));

        HandRemark.TurnSpring spring = Single<HandRemark.TurnSpring>(beam);
        Assert.Equal((at == 0 ? 0 : 2, 1, at > 0), (spring.Node, spring.Other, spring.AtRight));
        Assert.Equal(3e5, spring.Stiffness.Value);
        Assert.Equal(hasCouple, spring.HasCouple);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(0.02)]
    public void SpringAcross_BalancesItsNode_AndMovesByItsForce(double sinks)
    {
        HandBeam beam = ThreeMomentCase.Work(Beam(
            L, [Support.Fixed(0), Support.Spring(L, 4e4) with { Settlement = sinks }], [Uniform(0, L, 3e3)]));

        Assert.Equal(new HandRemark.NodeBalance(1, true, sinks > 0), Single<HandRemark.NodeBalance>(beam));
        Assert.Equal(new HandRemark.SpringMoves(1, sinks > 0), Single<HandRemark.SpringMoves>(beam));
    }

    [Fact]
    public void HingeInAClampedSpan_IsNamedAmongTheEndForces()
    {
        HandBeam beam = ThreeMomentCase.Work(Beam(
            L, [Support.Fixed(0), Support.Fixed(L)], [new Load.Point(2, 5e3)], hinges: [L / 2]));

        Assert.Equal(new HandRemark.EndForces(true, true), Single<HandRemark.EndForces>(beam));
        Assert.Equal(new HandRemark.NodeBalance(1, false, false), Single<HandRemark.NodeBalance>(beam));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(7e3)]
    public void SlopedRoller_NamesItsPin_AndWhetherLoadsShiftIt(double pull)
    {
        HandBeam beam = ThreeMomentCase.Work(Beam(
            [new Span(L, Rigidity, 1e6)],
            [Support.Fixed(0), Support.Roller(L, 0.6)],
            [Uniform(0, L, 3e3), new Load.Point(L / 3, 0, Right: pull)]));

        Assert.Equal(new HandRemark.SlopedRoller(1, 0, pull != 0), Single<HandRemark.SlopedRoller>(beam));
    }

    /// <summary>Square to the surface the prop gives way by N/k besides the bending and the shortening.</summary>
    [Fact]
    public void SlopedSpring_GivesWayByItsStiffnessToo()
    {
        const double slope = 0.6;
        const double axial = 1e6;
        const double stiffness = 4e4;
        HandBeam beam = ThreeMomentCase.Work(Beam(
            [new Span(L, Rigidity, axial)],
            [Support.Fixed(0), Support.Roller(L, slope) with { Across = new Restraint.Spring(stiffness) }],
            [Uniform(0, L, 3e3)]));

        (double sine, double cosine) = Math.SinCos(slope);
        double free = 3e3 * Math.Pow(L, 4) / (8 * Rigidity) * cosine;
        double one = cosine * cosine * Math.Pow(L, 3) / (3 * Rigidity) + sine * sine * L / axial + 1 / stiffness;
        Equal(free / one * cosine, beam.Vertical(1));
    }

    private static HandBeam Work(Span[] spans, Support[] supports) =>
        ThreeMomentCase.Work(Beam(spans, supports, Even));

    private static T[] All<T>(HandBeam beam)
        where T : HandRemark =>
        [.. beam.Writer.Lines.OfType<HandLine.Says>().Select(line => line.What).OfType<T>()];

    private static T Single<T>(HandBeam beam)
        where T : HandRemark => Assert.Single(All<T>(beam));
}
