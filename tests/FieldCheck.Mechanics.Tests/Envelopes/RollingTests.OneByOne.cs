using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Tests.Envelopes;

public sealed partial class RollingTests
{
    /// <summary>Three axles on three spans and an overhang, with a standing load and a hinge, at 10,000 places.</summary>
    [Fact]
    public void TenThousandPlaces_AreNeverWorse()
    {
        BeamModel model = Spans(5, 6, 4, 2) with
        {
            Supports = [Support.Pin(0), Support.Roller(5), Support.Spring(11, 40), Support.Roller(15)],
            Hinges = [7],
            Cases = [new LoadCase("all", [new Load.Distributed(1, 16, 0.5, 1.5), new Load.Point(8, 3)])],
        };
        EnvelopeProblem problem = Problem(model, Rolling(new Axle(0, 4), new Axle(1.2, 9), new Axle(3.7, 6)));
        Envelope envelope = Assert.Single(EnvelopeSearch.Find(problem, new BeamSolver()));
        BeamSolver solver = new();
        BeamResponse[] answers =
        [
            .. EveryPlace.Steps(problem, 5000).Select(place =>
                ((BeamOutcome.Stands)solver.Solve(EveryPlace.With(model, problem, place))).Combinations[0].Response),
        ];

        Assert.Equal(10_002, answers.Length);
        foreach (Figure figure in Figure.All(model))
        {
            double most = answers.Max(figure.GreatestOf);
            double least = answers.Min(figure.LeastOf);
            double size = Math.Max(Math.Abs(most), Math.Abs(least));
            Assert.InRange(figure.Greatest(envelope).Value, most - (1e-9 * size), most + (2e-3 * size));
            Assert.InRange(figure.Least(envelope).Value, least - (2e-3 * size), least + (1e-9 * size));
        }
    }
}
