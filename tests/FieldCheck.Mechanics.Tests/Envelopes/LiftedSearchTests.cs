using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Tests.Envelopes;

/// <summary>
/// The search among situations where supports let go, by itself: on beams with few patterns, against all of them solved one by
/// one.
/// </summary>
public sealed class LiftedSearchTests
{
    private static readonly BeamSolver Solver = new();

    /// <summary>As if there were too many patterns to try each: from the usual ones on, a part or two more or less, it finds the same.</summary>
    [Theory]
    [InlineData(0, false)]
    [InlineData(0, true)]
    [InlineData(0.3, false)]
    [InlineData(-0.2, true)]
    public void WithoutTryingEvery_FindsTheBestOfAllPatterns(double settlement, bool isOnSpring)
    {
        EnvelopeProblem problem = LiftedBeams.Continuous(settlement, isOnSpring);

        LiftedAnswers found = Run(problem, triesEvery: false);

        Assert.Equal(EnvelopeCertainty.Estimate, found.Certainty);
        IsTheBest(found, [.. new SituationTrials(LiftedBeams.Sum(problem), 0).Every()], problem, share: 0);
    }

    /// <summary>Three cases on bays long and short by turns: 2⁹ patterns, of which the usual ones are 22.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(0.002)]
    public void WithoutTryingEvery_ClimbsToTheBestOfMany(double settlement)
    {
        EnvelopeProblem problem = Bays(settlement);
        SituationTrials trials = new(LiftedBeams.Sum(problem), 0);
        Assert.Equal(512, trials.Patterns);

        IsTheBest(Run(problem, triesEvery: false), [.. trials.Every()], problem, share: 0);
    }

    [Fact]
    public void TryingEvery_IsExact()
    {
        EnvelopeProblem problem = LiftedBeams.Continuous();

        LiftedAnswers found = Run(problem, triesEvery: true);

        Assert.Equal(EnvelopeCertainty.Exact, found.Certainty);
        IsTheBest(found, [.. new SituationTrials(LiftedBeams.Sum(problem), 0).Every()], problem, share: 0);
    }

    /// <summary>Two live bays and a cart: every step with every pattern is tried, and the best place is found between the steps.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void WhatRolls_IsSteppedWithEveryPatternAndPolished(bool triesEvery)
    {
        EnvelopeProblem problem = Rolling();
        SituationTrials trials = new(LiftedBeams.Sum(problem), 0);
        Situation[] fine =
        [
            .. from pattern in trials.Every()
               from step in Enumerable.Range(0, 121)
               select pattern with { Rolling = new RollingPlace(0, step * 8.5 / 120, false) },
        ];

        LiftedAnswers found = Run(problem, triesEvery);

        Assert.Equal(EnvelopeCertainty.Estimate, found.Certainty);
        IsTheBest(found, [.. trials.Every(), .. trials.Every().SelectMany(trials.Rolled)], problem, share: 0);
        IsTheBest(found, fine, problem, share: 1e-6);
    }

    [Fact]
    public void WhatWasNotTriedThroughout_IsAnEstimateOfEveryQuantity()
    {
        Envelope envelope = Assert.Single(EnvelopeSearch.Find(Rolling(), Solver));

        Assert.Equal(EnvelopeCertainty.Estimate, envelope.ReactionCertainty);
        Assert.All(Envelope.Curves, curve => Assert.Equal(EnvelopeCertainty.Estimate, envelope.CertaintyOf(curve)));
        Assert.Empty(envelope.WithoutAnswer);
    }

    /// <summary>Wind that lifts more than all that lasts weighs: the beam flies off where nothing else stands, and that is told.</summary>
    [Fact]
    public void SituationInWhichTheBeamFliesOff_IsTold()
    {
        EnvelopeProblem problem = Bays(0, wind: -1.5);

        Envelope envelope = Assert.Single(EnvelopeSearch.Find(problem, Solver));

        Situation tips = Assert.Single(envelope.WithoutAnswer);
        Assert.Null(EnvelopeSearch.Respond(problem, tips, Solver));
    }

