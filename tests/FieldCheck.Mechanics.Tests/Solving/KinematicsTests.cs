using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;
using static FieldCheck.Mechanics.Tests.Solving.Beams;

namespace FieldCheck.Mechanics.Tests.Solving;

/// <summary>Which beams can move and how, worked out by looking at them.</summary>
public sealed class KinematicsTests
{
    private const double L = 10;

    [Fact]
    public void PinHingeRoller_FoldsAtTheHinge()
    {
        FreeMotion motion = Assert.Single(Motions(L, [Support.Pin(0), Support.Roller(L)], [4]));

        Assert.False(motion.SlidesAlong);
        Assert.Equal([new MovingPart(0, 4, 0), new MovingPart(4, L, L)], motion.Parts.AsEnumerable());
    }

    [Fact]
    public void TwoHingesTooMany_GiveTwoMotionsOfOneHingeEach()
    {
        ImmutableArray<FreeMotion> motions = Motions(L, [Support.Pin(0), Support.Roller(L)], [4, 6]);

        Assert.Equal(2, motions.Length);
        Assert.Equal([new MovingPart(0, 4, 0), new MovingPart(4, 6, 6)], motions[0].Parts.AsEnumerable());
        Assert.Equal([new MovingPart(4, 6, 4), new MovingPart(6, L, L)], motions[1].Parts.AsEnumerable());
    }

    [Fact]
    public void SinglePin_TurnsAboutIt()
    {
        FreeMotion motion = Assert.Single(Motions(L, [Support.Pin(3)]));

        Assert.False(motion.SlidesAlong);
        Assert.Equal(new MovingPart(0, L, 3), Assert.Single(motion.Parts));
    }

    [Fact]
    public void SingleRoller_SlidesFirstAndTurnsAboutIt()
    {
        ImmutableArray<FreeMotion> motions = Motions(L, [Support.Roller(2)]);

        Assert.Equal(2, motions.Length);
        Assert.True(motions[0].SlidesAlong);
        Assert.Empty(motions[0].Parts);
        Assert.Equal(2, Assert.Single(motions[1].Parts).Centre);
    }

    [Fact]
    public void NoSupport_SlidesRisesAndTurns()
    {
        ImmutableArray<FreeMotion> motions = Motions(L, []);

        Assert.Equal(3, motions.Length);
        Assert.Equal(new FreeMotion(true, []), motions[0] with { Parts = [] });
        Assert.Null(Assert.Single(motions[1].Parts).Centre);
        Assert.Equal(0, Assert.Single(motions[2].Parts).Centre);
    }

    [Fact]
    public void GuideAlone_RisesBodily()
    {
        FreeMotion motion = Assert.Single(Motions(L, [Support.Guide(0)]));

        Assert.Null(Assert.Single(motion.Parts).Centre);
    }

    [Fact]
    public void HingedTail_BeyondTheLastSupport_HangsDown()
    {
        FreeMotion motion = Assert.Single(Motions(L, [Support.Pin(0), Support.Roller(6)], [8]));

        Assert.Equal(new MovingPart(8, L, 8), Assert.Single(motion.Parts));
    }

    [Fact]
    public void RollersOnly_ForceAlong_SlidesAway()
    {
        BeamModel model = Beam(L, [Support.Roller(0), Support.Roller(L)], [new Load.Point(3, 50, 1)]);

        BeamOutcome.CanMove outcome = Assert.IsType<BeamOutcome.CanMove>(new BeamSolver().Solve(model));

        FreeMotion motion = Assert.Single(outcome.Motions);
        Assert.True(motion.SlidesAlong);
        Assert.Empty(motion.Parts);
    }

    [Fact]
    public void RollersOnly_NoForceAlong_StandsUnheld()
    {
        BeamOutcome.Stands outcome = Stands(Beam(L, [Support.Roller(0), Support.Roller(L)], [new Load.Point(5, 50)]));

        Assert.False(outcome.IsHeldAlong);
        Equal(25, outcome.Combinations[0].Response.Reactions[0].Vertical);
    }

    [Fact]
    public void OnePin_IsHeldAlong() =>
        Assert.True(Stands(Beam(L, [Support.Pin(0), Support.Roller(L)], [])).IsHeldAlong);

    [Theory]
    [InlineData(0, false)]
    [InlineData(1e-12, false)]
    [InlineData(1e-10, false)]
    [InlineData(1e-6, true)]
    [InlineData(1e-3, true)]
    public void ThreeRollersNearlyThroughOnePoint_StandFromAMillionthOfARadianOn(double off, bool stands)
    {
        BeamModel model = Beam(
            L, [Support.Roller(0, -0.5), Support.Roller(5), Support.Roller(L, 0.5 + off)], [Uniform(0, L, 1e3)]);

        BeamOutcome outcome = new BeamSolver().Solve(model);

        Assert.Equal(stands, outcome is BeamOutcome.Stands);
        Assert.Equal(stands, outcome is BeamOutcome.Stands { IsNearlyMovable: true });
    }

