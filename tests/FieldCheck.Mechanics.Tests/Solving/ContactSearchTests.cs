using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;
using static FieldCheck.Mechanics.Tests.Solving.Beams;

namespace FieldCheck.Mechanics.Tests.Solving;

/// <summary>How the touching supports are found: by switching, by a gentle press, by trying every set.</summary>
public sealed class ContactSearchTests
{
    [Theory]
    [InlineData(SupportAction.PushesOnly)]
    [InlineData(SupportAction.HoldsDownOnly)]
    public void ManySupportsOfUnequalHeights_NothingActs_RestsOnTwoOrThreeOfThem(SupportAction action)
    {
        // More supports than every set is tried of; an odd number at even distances would balance on the middle one.
        for (int seed = 0; seed < 100; seed++)
        {
            Random random = new(seed);
            Support[] supports =
            [
                .. Enumerable.Range(0, 14 + seed % 5).Select(i => Support.Roller(2.0 * i) with
                {
                    Action = action,
                    Settlement = 0.02 * random.NextDouble() - 0.01,
                }),
            ];

            BeamResponse response = Solve(2.0 * (supports.Length - 1), supports, []);

            Assert.InRange(response.Reactions.Count(reaction => !reaction.IsLiftedOff), 2, 3);
            Assert.All(response.Reactions, reaction => Assert.Equal(0, reaction.Vertical));
            AssertAgrees(supports, response, 0);
        }
    }

    [Fact]
    public void ManySupportsOfUnequalHeights_LoadedBetweenTheFirstAndTheLast_AlwaysStands()
    {
        for (int seed = 0; seed < 100; seed++)
        {
            Random random = new(seed);
            Support[] supports =
            [
                .. Enumerable.Range(0, 13 + seed % 6)
                    .Select(i => Pushing(2.0 * i) with { Settlement = 0.02 * random.NextDouble() }),
            ];
            double length = 2.0 * (supports.Length - 1);
            double size = Math.Pow(10, random.Next(-3, 6));
            Load[] loads = [.. Enumerable.Range(0, 1 + seed % 4).Select(_ => new Load.Point(length * random.NextDouble(), size * random.NextDouble()))];

            AssertAgrees(supports, Solve(length, supports, loads), size);
        }
    }

    [Theory]
    [InlineData(0)]
    [InlineData(0.3)]
    public void LoadRightOverOneOfManySupportsOfUnequalHeights_StandsOnIt(double overhang)
    {
        for (int seed = 0; seed < 150; seed++)
        {
            Random random = new(seed);
            int count = 13 + seed % 8;
            Support[] supports =
            [
                .. Enumerable.Range(0, count)
                    .Select(i => Pushing(overhang + 1.1 * i) with { Settlement = 0.001 * random.Next(4) }),
            ];
            int over = random.Next(3) == 0 ? random.Next(count) : 0;
            double force = Math.Pow(10, random.Next(-2, 5));
            BeamModel model = Beam(1.1 * (count - 1) + 2 * overhang, supports, [new Load.Point(supports[over].Position, force)]);

            BeamOutcome.Stands stands = Assert.IsType<BeamOutcome.Stands>(new BeamSolver().Solve(model));

            AssertAgrees(supports, stands.Combinations[0].Response, force);
        }
    }

    [Fact]
    public void ManySupports_AreSwitchedAtOnce_NotOneByOne()
    {
        const int spans = 60;
        Random random = new(7);
        Support[] supports =
        [
            .. Enumerable.Range(0, spans + 1).Select(i =>
                Pushing(3.0 * i) with { Settlement = random.Next(2) * 0.02 * random.NextDouble() }),
        ];
        Load[] loads = [Uniform(0, 3.0 * spans, 300), .. Enumerable.Range(0, spans).Select(i => new Load.Point(3 * i + 1, random.Next(9000)))];
        BeamSolver solver = new();

        BeamOutcome.Stands stands = Assert.IsType<BeamOutcome.Stands>(solver.Solve(Beam(3.0 * spans, supports, loads)));

        int lifted = stands.Combinations[0].Response.Reactions.Count(reaction => reaction.IsLiftedOff);
        Assert.InRange(lifted, 10, 50);
        Assert.InRange(solver.Factorisations, 2, 10);
    }

