using System.Collections.Immutable;
using CsCheck;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;
using static FieldCheck.Mechanics.Tests.Solving.Beams;

namespace FieldCheck.Mechanics.Tests.Solving;

/// <summary>Supports that let go, worked by hand, and against trying every set of touching supports.</summary>
public sealed class LiftOffTests
{
    private const double P = 6e3;

    [Fact]
    public void ThreeSupports_LoadInTheFirstSpan_LiftsTheLast()
    {
        BeamResponse response = Solve(12, [Support.Pin(0), Support.Roller(6), Pushing(12)], [new Load.Point(3, P)]);

        Assert.True(response.Reactions[2].IsLiftedOff);
        Assert.Equal(new Reaction(0, 0, 0, null, true), response.Reactions[2]);
        Equal(P / 2, response.Reactions[0].Vertical);
        Equal(P / 2, response.Reactions[1].Vertical);

        // The free tail keeps the end slope PL²/16EI of the loaded span: it rises by that times 6 m.
        Equal(-P * 36 / (16 * Rigidity) * 6, response.At(12).Left.Deflection);
    }

    [Fact]
    public void ThreeSupports_BothSpansLoaded_NothingLifts()
    {
        BeamResponse response = Solve(
            12, [Pushing(0) with { Along = Restraint.Held }, Pushing(6), Pushing(12)], [Uniform(0, 12, 1e3)]);

        Assert.All(response.Reactions, reaction => Assert.False(reaction.IsLiftedOff));
        Equal(0.375 * 6e3, response.Reactions[2].Vertical);
    }

    [Fact]
    public void SmallGap_ClosesUnderLoad_AndTheProppedBeamCarriesOn()
    {
        const double gap = 0.004;
        Support middle = Pushing(6) with { Settlement = gap };
        BeamResponse response = Solve(12, [Support.Pin(0), middle, Support.Roller(12)], [new Load.Point(6, P)]);

        // PL³/48EI would be 108 mm: the prop takes P less the force that bends the beam by the gap.
        Assert.False(response.Reactions[1].IsLiftedOff);
        Equal(P - gap * 48 * Rigidity / 1728, response.Reactions[1].Vertical);
        Equal(gap, response.At(6).Left.Deflection);
    }

    [Fact]
    public void WideGap_StaysOpen()
    {
        Support middle = Pushing(6) with { Settlement = 0.2 };
        BeamResponse response = Solve(12, [Support.Pin(0), middle, Support.Roller(12)], [new Load.Point(6, P)]);

        Assert.True(response.Reactions[1].IsLiftedOff);
        Equal(P * 1728 / (48 * Rigidity), response.At(6).Left.Deflection);
    }

    [Fact]
    public void Strap_BesideALoadedSpan_HoldsDownThreeThirtySecondsOfIt()
    {
        BeamResponse response = Solve(6, [Strap(0), Support.Pin(3), Support.Roller(6)], [new Load.Point(4.5, P)]);

        Equal(-3 * P / 32, response.Reactions[0].Vertical);
        Assert.False(response.Reactions[0].IsLiftedOff);
    }

    [Fact]
    public void Strap_PushedDownUpon_GoesSlack()
    {
        BeamResponse response = Solve(6, [Strap(0), Support.Pin(3), Support.Roller(6)], [new Load.Point(1, P)]);

        Assert.True(response.Reactions[0].IsLiftedOff);
        Equal(P * 5 / 3, response.Reactions[1].Vertical);
        Equal(-P * 2 / 3, response.Reactions[2].Vertical);
    }

    [Fact]
    public void Strap_OnASeesaw_HoldsDownExactlyTheUplift()
    {
        BeamResponse response = Solve(9, [Strap(0), Support.Pin(6)], [new Load.Point(9, P)]);

        Equal(-P * 3 / 6, response.Reactions[0].Vertical);
        Assert.False(response.Reactions[0].IsLiftedOff);
    }

    [Fact]
    public void LoadOnTheOverhang_NothingTiedDown_TipsAboutTheOuterSupport()
    {
        BeamModel model = Beam(
            9, [Pushing(0) with { Along = Restraint.Held }, Pushing(6)], [new Load.Point(9, P)]);

        BeamOutcome.Tips outcome = Assert.IsType<BeamOutcome.Tips>(new BeamSolver().Solve(model));

        Assert.Equal([0], outcome.LiftedOff.AsEnumerable());
        Assert.Equal("all", outcome.Combination.Name);
        Assert.Contains(outcome.Motions, motion => motion.Parts.Any(part => part.Centre == 6));
    }

