using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;
using static FieldCheck.Mechanics.Tests.Solving.Beams;

namespace FieldCheck.Mechanics.Tests.Solving;

/// <summary>Loads along between two pins, couples beside supports, and what the nodes take; worked by hand.</summary>
public sealed class NodeLoadTests
{
    private const double L = 6;

    /// <summary>Of a bar held at both ends each load goes to an end by the lever rule.</summary>
    [Fact]
    public void LoadAlongThatGrows_BetweenTwoPins_IsSharedByTheLeverRule()
    {
        BeamResponse response = Solve(
            L,
            [Support.Pin(0), Support.Pin(L)],
            [new Load.Distributed(1, 4, 100, 400, true), new Load.Point(4.5, 0, 600)]);

        // 750 N with its centre at 1 + 1.8 m, and 600 N at 4.5 m.
        double left = (750 * 3.2 + 600 * 1.5) / L;
        Equal(-left, response.Reactions[0].Horizontal);
        Equal(-(1350 - left), response.Reactions[1].Horizontal);
        Equal(left, response.At(0.5).Left.Axial);
        Equal(left - 750, response.At(4.25).Left.Axial);
        Equal(left - 1350, response.At(5).Left.Axial);
    }

    [Theory]
    [InlineData(Side.Left)]
    [InlineData(Side.Right)]
    public void CoupleInsideASpan_IsTheSameOnEitherSide(Side side)
    {
        BeamResponse response = Solve(L, [Support.Pin(0), Support.Roller(L)], [new Load.Couple(2, 900, side)]);

        Equal(150, response.Reactions[0].Vertical);
        Equal(300, response.At(2).Left.Moment);
        Equal(-600, response.At(2).Right.Moment);
    }

    [Theory]
    [InlineData(Side.Left)]
    [InlineData(Side.Right)]
    public void CoupleAtAClamp_GoesIntoItAlone(Side side)
    {
        BeamResponse response = Solve(
            L, [Support.Roller(0), Support.Fixed(3), Support.Roller(L)], [new Load.Couple(3, 500, side)]);

        Equal(-500, response.Reactions[1].Moment);
        Equal(0, response.Reactions[0].Vertical, 500);
        Equal(0, response.At(4).Left.Moment, 500);
    }

    [Fact]
    public void LoadSize_OfAClampedSpan_IsItsEndForcesAndItsEndMomentsOverTheLength()
    {
        // P L/8 at each end, over L; the force along goes to the ends whole.
        StiffnessMethod method = Loaded(Beam(
            L, [Support.Fixed(0), Support.Fixed(L)], [new Load.Point(L / 2, 1000), new Load.Point(L / 2, 0, 240)]));

        Assert.Equal(1000 + 2 * 1000.0 / 8 + 240, method.LoadSize, 1e-10);
    }

    [Fact]
    public void LoadSize_MomentsThatCancelAtANode_CountForNothing()
    {
        // Two equal spans under w: w L at the middle, w L/2 and w L²/12 at the ends, over the whole length of 2 L.
        StiffnessMethod method = Loaded(Beam(
            2 * L, [Support.Pin(0), Support.Roller(L), Support.Roller(2 * L)], [Uniform(0, 2 * L, 100)]));

        Assert.Equal(2 * 100 * L + 2 * (100 * L * L / 12) / (2 * L), method.LoadSize, 1e-10);
    }

    [Fact]
    public void Press_ActsDownAtEverySupport_MoreFromOneToTheNext()
    {
        StiffnessMethod method = Held(
            Beam(L, [Support.Pin(0), Support.Roller(2), Support.Roller(4)], [new Load.Point(3, 1000)]));
        method.Press = 90;
        method.Load([1]);
        method.Move(withImposed: true);
        double[] pressed = [.. Enumerable.Range(0, 4).Select(node => method.ReactionAt(node).Up)];
        method.Press = 0;
        method.Move(withImposed: true);

        // The free end has none; a support has 4/3² more than the one before.
        Assert.All(
            new[] { 90.0, 130, 170, 0 }.Select((press, node) => (press, node)),
            at => Assert.Equal(method.ReactionAt(at.node).Up + at.press, pressed[at.node], 1e-9));
    }

    [Fact]
    public void Press_OnASupportThatDoesNotTouch_BendsTheBeamDown()
    {
        StiffnessMethod method = new();
        method.Prepare(Beam(L, [Support.Fixed(0), Support.Roller(L)], []));
        Assert.True(method.Hold([true, false], wantsAlong: true));
        method.Press = 100;
        method.Load([1]);
        method.Move(withImposed: true);

        Assert.Equal(-200 * L * L * L / (3 * Rigidity), (double)method.MovementOf(1).Up, 1e-15);
        Assert.Equal(300, method.ReactionAt(0).Up, 1e-9);
    }

    [Fact]
    public void Factorisations_AreCounted()
    {
        BeamSolver solver = new();
        BeamModel model = Beam(L, [Support.Pin(0), Support.Roller(L)], [new Load.Point(2, 10)]);

        solver.Solve(model);
        solver.Solve(model);

        Assert.Equal(2, solver.Factorisations);
    }

    private static StiffnessMethod Held(BeamModel model)
    {
        StiffnessMethod method = new();
        method.Prepare(model);
        Assert.True(method.Hold([.. model.Supports.Select(_ => true)], wantsAlong: true));
        return method;
    }

    private static StiffnessMethod Loaded(BeamModel model)
    {
        StiffnessMethod method = Held(model);
        method.Load([1]);
        return method;
    }
}