    [Theory]
    [InlineData(10, true)]
    [InlineData(11, false)]
    public void EverySetIsTried_OfUpToTwelveOneWaySupports(int outOfReach, bool isFound)
    {
        // The beam of LiftOffTests that switching does not solve, with supports ten metres too low to be met.
        Support strap = new(
            1.7, Restraint.Free, Restraint.Held, new Restraint.Spring(1e6), 0, -0.005, 0, SupportAction.HoldsDownOnly);
        Support pin = Pushing(5.2) with { Along = Restraint.Held };
        Support[] low = [.. Enumerable.Range(0, outOfReach).Select(i => Pushing(2 + 0.25 * i) with { Settlement = 10 })];

        BeamOutcome outcome = new BeamSolver().Solve(
            Beam([new Span(5.2, 1e6, 1e9)], [strap, .. low, pin], [new Load.Couple(4.6, 4300)]));

        Assert.Equal(isFound, outcome is BeamOutcome.Stands);
        if (outcome is BeamOutcome.Stands stands)
        {
            Equal(-4300, stands.Combinations[0].Response.Reactions[0].Moment);
            Assert.All(stands.Combinations[0].Response.Reactions.Skip(1), reaction => Assert.True(reaction.IsLiftedOff));
        }
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void WhatTipsOffPlainSupports_IsNotSearchedFurther(bool isSloped)
    {
        // Ten supports have 1,024 sets; none of them can hold a load that far out.
        Support[] supports =
        [
            Pushing(0) with { Along = isSloped ? Restraint.Free : Restraint.Held },
            .. Enumerable.Range(1, 9).Select(i => Pushing(2.0 * i)),
        ];
        supports[4] = isSloped ? Support.Roller(8, 0.1) with { Action = SupportAction.PushesOnly } : supports[4];
        supports[9] = isSloped ? new Support(18, Restraint.Held, Restraint.Held, Restraint.Free) : supports[9];
        BeamSolver solver = new();

        BeamOutcome outcome = solver.Solve(Beam(40, supports, [new Load.Point(40, 1000)]));

        BeamOutcome.Tips tips = Assert.IsType<BeamOutcome.Tips>(outcome);
        Assert.Equal(Enumerable.Range(0, 9), tips.LiftedOff);
        Assert.InRange(solver.Factorisations, 2, 30);
    }

    [Fact]
    public void SupportThatTakesItsRotationAlong_AndLeavesTheBeamUnheld_TipsAndIsNamed()
    {
        Support first = new(0, Restraint.Free, Restraint.Held, new Restraint.Spring(1e3), Action: SupportAction.PushesOnly);

        BeamOutcome outcome = new BeamSolver().Solve(
            Beam(9, [first, Pushing(3), Pushing(6)], [new Load.Point(9, 5e3), new Load.Point(1, 10)]));

        BeamOutcome.Tips tips = Assert.IsType<BeamOutcome.Tips>(outcome);
        Assert.Equal([0, 1], tips.LiftedOff.AsEnumerable());
        Assert.Equal(new MovingPart(0, 9, 6), Assert.Single(tips.Motions.Single(motion => !motion.SlidesAlong).Parts));
    }

    private static void AssertAgrees(Support[] supports, BeamResponse response, double size) =>
        Assert.All(supports.Zip(response.Reactions), pair =>
        {
            double clear = pair.First.Settlement - response.At(pair.First.Position).Left.Deflection;
            double sense = pair.First.Action == SupportAction.PushesOnly ? 1 : -1;
            Assert.True(sense * clear >= -1e-12 && sense * pair.Second.Vertical >= -1e-9 * size);
            Assert.True(pair.Second.IsLiftedOff ? pair.Second.Vertical == 0 : Math.Abs(clear) < 1e-12);
        });

    private static Support Pushing(double position) =>
        Support.Roller(position) with { Action = SupportAction.PushesOnly };
}
