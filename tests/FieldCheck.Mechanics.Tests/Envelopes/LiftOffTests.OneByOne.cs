using System.Collections.Immutable;
using CsCheck;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Mechanics.Tests.Laws;

namespace FieldCheck.Mechanics.Tests.Envelopes;

public sealed partial class LiftOffTests
{
    /// <summary>
    /// Ten unequal spans that push only: every one of 1,024 patterns solved by itself, against far fewer; with and without a
    /// dead load, on springs, over a support that is low, and under one that holds down.
    /// </summary>
    [Theory]
    [InlineData(0, "rigid")]
    [InlineData(0.1, "rigid")]
    [InlineData(0.1, "springs")]
    [InlineData(0.02, "low")]
    [InlineData(0.02, "holds down")]
    public void PatternsOfTenSpans_AreTheBestOfAllSolvedOneByOne(double dead, string kind)
    {
        const int Spans = 10;
        BeamModel bare = new(
            [.. Enumerable.Range(0, Spans).Select(i => new Span(4 + (i % 3), 1 + (0.3 * (i % 4)), 1))], [], [], [], []);
        ImmutableArray<double> joints = bare.JointPositions;
        Support[] supports =
        [
            .. joints.Select((at, i) => (i == 0 ? Support.Pin(at) : Support.Roller(at)) with
            {
                Action = kind == "holds down" && i == 4 ? SupportAction.HoldsDownOnly : SupportAction.PushesOnly,
                Across = kind == "springs" && i % 2 == 1 ? new Restraint.Spring(0.5) : new Restraint.Rigid(),
                Settlement = kind == "low" && i == 3 ? 5 : 0,
            }),
        ];
        BeamModel model = bare with
        {
            Supports = [.. supports],
            Cases =
            [
                new LoadCase("dead", [new Load.Distributed(0, bare.Length, dead, dead)]),
                new LoadCase("live", [new Load.Distributed(0, bare.Length, 1, 1), new Load.Point(joints[6] + 1, 3)]),
            ],
            Combinations = [new Combination("all", CombinationBasis.Service, [1, 1])],
        };
        EnvelopeProblem problem = new(model, [1], []);
        BeamSolver solver = new();

        Envelope envelope = Assert.Single(EnvelopeSearch.Find(problem, solver));
        int factorised = solver.Factorisations;
        (int asked, BeamResponse[] answers) = Every(problem);

        Assert.Equal(1 << Spans, asked);
        Assert.Equal(answers.Length < asked, !envelope.WithoutAnswer.IsEmpty);
        Assert.InRange(factorised, 1, (1 << Spans) - 1);
        Scale scale = new(model, answers);
        foreach (Figure figure in Figure.All(model))
        {
            double size = 1e-10 * figure.SizeOn(scale);
            Law.Equal(answers.Max(figure.GreatestOf), figure.Greatest(envelope).Value, size, figure.Name);
            Law.Equal(answers.Min(figure.LeastOf), figure.Least(envelope).Value, size, figure.Name);
        }

        for (int i = 0; i < model.Supports.Length; i++)
        {
            bool letsGo = answers.Any(one => one.Reactions[i].IsLiftedOff);
            Governed least = model.Supports[i].Action == SupportAction.PushesOnly
                ? envelope.Reactions[i].Vertical.Min
                : envelope.Reactions[i].Vertical.Max;
            BeamResponse named = EnvelopeSearch.Respond(problem, least.Situation, solver)!;
            Assert.Equal(letsGo, named.Reactions[i].IsLiftedOff);
        }
    }
}
