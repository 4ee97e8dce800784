using System.Collections.Immutable;
using CsCheck;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Mechanics.Tests.Laws;

namespace FieldCheck.Mechanics.Tests.Envelopes;

/// <summary>Envelopes on supports that let go.</summary>
public sealed partial class LiftOffTests
{
    private static readonly BeamSolver Solver = new();

    /// <summary>Half of the supports act one way; one or both cases in patterns.</summary>
    private static readonly Gen<EnvelopeProblem> Problems =
        from model in RandomBeam.OneWayPlain
        from kind in Gen.Int[0, 2]
        from factors in Gen.Int[-4, 8].Select(n => n / 4.0).Array[2]
        let problem = new EnvelopeProblem(
            model with
            {
                Combinations =
                [
                    new Combination("plain", CombinationBasis.Service, [1, 1]),
                    new Combination("other", CombinationBasis.Service, [.. factors]),
                ],
            },
            kind switch { 0 => [0], 1 => [1], _ => [0, 1] },
            [])
        where problem.Model.Supports.Any(one => one.Across is not Restraint.None) && EveryPattern.CountOf(problem) <= 6
        select problem;

    [Fact]
    public void Envelope_IsTheBestOfEveryPatternSolvedWithLiftOff() => Problems.Sample(
        problem =>
        {
            (int Asked, BeamResponse[] Answers) every = Every(problem);
            ImmutableArray<Envelope> envelopes = EnvelopeSearch.Find(problem, Solver);
            if (every.Answers.Length == 0)
            {
                Assert.Empty(envelopes);
                return;
            }

            Envelope envelope = Assert.Single(envelopes);
            Assert.Equal(EnvelopeCertainty.Exact, envelope.ReactionCertainty);
            Assert.Equal(every.Answers.Length < every.Asked, !envelope.WithoutAnswer.IsEmpty);
            Scale scale = new(problem.Model, every.Answers);
            foreach (Figure figure in Figure.All(problem.Model))
            {
                double size = 1e-9 * figure.SizeOn(scale);
                Law.Equal(every.Answers.Max(figure.GreatestOf), figure.Greatest(envelope).Value, size, figure.Name);
                Law.Equal(every.Answers.Min(figure.LeastOf), figure.Least(envelope).Value, size, figure.Name);
                BeamResponse governing =
                    EnvelopeSearch.Respond(problem, figure.Greatest(envelope).Situation, Solver)!;
                Law.Equal(figure.Greatest(envelope).Value, figure.GreatestOf(governing), size, figure.Name);
            }
        },
        iter: Math.Max(1, Law.Draws / 6),
        threads: 1,
        print: problem => BeamText.Of(problem.Model));

    /// <summary>
    /// A load on the first of two spans lifts the far end: the first span is then a simple one, w·l²/8 and w·l/2, and not
    /// 49/512·w·l² and 7/16·w·l.
    /// </summary>
    [Fact]
    public void FarEndThatLifts_LeavesASimpleSpan()
    {
        Envelope envelope = Assert.Single(EnvelopeSearch.Find(TwoSpans(dead: 0), Solver));

        Assert.Equal(1.0 / 8, envelope.ExtremesOf(Curve.Moment).Max.Value, 1e-12);
        Assert.Equal(0.5, envelope.ExtremesOf(Curve.Moment).Max.Position, 1e-12);
        Assert.Equal(1.0 / 2, envelope.Reactions[0].Vertical.Max.Value, 1e-12);
        Assert.Equal([0], envelope.Reactions[0].Vertical.Max.Situation.Patterns[1]!.Bays.AsEnumerable());
        Assert.Equal(0, envelope.Reactions[2].Vertical.Min.Value);
        Assert.Equal([0], envelope.Reactions[2].Vertical.Min.Situation.Patterns[1]!.Bays.AsEnumerable());
        Assert.Equal(EnvelopeCertainty.Exact, envelope.ReactionCertainty);
        Assert.Equal(EnvelopeCertainty.Exact, envelope.CertaintyOf(Curve.Moment));
        Assert.Empty(envelope.WithoutAnswer);
        Assert.Equal(1.0 / 8, envelope.BandAt(Curve.Moment, [0.5])[0].Max, 1e-12);
    }

    /// <summary>A dead load of w holds the far end down by 3/8·w·l - 1/16·w·l: nothing lifts, and one factorisation does.</summary>
    [Fact]
    public void HeldDownByDeadLoad_AddsUp()
    {
        BeamSolver solver = new();

        Envelope envelope = Assert.Single(EnvelopeSearch.Find(TwoSpans(dead: 1), solver));

        Assert.Equal(0.3125, envelope.Reactions[2].Vertical.Min.Value, 1e-12);
        Assert.Equal(1, solver.Factorisations);
    }