    [Fact]
    public void LoadRightOverTheOuterSupport_StillStands()
    {
        BeamResponse response = Solve(
            9, [Pushing(0) with { Along = Restraint.Held }, Pushing(6)], [new Load.Point(6, P)]);

        Assert.False(response.Reactions[0].IsLiftedOff);
        Assert.Equal(0, response.Reactions[0].Vertical);
        Equal(P, response.Reactions[1].Vertical);
    }

    [Fact]
    public void NothingActs_Stands()
    {
        BeamResponse response = Solve(9, [Pushing(0), Pushing(6)], []);

        Assert.All(response.Reactions, reaction => Assert.Equal(new Reaction(0, 0, 0, null, false), reaction));
    }

    [Fact]
    public void NothingActs_OnUnequalHeights_RestsOnTwoOfThree()
    {
        Support low = Pushing(6) with { Settlement = 0.01 };
        BeamResponse response = Solve(12, [Pushing(0), low, Pushing(12)], []);

        Assert.Equal(1, response.Reactions.Count(reaction => reaction.IsLiftedOff));
        Assert.All(response.Reactions, reaction => Assert.Equal(0, reaction.Vertical));
        Assert.True(response.At(6).Left.Deflection <= 0.01);
    }

    [Fact]
    public void NothingActs_OnManyUnequalHeights_RestsOnSomeOfThem()
    {
        const int spans = 30;
        Random random = new(3);
        Support[] supports =
        [
            .. Enumerable.Range(0, spans + 1).Select(
                i => Pushing(3.0 * i) with { Settlement = 0.02 * random.NextDouble() }),
        ];

        BeamResponse response = Solve(3.0 * spans, supports, []);

        Assert.InRange(response.Reactions.Count(reaction => !reaction.IsLiftedOff), 2, 3);
        Assert.All(response.Reactions, reaction => Assert.Equal(0, reaction.Vertical));
        AssertAgrees(supports, response);
    }

    [Fact]
    public void NothingActs_UnderStrapsOfUnequalHeights_HangsFromTwo()
    {
        Support low = Strap(6) with { Settlement = 0.01 };
        BeamResponse response = Solve(12, [Strap(0), low, Strap(12)], []);

        Assert.Contains(response.Reactions, reaction => reaction.IsLiftedOff);
        Assert.All(response.Reactions, reaction => Assert.Equal(0, reaction.Vertical));
    }

    [Fact]
    public void SoftBeam_TurnsUntilItMeetsTheLowSupport()
    {
        // With every support touching the low one would pull; without it the left one would; then the beam turns about
        // the middle one until it meets the low one again: P/4 and 3P/4. The springs of the search must not stop it.
        Support low = Pushing(9) with { Settlement = 0.02 };
        BeamResponse response = Solve(
            Beam([new Span(9, 100, 1e9)], [Pushing(0), Pushing(5), low], [new Load.Point(8, 0.03)]));

        Assert.True(response.Reactions[0].IsLiftedOff);
        Equal(0.0075, response.Reactions[1].Vertical);
        Equal(0.0225, response.Reactions[2].Vertical);
        Equal(0.02, response.At(9).Left.Deflection);
    }

    [Fact]
    public void SupportThatLetsGoOfItsRotationToo_MayStandWhereSwitchingFindsNothing()
    {
        // Found at random: switching lifts both; letting only the pin go leaves a cantilever from the strap's spring,
        // whose end the couple turns up and away from the pin.
        Support strap = new(
            1.7, Restraint.Free, Restraint.Held, new Restraint.Spring(1e6), 0, -0.005, 0, SupportAction.HoldsDownOnly);
        Support pin = Pushing(5.2) with { Along = Restraint.Held };
        BeamResponse response = Solve(
            Beam([new Span(5.2, 1e6, 1e9)], [strap, pin], [new Load.Couple(4.6, 4300)]));

        Assert.True(response.Reactions[1].IsLiftedOff);
        Equal(-4300, response.Reactions[0].Moment);
    }

