using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Tests.Envelopes;

/// <summary>Beams on supports that let go under some patterns, few enough to solve every one.</summary>
internal static class LiftedBeams
{
    /// <summary>
    /// Bays of 3 and 4 m and an overhang of 1 m on supports that push only but for the first; a live load on each, and in the
    /// second bay forces along that only stretch it.
    /// </summary>
    internal static EnvelopeProblem Continuous(double settlement = 0, bool isOnSpring = false, double factor = 1) => new(
        new BeamModel(
            [new Span(3, 10, 5), new Span(4, 20, 5, 30), new Span(1, 10, 5)],
            [
                Support.Pin(0),
                Pushes(3) with { Settlement = settlement },
                Pushes(7) with { Across = isOnSpring ? new Restraint.Spring(4) : new Restraint.Rigid() },
            ],
            [],
            [
                new LoadCase("dead", [new Load.Distributed(0, 8, 1, 1)]),
                new LoadCase("live", [new Load.Distributed(0, 8, 3, 3), new Load.Point(5, 4)]),
                new LoadCase("pull", [new Load.Point(4, 0, 5), new Load.Point(6, 0, -5)]),
                new LoadCase("other", [new Load.Distributed(0, 3, -1, 2)]),
            ],
            [new Combination("all", CombinationBasis.Service, [factor, 1.5 * factor, factor, factor])]),
        [1, 2, 3],
        []);

    /// <summary>
    /// A simple bay of 6 m, hinged to bays of 3 and 2 m whose far end may let go. In the simple bay forces that keep balance, so
    /// that no reaction tells of them.
    /// </summary>
    internal static EnvelopeProblem Hinged() => new(
        new BeamModel(
            [new Span(6, 10, 5, 8), new Span(5, 20, 5)],
            [Support.Pin(0), Support.Roller(6), Support.Roller(9), Pushes(11)],
            [6],
            [
                new LoadCase("dead", [new Load.Distributed(0, 11, 0.5, 1)]),
                new LoadCase("live", [new Load.Distributed(6, 11, 3, 2)]),
                new LoadCase("left", [new Load.Point(1, 2), new Load.Point(2, -4), new Load.Point(3, 2)]),
                new LoadCase("along", [new Load.Point(2.5, 0, 7), new Load.Point(5, 0, -7)]),
                new LoadCase("right", [new Load.Point(3.5, -3), new Load.Point(4.25, 6), new Load.Point(5, -3)]),
            ],
            [new Combination("all", CombinationBasis.Service, [1, 1, 1, 1, 1])]),
        [1, 2, 3, 4],
        []);

    internal static Superposition Sum(EnvelopeProblem problem) => Superposition.Of(problem, new BeamSolver())!;

    /// <summary>The answers to all patterns, bit k for the k-th optional part, each by a solve of its own.</summary>
    internal static BeamResponse[] Answers(Superposition sum)
    {
        BeamSolver solver = new();
        return
        [
            .. new SituationTrials(sum, 0).Every()
                .Select(situation => EnvelopeSearch.Respond(sum.Problem, situation, solver)!),
        ];
    }

    private static Support Pushes(double position) => Support.Roller(position) with { Action = SupportAction.PushesOnly };
}
