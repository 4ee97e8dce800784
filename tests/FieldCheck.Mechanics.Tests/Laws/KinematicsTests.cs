using System.Collections.Immutable;
using CsCheck;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Tests.Laws;

/// <summary>Whether a beam can move is a matter of geometry alone, and exact fractions settle it.</summary>
public sealed class KinematicsTests
{
    private static readonly int Many = 5 * Law.Draws;

    [Fact]
    public void DrawnBeams_AreOfBothSorts()
    {
        int stable = 0;
        int movable = 0;
        RandomBeam.Any.Sample(
            model => _ = ExactKinematics.Freedoms(model) == 0
                ? Interlocked.Increment(ref stable)
                : Interlocked.Increment(ref movable),
            iter: Many);

        Assert.InRange(stable, Many / 10, Many);
        Assert.InRange(movable, Many / 10, Many);
    }

    [Fact]
    public void Beam_StandsExactlyWhenItsPartsCannotMove() => Sample(WithoutForcesAlong, model =>
    {
        // With no force along, sliding along is no reason to fail.
        bool stands = ExactKinematics.FreedomsHeldAlong(model) == 0
            && (ExactKinematics.Freedoms(model) == 0 || NothingHoldsAlong(model));

        BeamOutcome outcome = new BeamSolver().Solve(model);

        Assert.True(stands == outcome is BeamOutcome.Stands, outcome.GetType().Name);
        if (outcome is BeamOutcome.Stands standing)
        {
            Assert.Equal(!NothingHoldsAlong(model), standing.IsHeldAlong);
        }
    });

    [Fact]
    public void BeamThatNothingHoldsAlong_CanMoveUnderAForceAlong() => Sample(WithoutForcesAlong, model =>
    {
        if (NothingHoldsAlong(model))
        {
            BeamModel pushed = model with
            {
                Cases = [new LoadCase("push", [new Load.Point(model.Length / 2, Down: 0, Right: 1000)])],
                Combinations = [new Combination("push", CombinationBasis.Service, [1])],
            };

            BeamOutcome.CanMove moving = Assert.IsType<BeamOutcome.CanMove>(new BeamSolver().Solve(pushed));

            Assert.Contains(moving.Motions, motion => motion.SlidesAlong);
        }
    });

    [Fact]
    public void Mechanism_NamesEveryIndependentMotion() => Sample(RandomBeam.Any, model =>
    {
        if (new BeamSolver().Solve(model) is BeamOutcome.CanMove moving)
        {
            int freedoms = ExactKinematics.Freedoms(model);
            int across = ExactKinematics.FreedomsHeldAlong(model);

            // Sliding alone may be left unsaid while nothing pushes along.
            Assert.InRange(moving.Motions.Length, NothingHoldsAlong(model) ? Math.Max(1, across) : freedoms, freedoms);
        }
    });

    [Fact]
    public void Motion_IsOneThatTheSupportsAndHingesAllow() => Sample(RandomBeam.Any, model =>
    {
        if (new BeamSolver().Solve(model) is BeamOutcome.CanMove moving)
        {
            Assert.NotEmpty(moving.Motions);
            Assert.All(moving.Motions, motion => IsAllowed(model, motion));
        }
    });

    [Fact]
    public void Determinacy_IsReactionsAndHingesAgainstEquations() => Sample(RandomBeam.Any, model =>
    {
        int along = model.Supports.Count(support => support.Along is not Restraint.None);
        int across = model.Supports.Count(support => support.Across is not Restraint.None);
        int rotation = model.Supports.Count(support => support.Rotation is not Restraint.None);
        bool isCoupled = model.Supports.Any(support => support.SurfaceSlope != 0);

        Determinacy determinacy = BeamSolver.DeterminacyOf(model);

        Assert.Equal(along + across + rotation - 3 - model.Hinges.Length, determinacy.Total);
        Assert.Equal(isCoupled, determinacy.IsCoupled);
        if (!isCoupled)
        {
            Assert.Equal(along - 1, determinacy.Along);
            Assert.Equal(across + rotation - 2 - model.Hinges.Length, determinacy.Across);
        }
    });

    private static Gen<BeamModel> WithoutForcesAlong => RandomBeam.Any.Select(model => model with
    {
        Cases = [.. model.Cases.Select(one => one with { Loads = [.. one.Loads.Where(load => !ActsAlong(load))] })],
    });

    private static bool ActsAlong(Load load) =>
        load is Load.Point { Right: not 0 } or Load.Distributed { ActsAlong: true };

    private static bool NothingHoldsAlong(BeamModel model) =>
        model.Supports.All(support => support.Along is Restraint.None && support.SurfaceSlope == 0);

    private static void IsAllowed(BeamModel model, FreeMotion motion)
    {
        ImmutableArray<double> ends = ExactKinematics.PartEnds(model);
        Assert.True(motion.SlidesAlong || !motion.Parts.IsEmpty, "Nothing moves.");
        Assert.False(
            motion.SlidesAlong && model.Supports.Any(support => support.Along is not Restraint.None),
            "It slides although it is held along.");
        foreach (MovingPart part in motion.Parts)
        {
            int left = ends.IndexOf(part.From);
            Assert.True(left >= 0 && part.To == ends[left + 1], $"{part} is not a part between hinges or ends.");
        }

        for (int i = 0; i + 1 < ends.Length; i++)
        {
            MovingPart? part = motion.Parts.SingleOrDefault(part => part.From == ends[i]);
            Assert.All(model.Supports.Where(support => IsOn(support, ends, i)), support => Lets(support, part, motion));
        }

        Assert.All(model.Hinges, hinge => StaysTogether(motion, hinge, model.Length));
    }

    // A support at a hinge holds the parts on both sides of it.
    private static bool IsOn(Support support, ImmutableArray<double> ends, int part) =>
        support.Position >= ends[part] && support.Position <= ends[part + 1];

    private static void Lets(Support support, MovingPart? part, FreeMotion motion)
    {
        bool turns = part?.Centre is not null;
        Assert.False(turns && support.Rotation is not Restraint.None, $"It turns at {support.Position:R}.");
        bool isHeldAcross = support.Across is not Restraint.None;
        if (!isHeldAcross || (support.SurfaceSlope != 0 && motion.SlidesAlong))
        {
            return;
        }

        bool moves = part is not null && !IsAt(part.Centre, support.Position, part.To - part.From);
        Assert.False(moves, $"It moves across at {support.Position:R}.");
    }

    private static void StaysTogether(FreeMotion motion, double hinge, double length)
    {
        MovingPart? left = motion.Parts.SingleOrDefault(part => part.To == hinge);
        MovingPart? right = motion.Parts.SingleOrDefault(part => part.From == hinge);
        bool leftMoves = left is not null && !IsAt(left.Centre, hinge, length);
        bool rightMoves = right is not null && !IsAt(right.Centre, hinge, length);
        Assert.True(leftMoves == rightMoves, $"The parts come apart at {hinge:R}.");
    }

    private static bool IsAt(double? centre, double place, double length) =>
        centre is double turning && Math.Abs(turning - place) <= 1e-6 * length;

    private static void Sample(Gen<BeamModel> beams, Action<BeamModel> law) =>
        beams.Sample(law, iter: Many, print: BeamText.Of);
}
