using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Tests.Envelopes;

/// <summary>The greatest and least so far, against the values that each answer gives when it is asked.</summary>
public sealed class LiftedRecordsTests
{
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Records_AreTheGreatestAndLeastOfAllAnswers(bool isHinged)
    {
        EnvelopeProblem problem = isHinged ? LiftedBeams.Hinged() : LiftedBeams.Continuous(0.05);
        Superposition sum = LiftedBeams.Sum(problem);
        BeamResponse[] answers = [.. LiftedBeams.Answers(sum).Where((_, i) => i % 5 == 0)];
        LiftedRecords records = new(problem, sum.Imposed);
        Assert.True(records.IsEmpty);
        for (int count = 1; count <= answers.Length; count++)
        {
            records.Take(answers[count - 1]);

            Assert.False(records.IsEmpty);
            Hold(problem, records, sum.Imposed, answers[..count]);
        }

        Assert.All(answers, answer => Assert.False(records.Take(answer)));
    }

    /// <summary>The first always breaks a record; then what is more or less somewhere, not what lies between.</summary>
    [Fact]
    public void AnswerThatIsNoMoreAnywhere_BreaksNone()
    {
        EnvelopeProblem problem = LiftedBeams.Continuous();
        Superposition sum = LiftedBeams.Sum(problem);
        BeamResponse[] answers = [.. new[] { 1.0, 3, 2, 3.5, 0.5, 0.7 }.Select(Loaded)];
        LiftedRecords records = new(problem, sum.Imposed);

        Assert.Equal([true, true, false, true, true, false], answers.Select(records.Take));

        // More of one kind only: at the same reactions, the pull along.
        BeamResponse pulled = Answer.To(With(new Load.Point(4, 0, 5), new Load.Point(6, 0, -5)));
        Assert.True(records.Take(pulled));
        Assert.False(records.Take(pulled));

        BeamResponse Loaded(double intensity) => Answer.To(With(new Load.Distributed(0, 8, intensity, intensity)));

        BeamModel With(params ImmutableArray<Load> loads) => problem.Model with
        {
            Cases = [new LoadCase("all", loads)],
            Combinations = [new Combination("all", CombinationBasis.Service, [1])],
        };
    }

    /// <summary>By more than 1e-12 of the greater one, up or down.</summary>
    [Fact]
    public void More_IsMoreThanRounding()
    {
        Assert.True(LiftedRecords.IsMore(100 + 1.1e-10, 100, 1));
        Assert.False(LiftedRecords.IsMore(100 + 0.9e-10, 100, 1));
        Assert.False(LiftedRecords.IsMore(100, 100, 1));
        Assert.False(LiftedRecords.IsMore(0, 0, 1));
        Assert.False(LiftedRecords.IsMore(100, 100 + 1.1e-10, 1));
        Assert.True(LiftedRecords.IsMore(-100 - 1.1e-10, -100, -1));
        Assert.False(LiftedRecords.IsMore(-100 - 0.9e-10, -100, -1));
        Assert.True(LiftedRecords.IsMore(1e-20, 0, 1));
        Assert.True(LiftedRecords.IsMore(3e6, 2e6, 1));
        Assert.True(LiftedRecords.IsMore(3e-6, 2e-6, 1));
    }

    private static void Hold(
        EnvelopeProblem problem, LiftedRecords records, ImmutableArray<Piece> pieces, BeamResponse[] answers)
    {
        ImmutableArray<double> nodes = problem.Model.NodePositions();
        for (int i = 0; i < problem.Model.Supports.Length; i++)
        {
            int support = i;
            Equal(ReactionComponent.Horizontal, answer => answer.Reactions[support].Horizontal);
            Equal(ReactionComponent.Vertical, answer => answer.Reactions[support].Vertical);
            Equal(ReactionComponent.Moment, answer => answer.Reactions[support].Moment);

            void Equal(ReactionComponent component, Func<BeamResponse, double> part) => Near(
                LiftedRecords.ReactionFigure(support, component), answers.Max(part), answers.Min(part));
        }

        for (int curve = 0; curve < Envelope.Curves.Length; curve++)
        {
            Curve quantity = Envelope.Curves[curve];
            for (int e = 0; e + 1 < nodes.Length; e++)
            {
                (double from, double to) = (nodes[e], nodes[e + 1]);
                Near(
                    records.ElementFigure(curve, e),
                    answers.Max(answer => answer.ExtremesOf(quantity, from, to).Max.Value),
                    answers.Min(answer => answer.ExtremesOf(quantity, from, to).Min.Value));
            }

            for (int place = 0; place <= LiftedRecords.Stations * pieces.Length; place++)
            {
                Piece piece = pieces[Math.Min(place / LiftedRecords.Stations, pieces.Length - 1)];
                double at = place == LiftedRecords.Stations * pieces.Length
                    ? piece.To
                    : piece.From + (place % LiftedRecords.Stations * piece.Length / LiftedRecords.Stations);
                double[] values =
                [
                    .. answers.Select(answer => answer.At(at))
                        .SelectMany(one => new[] { Answer.Of(quantity, one.Left), Answer.Of(quantity, one.Right) }),
                ];
                Near(records.PlaceFigure(curve, place), values.Max(), values.Min());
            }
        }

        void Near(int figure, double most, double least)
        {
            Assert.Equal(most, records.Most(figure), 1e-11);
            Assert.Equal(least, records.Least(figure), 1e-11);
        }
    }
}
