using System.Collections.Immutable;
using CsCheck;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Tests.Laws;

/// <summary>Supports that act one way: each either gives in its own sense, or has let go and stands clear.</summary>
public sealed class LiftOffTests
{
    // Contact is decided on rounded figures; a support at the very verge may be said to be either.
    private const double Verge = 1e-9;

    private static readonly int Many = 3 * Law.Draws;

    [Fact]
    public void DrawnBeams_TouchLiftOffAndTip()
    {
        int touching = 0;
        int lifted = 0;
        int tipping = 0;
        RandomBeam.OneWay.Sample(
            model => _ = new BeamSolver().Solve(model) switch
            {
                BeamOutcome.Tips => Interlocked.Increment(ref tipping),
                BeamOutcome.Stands stands when stands.Combinations[0].Response.Reactions.Any(one => one.IsLiftedOff) =>
                    Interlocked.Increment(ref lifted),
                _ => Interlocked.Increment(ref touching),
            },
            iter: Many);

        Assert.InRange(touching, Many / 20, Many);
        Assert.InRange(lifted, Many / 20, Many);
        Assert.InRange(tipping, Many / 20, Many);
    }

    [Fact]
    public void TouchingSupport_GivesInItsOwnSense() => WhenItStands((model, response, scale) =>
    {
        foreach ((Support support, Reaction reaction) in model.Supports.Zip(response.Reactions))
        {
            double given = Sense(support) * (reaction.Normal ?? reaction.Vertical);
            Assert.True(given >= -Verge * scale.Force, $"{given:R} N at {support.Position:R}");
        }
    });

    [Fact]
    public void LiftedSupport_GivesNothingAndStandsClear() => WhenItStands((model, response, scale) =>
    {
        BeamModel left = Without(model, LiftedIn(response));
        foreach ((Support support, Reaction reaction) in model.Supports.Zip(response.Reactions))
        {
            if (!reaction.IsLiftedOff)
            {
                continue;
            }

            Assert.NotEqual(SupportAction.Both, support.Action);
            Assert.Equal((0.0, 0.0, 0.0), (reaction.Horizontal, reaction.Vertical, reaction.Moment));
            if (support.SurfaceSlope == 0 || left.Supports.Any(AlongMovement.IsKnownAt))
            {
                double gap = Sense(support) * MovementOffItsSeat(support, left, response);
                double size = scale.Deflection + Math.Abs(support.Settlement) + AlongMovement.Size(left, response);
                Assert.True(gap >= -Verge * size, $"gap of {gap:R} m at {support.Position:R}");
            }
        }
    });

    [Fact]
    public void Answer_IsThatOfTheBeamOnTheSupportsThatTouch() => WhenItStands((model, response, scale) =>
    {
        ImmutableArray<int> lifted = LiftedIn(response);
        BeamResponse without = Answer.To(Without(model, lifted));

        foreach (double x in Probes.Of(model, response))
        {
            foreach (Curve curve in Enum.GetValues<Curve>())
            {
                double expected = Answer.Of(curve, without.At(x).Right);
                double actual = Answer.Of(curve, response.At(x).Right);
                Law.Equal(expected, actual, 1e-12 * scale.Of(curve), $"{curve} at {x:R}");
            }
        }
    });

    [Fact]
    public void EverythingFourTimesAsLarge_LetsGoTheSameSupportsAndGivesFourTimesTheForce() =>
        Sample(RandomBeam.OneWay, model =>
        {
            BeamOutcome once = new BeamSolver().Solve(model);
            BeamOutcome fourfold = new BeamSolver().Solve(Magnified.By(model, 4));

            Assert.Equal(once.GetType(), fourfold.GetType());
            if (once is BeamOutcome.Stands small && fourfold is BeamOutcome.Stands large)
            {
                Assert.Equal(
                    small.Combinations[0].Response.Reactions.Select(Fourfold),
                    large.Combinations[0].Response.Reactions);
            }
        });

    [Fact]
    public void BeamOfPlainOneWaySupports_StandsExactlyWhenSomeAllowedReactionsBalanceTheLoads() =>
        Sample(RandomBeam.OneWayPlain, model =>
        {
            BeamOutcome outcome = new BeamSolver().Solve(model);

            // Between the two lies the verge of tipping, where either verdict is right.
            if (ExactStatics.CanBalance(model, reserve: Ratio.Of(1 / 128.0)))
            {
                Assert.IsType<BeamOutcome.Stands>(outcome);
            }
            else if (!ExactStatics.CanBalance(model, reserve: 0))
            {
                Assert.IsType<BeamOutcome.Tips>(outcome);
            }
        });

    [Fact]
    public void BeamThatTips_CanMoveOnTheSupportsThatAreLeft() => Sample(RandomBeam.OneWay, model =>
    {
        if (new BeamSolver().Solve(model) is BeamOutcome.Tips tips)
        {
            Assert.NotEmpty(tips.LiftedOff);
            Assert.All(tips.LiftedOff, i => Assert.NotEqual(SupportAction.Both, model.Supports[i].Action));
            Assert.NotEmpty(tips.Motions);
            Assert.True(ExactKinematics.Freedoms(Without(model, tips.LiftedOff)) > 0);
        }
    });

    private static double Sense(Support support) => support.Action switch
    {
        SupportAction.PushesOnly => 1,
        SupportAction.HoldsDownOnly => -1,
        _ => 0,
    };

    private static double MovementOffItsSeat(Support support, BeamModel left, BeamResponse response)
    {
        double up = -response.At(support.Position).Right.Deflection;
        double along = support.SurfaceSlope == 0 ? 0 : AlongMovement.At(left, response, support.Position);
        return (Math.Cos(support.SurfaceSlope) * up) - (Math.Sin(support.SurfaceSlope) * along) + support.Settlement;
    }

    private static ImmutableArray<int> LiftedIn(BeamResponse response) =>
        [.. Enumerable.Range(0, response.Reactions.Length).Where(i => response.Reactions[i].IsLiftedOff)];

    private static BeamModel Without(BeamModel model, ImmutableArray<int> supports) => model with
    {
        Supports =
        [
            .. model.Supports
                .Where((_, i) => !supports.Contains(i))
                .Select(support => support with { Action = SupportAction.Both }),
        ],
    };

    private static Reaction Fourfold(Reaction one) =>
        new(4 * one.Horizontal, 4 * one.Vertical, 4 * one.Moment, 4 * one.Normal, one.IsLiftedOff);

    private static void WhenItStands(Action<BeamModel, BeamResponse, Scale> law) => Sample(RandomBeam.OneWay, model =>
    {
        if (new BeamSolver().Solve(model) is BeamOutcome.Stands stands)
        {
            BeamResponse response = stands.Combinations[0].Response;
            law(model, response, new Scale(model, response));
        }
    });

    private static void Sample(Gen<BeamModel> beams, Action<BeamModel> law) =>
        beams.Sample(law, iter: Many, print: BeamText.Of);
}