    private static LiftedAnswers Run(EnvelopeProblem problem, bool triesEvery)
    {
        Superposition sum = LiftedBeams.Sum(problem);
        LiftedAnswers answers = new(problem, sum.Imposed, Solver);
        new LiftedSearch(sum, 0, answers, new Lazy<RaisedRests?>(() => RaisedRests.Of(sum, Solver))).Run(triesEvery);
        return answers;
    }

    /// <summary>Nothing gives more than what was kept, but for a share of it; what was kept is what its situation gives.</summary>
    private static void IsTheBest(LiftedAnswers found, Situation[] all, EnvelopeProblem problem, double share)
    {
        BeamResponse[] answers = [.. all.Select(one => EnvelopeSearch.Respond(problem, one, Solver)!)];
        Assert.All(Figures(problem), figure =>
        {
            double most = answers.Max(figure);
            double kept = found.Kept.Max(one => figure(one.Response));
            double size = Math.Max(answers.Max(one => Math.Abs(figure(one))), 1e-3);
            Assert.InRange(kept, most - (share + 1e-9) * size, double.PositiveInfinity);
        });
        Assert.All(found.Kept, one => Assert.Equal(
            one.Response.Reactions[0].Vertical, EnvelopeSearch.Respond(problem, one.Situation, Solver)!.Reactions[0].Vertical, 1e-9));
    }

    private static IEnumerable<Func<BeamResponse, double>> Figures(EnvelopeProblem problem) =>
    [
        .. Enumerable.Range(0, problem.Model.Supports.Length).SelectMany(i => new Func<BeamResponse, double>[]
        {
            response => response.Reactions[i].Vertical, response => -response.Reactions[i].Vertical,
        }),
        .. Envelope.Curves.SelectMany(curve => new Func<BeamResponse, double>[]
        {
            response => response.ExtremesOf(curve).Max.Value, response => -response.ExtremesOf(curve).Min.Value,
        }),
    ];

    private static Support Pushes(double position, double settlement = 0) =>
        Support.Roller(position) with { Action = SupportAction.PushesOnly, Settlement = settlement };

    private static EnvelopeProblem Bays(double settlement, double wind = -1) => new(
        new BeamModel(
            [new Span(3.5, 900, 1e9), new Span(1.2, 900, 1e9), new Span(4, 900, 1e9)],
            [Support.Pin(0) with { Action = SupportAction.PushesOnly }, Pushes(3.5), Pushes(4.7, settlement), Pushes(8.7)],
            [],
            [
                new LoadCase("dead", [new Load.Distributed(0, 8.7, 1.1, 1.1)]),
                new LoadCase("live", [new Load.Distributed(0, 8.7, 3, 3)]),
                new LoadCase("stores", [new Load.Point(1, 2), new Load.Point(4, 3), new Load.Point(6.5, 2.5)]),
                new LoadCase("wind", [new Load.Distributed(0, 8.7, wind, wind)]),
            ],
            [new Combination("all", CombinationBasis.Service, [1, 1, 1, 1])]),
        [1, 2, 3],
        []);

    private static EnvelopeProblem Rolling() => new(
        new BeamModel(
            [new Span(3, 900, 1e9), new Span(4, 900, 1e9), new Span(1.5, 900, 1e9)],
            [Support.Pin(0) with { Action = SupportAction.PushesOnly }, Pushes(3), Pushes(7)],
            [],
            [
                new LoadCase("dead", [new Load.Distributed(0, 8.5, 1, 1)]), new LoadCase("live", [new Load.Distributed(0, 7, 2, 2)]),
                new LoadCase("cart", []),
            ],
            [new Combination("all", CombinationBasis.Service, [1, 1, 1])]),
        [1],
        [new RollingLoad("cart", 2, [new Axle(0, 5)])]);
}