    [Fact]
    public void CombinationThatLifts_LeavesTheOthersExactAndTogether()
    {
        EnvelopeProblem problem = TwoSpans(dead: 1);
        BeamModel model = problem.Model with
        {
            Combinations =
            [
                .. problem.Model.Combinations,
                new Combination("no dead load", CombinationBasis.Service, [0, 1]),
            ],
        };

        Envelope envelope = Assert.Single(
            EnvelopeSearch.Find(new EnvelopeProblem(model, problem.PatternCases, []), Solver));

        Assert.Equal(0, envelope.Reactions[2].Vertical.Min.Value);
        Assert.Equal(1, envelope.Reactions[2].Vertical.Min.Situation.Combination);
        Assert.Equal(0.375 + 0.4375, envelope.Reactions[0].Vertical.Max.Value, 1e-12);
        Assert.Equal(0, envelope.Reactions[0].Vertical.Max.Situation.Combination);
    }

    /// <summary>
    /// 6 m on two supports that only push, an overhang of 2 m: w = 3 holds the left end with 3·6·1/4 = 4.5, so a force of 12
    /// lifts it from where 12·a/4 > 4.5 on.
    /// </summary>
    [Fact]
    public void RollingLoadThatTips_IsNamed()
    {
        BeamModel model = new(
            [new Span(4, 1, 1), new Span(2, 1, 1)],
            [
                Support.Pin(0) with { Action = SupportAction.PushesOnly },
                Support.Roller(4) with { Action = SupportAction.PushesOnly },
            ],
            [],
            [new LoadCase("dead", [new Load.Distributed(0, 6, 3, 3)]), new LoadCase("live", [])],
            [new Combination("all", CombinationBasis.Service, [1, 1])]);
        RollingLoad force = new("cart", 1, [new Axle(0, 12)]);

        Envelope tips = Assert.Single(EnvelopeSearch.Find(new EnvelopeProblem(model, [], [force]), Solver));
        Envelope stands = Assert.Single(EnvelopeSearch.Find(
            new EnvelopeProblem(model, [], [new RollingLoad("cart", 1, [new Axle(0, 1)])]), Solver));

        Situation named = Assert.Single(tips.WithoutAnswer);
        Assert.InRange(named.Rolling!.Position, 4 + (4.5 * 4 / 12), 6);
        Assert.Equal(EnvelopeCertainty.Estimate, tips.ReactionCertainty);
        Assert.Empty(stands.WithoutAnswer);
        Assert.Equal(EnvelopeCertainty.Exact, stands.ReactionCertainty);
        Assert.Equal(4.5 - 0.5, stands.Reactions[0].Vertical.Min.Value, 1e-12);
    }

    /// <summary>Against 2,000 places each way: an estimate, but a near one.</summary>
    [Fact]
    public void RollingLoadThatLiftsASupport_IsEstimatedNearly()
    {
        BeamModel model = TwoSpans(dead: 0).Model;
        EnvelopeProblem problem = new(model, [], [new RollingLoad("cart", 1, [new Axle(0, 2), new Axle(0.3, 4)])]);

        Envelope envelope = Assert.Single(EnvelopeSearch.Find(problem, Solver));
        BeamResponse[] answers =
        [
            .. EveryPlace.Steps(problem, 2000).Select(place =>
                ((BeamOutcome.Stands)Solver.Solve(EveryPlace.With(model, problem, place))).Combinations[0].Response),
        ];

        Assert.Equal(EnvelopeCertainty.Estimate, envelope.CertaintyOf(Curve.Moment));
        foreach (Figure figure in Figure.All(model).Where(one => !one.Name.StartsWith("horizontal", StringComparison.Ordinal)))
        {
            double most = answers.Max(figure.GreatestOf);
            double least = answers.Min(figure.LeastOf);
            double size = Math.Max(Math.Abs(most), Math.Abs(least));
            Assert.Equal(most, figure.Greatest(envelope).Value, (2e-3 * size) + 1e-15);
            Assert.Equal(least, figure.Least(envelope).Value, (2e-3 * size) + 1e-15);
        }
    }

    private static (int Asked, BeamResponse[] Answers) Every(EnvelopeProblem problem)
    {
        BeamModel[] asked =
        [
            .. from pattern in EveryPattern.Of(problem, CombinationBasis.Service)
               from combination in pattern.Combinations
               select pattern with { Combinations = [combination] },
        ];
        return (asked.Length, [.. asked.Select(Solver.Solve).OfType<BeamOutcome.Stands>().Select(one => one.Combinations[0].Response)]);
    }

    private static EnvelopeProblem TwoSpans(double dead) => new(
        new BeamModel(
            [new Span(1, 1, 1), new Span(1, 1, 1)],
            [
                Support.Pin(0),
                Support.Roller(1) with { Action = SupportAction.PushesOnly },
                Support.Roller(2) with { Action = SupportAction.PushesOnly },
            ],
            [],
            [
                new LoadCase("dead", [new Load.Distributed(0, 2, dead, dead)]),
                new LoadCase("live", [new Load.Distributed(0, 2, 1, 1)]),
            ],
            [new Combination("all", CombinationBasis.Service, [1, 1])]),
        [1],
        []);
}
