using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Tests.Envelopes;

/// <summary>
/// The greatest and least V and M of standing loads and a train in one bay of three, against many places of the train, each
/// solved by itself: none gives more, and the situation named gives what was found where it was found.
/// </summary>
public sealed class BetweenAxlesTests
{
    private static readonly double[] Ends = [0, 3, 7, 9.5];

    private static readonly Axle[][] Trains =
    [
        [new(0, -3)], [new(0, 2), new(1.2, 3)], [new(0, -2), new(0.7, -5)], [new(0, 4), new(1.1, -6), new(2.3, 2)],
        [new(0, -3), new(5, -4)], [new(0, -6), new(2.5, 1), new(4.5, -6)], [new(0, 3), new(9.5, -4)],
    ];

    [Theory]
    [InlineData(0, 1)]
    [InlineData(1, 1)]
    [InlineData(2, 1)]
    [InlineData(3, 1)]
    [InlineData(4, 1)]
    [InlineData(5, 1)]
    [InlineData(6, 1)]
    [InlineData(0, -1)]
    [InlineData(1, -1)]
    [InlineData(2, -1)]
    [InlineData(3, -1)]
    [InlineData(4, -1)]
    [InlineData(5, -1)]
    [InlineData(6, -1)]
    public void NoPlace_GivesMore(int train, int sense)
    {
        Load[][] loads =
        [
            [new Load.Distributed(0, 3, 12, 12)], [new Load.Distributed(3, 7, 0, 20), new Load.Distributed(0, 3, 5, 1)],
            [new Load.Distributed(4, 7, 9, 9), new Load.Distributed(7, 9.5, 30, 10), new Load.Point(8, 3)],
            [new Load.Distributed(0, 9.5, -20, 14)],
        ];
        for (int load = 0; load < loads.Length; load++)
        {
            Superposition sum = Sum(Trains[train], loads[load]);
            BeamResponse[] answers = Answers(sum);
            for (int element = 0; element < 3; element++)
            {
                Hold(sum, answers, element, Curve.Moment, sense);
                Hold(sum, answers, element, Curve.Shear, sense);
            }
        }
    }

    /// <summary>Where the standing moment bends up throughout, M is greatest beside an axle or at an end: nothing is taken.</summary>
    [Theory]
    [InlineData(new[] { 0, -8.0, 8, 0 }, 0, 1, false)]
    [InlineData(new[] { 0, -8.0, 0, 4 }, 0, 1, false)]
    [InlineData(new[] { 0, -4.0, 12, -4 }, 0, 1, false)]
    [InlineData(new[] { 0, -4.0, 12, -8 }, 0, 0.5, false)]
    [InlineData(new[] { 0, 4.0, -9, 6 }, 0.5, 1, false)]
    [InlineData(new[] { 0, 4.0, -9, 6 }, 0, 1, true)]
    [InlineData(new[] { 0, -1.0, 12, -13 }, 0, 1, true)]
    public void MomentThatBendsUp_IsLeftAlone(double[] standing, double from, double to, bool isTaken)
    {
        Superposition sum = Sum([new Axle(0, 0.1)], [new Load.Distributed(0, 9.5, 1e6, 1e6)]);
        StandingCurve curve = new(new CurveParts(sum, Curve.Moment), 0, 1);
        TrainElement element = new(sum.Traffic!.Trains[0], sum.Traffic.Influence, 1);
        Leader<Worst> leader = new(0, 9.5);

        new BetweenAxles(element, curve, 1, 1).Take(standing, from, to, ref leader);

        Assert.Equal(isTaken, !double.IsNegativeInfinity(leader.Value));
    }

    private static void Hold(Superposition sum, BeamResponse[] answers, int element, Curve curve, int sense)
    {
        (double left, double right) = (Ends[element], Ends[element + 1]);
        int first = sum.Imposed.ToList().FindIndex(piece => piece.From == left);
        int last = sum.Imposed.ToList().FindIndex(piece => piece.To == right);
        StandingCurve standing = new(new CurveParts(sum, curve), 0, sense);
        Leader<Worst> leader = StandingSearch.Greatest([standing], first..(last + 1));
        foreach (Train train in sum.Traffic!.Trains)
        {
            TrainElement own = new(train, sum.Traffic.Influence, element);
            new RollingForces(own, curve).Take(standing, first..(last + 1), sense, ref leader);
        }

        double most = answers.Max(answer =>
        {
            Extremes extremes = answer.ExtremesOf(curve, left, right);
            return sense > 0 ? extremes.Max.Value : -extremes.Min.Value;
        });
        Assert.True(most <= leader.Value + 1e-10, $"{curve} on {element}: {most:R} is more than {leader.Value:R}");

        Situation situation = leader.Situation.Situation(jumpsBesideAxle: curve == Curve.Shear);
        BeamResponse named = EnvelopeSearch.Respond(sum.Problem, situation, new BeamSolver())!;
        (SectionState before, SectionState after) = named.At(leader.Position);
        double[] there = [sense * Answer.Of(curve, before), sense * Answer.Of(curve, after)];
        Assert.InRange(there.Min(value => Math.Abs(value - leader.Value)), 0, 1e-5);
    }

    /// <summary>Without the train, and with it in even steps from event to event, next to these and between.</summary>
    private static BeamResponse[] Answers(Superposition sum)
    {
        BeamSolver solver = new();
        List<BeamModel> models = [sum.Problem.Model];
        foreach (Train train in sum.Traffic!.Trains)
        {
            for (int interval = 0; interval < train.IntervalCount; interval++)
            {
                for (int step = 0; step <= 4; step++)
                {
                    double place = train.StartOf(interval) + (1e-9 + 0.249 * step) * train.LengthOf(interval);
                    models.Add(EveryPlace.With(sum.Problem.Model, sum.Problem, (0, place, train.IsReversed)));
                }
            }
        }

        return [.. models.Select(model => ((BeamOutcome.Stands)solver.Solve(model)).Combinations[0].Response)];
    }

    private static Superposition Sum(Axle[] axles, Load[] loads) => LiftedBeams.Sum(new EnvelopeProblem(
        new BeamModel(
            [new Span(3, 1, 1), new Span(4, 2, 1), new Span(2.5, 1, 1)],
            [Support.Pin(0), Support.Roller(3), Support.Roller(7), Support.Roller(9.5)],
            [],
            [new LoadCase("all", [.. loads])],
            [new Combination("all", CombinationBasis.Service, [1])]),
        [],
        [new RollingLoad("train", 0, [.. axles])]));
}