    [Fact]
    public void NearlyCoincidentSupports_AreNamedByTheMotionTheyBarelyResist()
    {
        BeamOutcome.Stands outcome = Stands(Beam(L, [Support.Pin(5), Support.Roller(5.0001)], [Uniform(0, L, 1e3)]));

        MovingPart part = Assert.Single(outcome.NearMotion!.Parts);
        Assert.Equal(5, part.Centre!.Value, 1e-3);
        Assert.False(outcome.NearMotion.SlidesAlong);
    }

    [Fact]
    public void NearlyCoincidentRollers_SlideNowhereWhenTheyTurn()
    {
        BeamOutcome.Stands outcome = Stands(Beam(L, [Support.Roller(5), Support.Roller(5.0001)], [Uniform(0, L, 1e3)]));

        Assert.Equal(5, Assert.Single(outcome.NearMotion!.Parts).Centre!.Value, 1e-3);
        Assert.False(outcome.NearMotion.SlidesAlong);
    }

    [Fact]
    public void NearMotionOnSlopes_SlidesAlongWhileItTurns()
    {
        BeamOutcome.Stands outcome = Stands(
            Beam(L, [Support.Roller(0, -0.5), Support.Roller(L / 2), Support.Roller(L, 0.5001)], [Uniform(0, L, 1e3)]));

        Assert.True(outcome.NearMotion!.SlidesAlong);
        Assert.Equal(L / 2, Assert.Single(outcome.NearMotion.Parts).Centre!.Value, 0.01);
    }

    [Fact]
    public void LevelRollersBesideAHingeAndASlope_AreJudgedByTheirOwnBound()
    {
        // 0.002 of the span apart: barely held where a slope takes part, well enough where none does.
        Support[] level = [Support.Pin(5), Support.Roller(5.02)];
        Support[] sloped = [Support.Pin(5), Support.Roller(5.02, 0.01)];

        Assert.False(Stands(Beam(L, level, [])).IsNearlyMovable);
        Assert.True(Stands(Beam(L, sloped, [])).IsNearlyMovable);
    }

    [Fact]
    public void OrdinaryBeams_AreNotNearlyMovable()
    {
        Assert.False(Stands(Beam(L, [Support.Pin(0), Support.Roller(0.5)], [])).IsNearlyMovable);
        Assert.False(Stands(Beam(L, [Support.Fixed(0), Support.Roller(L)], [], [9.9])).IsNearlyMovable);
        Assert.False(Stands(Beam(L, [Support.Pin(0), Support.Roller(L, 1.2)], [])).IsNearlyMovable);
    }

    [Fact]
    public void TwoMotions_AreToldApart()
    {
        // The beam slides up the slope, turning its left part about the middle roller; its right part hangs there.
        BeamModel model = Beam(L, [Support.Roller(0, 0.3), Support.Roller(L / 2)], [new Load.Point(L, 1)], [L / 2]);

        BeamOutcome.CanMove outcome = Assert.IsType<BeamOutcome.CanMove>(new BeamSolver().Solve(model));

        Assert.Equal([true, false], outcome.Motions.Select(motion => motion.SlidesAlong));
        Assert.Equal(new MovingPart(0, L / 2, L / 2), Assert.Single(outcome.Motions[0].Parts));
        Assert.Equal(new MovingPart(L / 2, L, L / 2), Assert.Single(outcome.Motions[1].Parts));
    }

    [Fact]
    public void SpringsCountAsRestraints()
    {
        Support left = new(0, Restraint.Held, new Restraint.Spring(1e-3), Restraint.Free);

        Assert.IsType<BeamOutcome.Stands>(new BeamSolver().Solve(Beam(L, [left, Support.Spring(L, 1e-3)], [])));
    }

    [Fact]
    public void LongSoundChain_WhoseHoldDiesAwayAlongIt_Stands()
    {
        // Every part hangs on the one before and rests a little left of its middle, so that what holds its near end
        // holds its far end by two thirds of that: over 60 parts that falls to 3e-11, below any fixed threshold.
        const int parts = 60;
        Support[] supports = [Support.Fixed(0), .. Enumerable.Range(1, parts - 1).Select(i => Support.Roller(i + 0.4))];
        double[] hinges = [.. Enumerable.Range(1, parts - 1).Select(i => (double)i)];

        BeamOutcome.Stands outcome = Stands(Beam(parts, supports, [], hinges));

        Assert.Equal(0, outcome.Determinacy.Total);
    }

    [Fact]
    public void LongChain_WithOneSupportTaken_MovesFromThereOn()
    {
        const int parts = 300;
        Support[] supports =
        [
            Support.Fixed(0),
            .. Enumerable.Range(1, parts - 1).Where(i => i != 200).Select(i => Support.Roller(i + 0.6)),
        ];
        double[] hinges = [.. Enumerable.Range(1, parts - 1).Select(i => (double)i)];

        FreeMotion motion = Assert.Single(Motions(parts, supports, hinges));

        Assert.Equal(200, motion.Parts[0].From);
        Assert.Equal(200, motion.Parts[0].Centre);
        Assert.Equal(201.6, motion.Parts[1].Centre!.Value, 1e-9);
    }

    private static ImmutableArray<FreeMotion> Motions(double length, Support[] supports, double[]? hinges = null) =>
        Assert.IsType<BeamOutcome.CanMove>(new BeamSolver().Solve(Beam(length, supports, [], hinges))).Motions;
}