    [Fact]
    public void LiftedPin_LetsGoAlongToo()
    {
        BeamModel model = Beam(
            12,
            [Pushing(0) with { Along = Restraint.Held }, Support.Roller(6), Support.Roller(12)],
            [new Load.Point(9, P)]);

        BeamOutcome.Stands outcome = Stands(model);

        Assert.True(outcome.Combinations[0].Response.Reactions[0].IsLiftedOff);
        Assert.False(outcome.IsHeldAlong);
    }

    [Fact]
    public void LiftedPin_ForceAlong_TipsIntoSliding()
    {
        BeamModel model = Beam(
            12,
            [Pushing(0) with { Along = Restraint.Held }, Support.Roller(6), Support.Roller(12)],
            [new Load.Point(9, P, 40)]);

        BeamOutcome.Tips outcome = Assert.IsType<BeamOutcome.Tips>(new BeamSolver().Solve(model));

        Assert.Equal([0], outcome.LiftedOff.AsEnumerable());
        Assert.True(Assert.Single(outcome.Motions).SlidesAlong);
    }

    [Fact]
    public void LiftedRotationalSpring_GivesNoMoment()
    {
        Support right = new(
            12, Restraint.Free, Restraint.Held, new Restraint.Spring(1e3), Action: SupportAction.PushesOnly);
        BeamResponse response = Solve(12, [Support.Pin(0), Support.Roller(6), right], [new Load.Point(3, P)]);

        Assert.Equal(new Reaction(0, 0, 0, null, true), response.Reactions[2]);
    }

    [Fact]
    public void RotationalSpringThatLiftsAndPressesBack_IsNotDecided()
    {
        // Turned clockwise by 1 kN·m at its very end, the stiff spring takes the couple, and what is left of the point
        // load pulls; without support and spring the couple bends the tail down onto it.
        Support right = new(
            12, Restraint.Free, Restraint.Held, new Restraint.Spring(1e9), Action: SupportAction.PushesOnly);
        BeamModel model = Beam(
            12, [Support.Pin(0), Support.Roller(6), right], [new Load.Point(3, 500), new Load.Couple(12, -1000)]);

        BeamOutcome.Undecided outcome = Assert.IsType<BeamOutcome.Undecided>(new BeamSolver().Solve(model));

        Assert.Equal(UndecidedReason.ContactContradictsItself, outcome.Reason);
    }

    [Fact]
    public void SlopedRollerThatOnlyPushes_LetsGoAlongItsNormal()
    {
        Support right = Support.Roller(12, 0.3) with { Action = SupportAction.PushesOnly };
        BeamResponse response = Solve(12, [Support.Pin(0), Support.Roller(6), right], [new Load.Point(3, P)]);

        Assert.Equal(new Reaction(0, 0, 0, 0, true), response.Reactions[2]);
    }

    [Fact]
    public void EachCombination_FindsItsOwnTouchingSupports()
    {
        BeamModel model = new(
            [new Span(12, Rigidity, 1e9)],
            [Support.Pin(0), Support.Roller(6), Pushing(12)],
            [],
            [new LoadCase("left", [new Load.Point(3, P)]), new LoadCase("right", [new Load.Point(9, P)])],
            [
                new Combination("one", CombinationBasis.Service, [1.0, 0.0]),
                new Combination("both", CombinationBasis.Service, [1.0, 1.0]),
            ]);

        BeamOutcome.Stands outcome = Stands(model);

        Assert.True(outcome.Combinations[0].Response.Reactions[2].IsLiftedOff);
        Assert.False(outcome.Combinations[1].Response.Reactions[2].IsLiftedOff);
        Equal(5 * P / 16, outcome.Combinations[1].Response.Reactions[2].Vertical);
        Assert.Empty(outcome.Cases);
    }

    [Fact]
    public void ManySupportsOnUnevenGround_EndAtASetThatAgreesWithItself()
    {
        const int spans = 60;
        Random random = new(7);
        Support[] supports =
        [
            .. Enumerable.Range(0, spans + 1).Select(i =>
                Pushing(3.0 * i) with { Settlement = random.Next(2) * 0.02 * random.NextDouble() }),
        ];
        Load[] loads =
        [
            Uniform(0, 3.0 * spans, 300),
            .. Enumerable.Range(0, spans).Select(
                i => new Load.Point(3 * i + 3 * random.NextDouble(), random.Next(9000))),
        ];

        BeamResponse response = Solve(3.0 * spans, supports, loads);

        Assert.InRange(response.Reactions.Count(reaction => reaction.IsLiftedOff), 5, 50);
        AssertAgrees(supports, response);
        Assert.True(response.Proof.Residual < 1e-14);
    }

