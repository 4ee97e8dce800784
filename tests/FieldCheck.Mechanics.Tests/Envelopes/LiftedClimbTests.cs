using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Tests.Envelopes;

/// <summary>
/// Where supports let go while loads may be away and others roll, the worst pattern is none of the usual kinds: against every
/// pattern with what rolls at many places, each solved by itself.
/// </summary>
public sealed class LiftedClimbTests
{
    private const int Places = 80;

    private static readonly BeamSolver Solver = new();

    /// <summary>Short bays beside long ones; the last support of the first beam is a strap, that of the second is low.</summary>
    public static TheoryData<string> Kinds => ["strap", "low", "several cases"];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void NoPatternWithWhatRolls_IsWorseByMuch(string kind)
    {
        EnvelopeProblem problem = Problem(kind);
        Envelope envelope = Assert.Single(EnvelopeSearch.Find(problem, Solver));
        BeamResponse[] all =
        [
            .. EveryPattern.Of(problem, CombinationBasis.Service)
                .SelectMany(model => EveryPlace.Steps(problem, Places).Select(place => EveryPlace.With(model, problem, place)).Prepend(model))
                .Select(model => Solver.Solve(model))
                .OfType<BeamOutcome.Stands>()
                .Select(one => one.Combinations[0].Response),
        ];

        // With several cases there are too many patterns to set what rolls down with each.
        double share = kind == "several cases" ? 2e-2 : 2e-3;
        Assert.Equal(EnvelopeCertainty.Estimate, envelope.ReactionCertainty);
        for (int i = 0; i < problem.Model.Supports.Length; i++)
        {
            GovernedRange found = envelope.Reactions[i].Vertical;
            double size = all.Max(one => Math.Abs(one.Reactions[i].Vertical));
            double near = share * size;
            Assert.InRange(all.Max(one => one.Reactions[i].Vertical), double.NegativeInfinity, found.Max.Value + near);
            Assert.InRange(all.Min(one => one.Reactions[i].Vertical), found.Min.Value - near, double.PositiveInfinity);
            foreach (Governed end in new[] { found.Max, found.Min })
            {
                Assert.Equal(end.Value, EnvelopeSearch.Respond(problem, end.Situation, Solver)!.Reactions[i].Vertical, 1e-9 * size + 1e-9);
            }
        }

        GovernedExtremes bends = envelope.ExtremesOf(Curve.Moment);
        double largest = all.Max(one => Math.Max(Math.Abs(one.ExtremesOf(Curve.Moment).Max.Value), Math.Abs(one.ExtremesOf(Curve.Moment).Min.Value)));
        Assert.InRange(all.Max(one => one.ExtremesOf(Curve.Moment).Max.Value), double.NegativeInfinity, bends.Max.Value + share * largest);
        Assert.InRange(all.Min(one => one.ExtremesOf(Curve.Moment).Min.Value), bends.Min.Value - share * largest, double.PositiveInfinity);
    }

    private static EnvelopeProblem Problem(string kind)
    {
        double[] lengths = kind == "strap" ? [1.5, 1.2, 3.5, 1.2, 1.2] : [3.5, 1.2, 4, 1.2, 1.1];
        BeamModel model = new(
            [.. lengths.Select(length => new Span(length, 17e6, 1.1e9, 2.2e8))],
            kind == "strap"
                ?
                [
                    Support.Pin(1.5) with { Action = SupportAction.PushesOnly },
                    Support.Roller(2.7) with { Action = SupportAction.PushesOnly },
                    Support.Roller(6.2) with { Action = SupportAction.PushesOnly },
                    Support.Roller(7.4) with { Action = SupportAction.HoldsDownOnly },
                ]
                :
                [
                    Support.Pin(0) with { Action = SupportAction.PushesOnly },
                    Support.Roller(3.5) with { Action = SupportAction.PushesOnly },
                    Support.Roller(4.7) with { Action = SupportAction.PushesOnly },
                    Support.Roller(8.7) with { Action = SupportAction.PushesOnly },
                    Support.Roller(9.9) with { Action = SupportAction.PushesOnly, Settlement = 0.004 },
                ],
            [],
            [
                new LoadCase("dead", [new Load.Distributed(0, lengths.Sum(), 1100, 1100)]),
                new LoadCase("live", [new Load.Distributed(0, lengths.Sum(), 3000, 3000)]),
                new LoadCase("cart", kind == "several cases" ? [new Load.Point(1, 2000), new Load.Point(6.5, 2500)] : []),
            ],
            [new Combination("all", CombinationBasis.Service, [1, 1, 1])]);
        RollingLoad cart = new(
            "cart", 2, kind == "strap" ? [new Axle(0, 4000)] : [new Axle(0, 2000), new Axle(1.4, 3000), new Axle(2.3, 3000)], 0);
        return new EnvelopeProblem(model, kind == "several cases" ? [1, 2] : [1], [cart]);
    }
}
