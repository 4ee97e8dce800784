using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Tests.Envelopes;

public sealed partial class PatternTests
{
    /// <summary>4095 patterns and none, against the sum of signs.</summary>
    [Fact]
    public void TwelveSpans_AreTheBestOfAll4096Patterns()
    {
        EnvelopeProblem problem = EqualSpans(12) with { };
        Envelope envelope = Of(problem);
        BeamSolver solver = new();
        BeamResponse[] answers =
        [
            .. EveryPattern.Of(problem, CombinationBasis.Service)
                .Select(model => ((BeamOutcome.Stands)solver.Solve(model)).Combinations[0].Response),
        ];

        Assert.Equal(4096, answers.Length);
        foreach (Figure figure in Figure.All(problem.Model))
        {
            double size = answers.Max(one => Math.Max(Math.Abs(figure.GreatestOf(one)), Math.Abs(figure.LeastOf(one))));
            Assert.Equal(answers.Max(figure.GreatestOf), figure.Greatest(envelope).Value, (1e-9 * size) + double.Epsilon);
            Assert.Equal(answers.Min(figure.LeastOf), figure.Least(envelope).Value, (1e-9 * size) + double.Epsilon);
        }
    }
}