    [Fact]
    public void AnyBeam_StandsExactlyWhenSomeSetOfTouchingSupportsAgreesWithItself() =>
        Gen.Select(
            Gen.Int[2, 5],
            Gen.Int[-10, 20].Array[5],
            Gen.Int[0, 2].Array[5],
            Gen.Int[7, 93].Array[3],
            Gen.Int[-30, 90].Array[3])
        .Sample((count, millimetres, kinds, percents, hundreds) =>
        {
            Support[] supports =
            [
                .. Enumerable.Range(0, count).Select(i => Support.Roller(2.0 * i + 1) with
                {
                    Settlement = 0.001 * millimetres[i],
                    Action = (SupportAction)kinds[i],
                }),
            ];
            double length = 2.0 * count + 1;
            Load[] loads = [.. percents.Zip(hundreds, (at, force) => new Load.Point(0.01 * at * length, 100 * force))];

            BeamOutcome outcome = new BeamSolver().Solve(Beam(length, supports, loads));

            ImmutableArray<double>? expected = ByTryingEverySet(length, supports, loads);
            Assert.Equal(expected is not null, outcome is BeamOutcome.Stands);
            if (outcome is BeamOutcome.Stands stands)
            {
                double scale = 100.0 * hundreds.Sum(Math.Abs) + 1e4;
                ImmutableArray<double> actual = Verticals(stands.Combinations[0].Response);
                Assert.All(expected!.Value.Zip(actual), pair => Assert.Equal(pair.First, pair.Second, 1e-9 * scale));
            }
        });

    private static Support Pushing(double position) =>
        Support.Roller(position) with { Action = SupportAction.PushesOnly };

    private static Support Strap(double position) =>
        Support.Roller(position) with { Action = SupportAction.HoldsDownOnly };

    /// <summary>
    /// The reactions of the first set of touching supports that agrees with itself, solved as plain supports.
    /// </summary>
    private static ImmutableArray<double>? ByTryingEverySet(double length, Support[] supports, Load[] loads)
    {
        for (int set = 0; set < 1 << supports.Length; set++)
        {
            int[] kept = [.. Enumerable.Range(0, supports.Length).Where(i => ((set >> i) & 1) == 0)];
            bool mayGo = Enumerable.Range(0, supports.Length)
                .Except(kept)
                .All(i => supports[i].Action != SupportAction.Both);
            Support[] plain = [.. kept.Select(i => supports[i] with { Action = SupportAction.Both })];
            if (!mayGo || new BeamSolver().Solve(Beam(length, plain, loads)) is not BeamOutcome.Stands stands)
            {
                continue;
            }

            BeamResponse response = stands.Combinations[0].Response;
            double[] verticals = new double[supports.Length];
            for (int k = 0; k < kept.Length; k++)
            {
                verticals[kept[k]] = response.Reactions[k].Vertical;
            }

            if (Agrees(supports, verticals, set, response))
            {
                return [.. verticals];
            }
        }

        return null;
    }

    private static bool Agrees(Support[] supports, double[] verticals, int lifted, BeamResponse response)
    {
        for (int i = 0; i < supports.Length; i++)
        {
            double sense = supports[i].Action switch
            {
                SupportAction.PushesOnly => 1,
                SupportAction.HoldsDownOnly => -1,
                _ => 0,
            };
            double clearance = supports[i].Settlement - response.At(supports[i].Position).Left.Deflection;
            if (((lifted >> i) & 1) == 0 ? sense * verticals[i] < -1e-7 : sense * clearance < -1e-12)
            {
                return false;
            }
        }

        return true;
    }

    private static void AssertAgrees(Support[] supports, BeamResponse response)
    {
        for (int i = 0; i < supports.Length; i++)
        {
            double sunk = response.At(supports[i].Position).Left.Deflection;
            if (response.Reactions[i].IsLiftedOff)
            {
                Assert.True(sunk < supports[i].Settlement + 1e-12);
            }
            else
            {
                Assert.True(response.Reactions[i].Vertical >= 0);
                Assert.Equal(supports[i].Settlement, sunk, 1e-12);
            }
        }
    }
}
