using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Tests.Envelopes;

/// <summary>Answers kept of patterns under which supports let go, against all patterns solved one by one.</summary>
public sealed class LiftedAnswersTests
{
    [Fact]
    public void KeptAnswers_HoldTheGreatestAndLeastOfAll()
    {
        EnvelopeProblem problem = LiftedBeams.Continuous();
        Superposition sum = LiftedBeams.Sum(problem);
        BeamResponse[] all = LiftedBeams.Answers(sum);
        LiftedAnswers answers = Tried(sum);

        Assert.InRange(answers.Kept.Count, 2, all.Length - 1);
        foreach (Curve curve in Envelope.Curves)
        {
            GovernedExtremes extremes = answers.Joined(null, curve, 3, 7);
            Assert.Equal(all.Max(one => one.ExtremesOf(curve, 3, 7).Max.Value), extremes.Max.Value, 1e-12);
            Assert.Equal(all.Min(one => one.ExtremesOf(curve, 3, 7).Min.Value), extremes.Min.Value, 1e-12);
            Assert.Equal(extremes.Min.Value, Named(extremes.Min.Situation).ExtremesOf(curve, 3, 7).Min.Value, 1e-12);
            Assert.Equal(extremes.Min.Position, Named(extremes.Min.Situation).ExtremesOf(curve, 3, 7).Min.Position, 1e-9);
            foreach (double place in new[] { 0, 3, 5.0, 7, 8 })
            {
                (double least, double most) = RangeAt(all, curve, place);
                Assert.Equal(most, answers.GovernedAt(null, curve, place, 1).Value, 1e-12);
                Assert.Equal(least, answers.GovernedAt(null, curve, place, -1).Value, 1e-12);
                Assert.Equal(most, answers.MostAt(curve, place, 1), 1e-12);
                Assert.Equal(-least, answers.MostAt(curve, place, -1), 1e-12);
                Situation named = answers.GovernedAt(null, curve, place, -1).Situation;
                Assert.Equal(least, RangeAt([Named(named)], curve, place).Least, 1e-12);
            }
        }

        BeamResponse Named(Situation situation) => EnvelopeSearch.Respond(problem, situation, new BeamSolver())!;
    }

    /// <summary>What is known already counts where it is more; of a tie it stays.</summary>
    [Fact]
    public void KnownFigures_CountToo()
    {
        Superposition sum = LiftedBeams.Sum(LiftedBeams.Continuous());
        LiftedAnswers answers = Tried(sum);
        Situation elsewhere = new(7, [null], null);
        GovernedRange own = answers.Joined(null, one => one.Vertical, 1);
        GovernedExtremes bends = answers.Joined(null, Curve.Moment, 0, 8);

        Assert.Equal(own, answers.Joined(Range(own.Max.Value - 1, own.Min.Value + 1), one => one.Vertical, 1));
        Assert.Equal(
            Range(own.Max.Value + 1, own.Min.Value - 1),
            answers.Joined(Range(own.Max.Value + 1, own.Min.Value - 1), one => one.Vertical, 1));
        Assert.Equal(elsewhere, answers.Joined(Range(own.Max.Value, own.Min.Value), one => one.Vertical, 1).Max.Situation);
        Assert.Equal(bends, answers.Joined(Extremes(bends.Max.Value - 1, bends.Min.Value + 1), Curve.Moment, 0, 8));
        GovernedExtremes beyond = Extremes(bends.Max.Value + 1, bends.Min.Value - 1);
        Assert.Equal(beyond, answers.Joined(beyond, Curve.Moment, 0, 8));
        Governed at = answers.GovernedAt(null, Curve.Moment, 5, -1);
        Assert.Equal(at, answers.GovernedAt(new Governed(at.Value + 1, elsewhere), Curve.Moment, 5, -1));
        Assert.Equal(elsewhere, answers.GovernedAt(new Governed(at.Value - 1, elsewhere), Curve.Moment, 5, -1).Situation);

        GovernedRange Range(double most, double least) => new(new Governed(most, elsewhere), new Governed(least, elsewhere));

        GovernedExtremes Extremes(double most, double least) =>
            new(new GovernedExtreme(most, 1, elsewhere), new GovernedExtreme(least, 2, elsewhere));
    }

    /// <summary>
    /// The whole search: figures of all patterns solved one by one, and where a support lets go the pattern named for its
    /// least reaction is one in which it does.
    /// </summary>
    [Theory]
    [InlineData("plain")]
    [InlineData("settled")]
    [InlineData("spring")]
    [InlineData("hinged")]
    public void Envelope_IsTheBestOfAllPatterns(string kind)
    {
        EnvelopeProblem problem = kind switch
        {
            "plain" => LiftedBeams.Continuous(),
            "settled" => LiftedBeams.Continuous(settlement: 0.7),
            "spring" => LiftedBeams.Continuous(isOnSpring: true),
            _ => LiftedBeams.Hinged(),
        };
        BeamResponse[] all = LiftedBeams.Answers(LiftedBeams.Sum(problem));

        Envelope envelope = Assert.Single(EnvelopeSearch.Find(problem, new BeamSolver()));

        Assert.Equal(EnvelopeCertainty.Exact, envelope.ReactionCertainty);
        foreach (Figure figure in Figure.All(problem.Model))
        {
            Assert.Equal(all.Max(figure.GreatestOf), figure.Greatest(envelope).Value, 1e-10);
            Assert.Equal(all.Min(figure.LeastOf), figure.Least(envelope).Value, 1e-10);
        }

        for (int i = 0; i < problem.Model.Supports.Length; i++)
        {
            Situation least = envelope.Reactions[i].Vertical.Min.Situation;
            BeamResponse named = EnvelopeSearch.Respond(problem, least, new BeamSolver())!;
            Assert.Equal(all.Any(one => one.Reactions[i].IsLiftedOff), named.Reactions[i].IsLiftedOff);
        }
    }

    private static (double Least, double Most) RangeAt(BeamResponse[] answers, Curve curve, double place)
    {
        double[] values =
        [
            .. answers.SelectMany(one => Inner(one, place).Select(state => Answer.Of(curve, state))),
        ];
        return (values.Min(), values.Max());
    }

    private static IEnumerable<SectionState> Inner(BeamResponse answer, double place) =>
    [
        .. place == 0 ? (SectionState[])[] : [answer.At(place).Left],
        .. place == answer.Pieces[^1].To ? (SectionState[])[] : [answer.At(place).Right],
    ];

    private static LiftedAnswers Tried(Superposition sum)
    {
        LiftedAnswers answers = new(sum.Problem, sum.Imposed, new BeamSolver());
        foreach (Situation situation in new SituationTrials(sum, 0).Every())
        {
            Assert.NotNull(answers.Try(situation));
        }

        return answers;
    }
}
