using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Tests.Envelopes;

/// <summary>
/// Envelopes of rolling loads on small beams of each kind, held from both sides: loads are set down at evenly spread places, and
/// from the best of these on where the figure is greatest by golden sections. It knows nothing of influence lines.
/// </summary>
public sealed class RollingRefinedTests
{
    private const int Places = 30;
    private const double Near = 1e-6;
    private static readonly BeamSolver Solver = new();

    public static TheoryData<string> Names => [.. Problems.Keys];

    /// <summary>Rigidities of 1: deflections come out as multiples of 1/EI.</summary>
    private static Dictionary<string, EnvelopeProblem> Problems => new()
    {
        ["two axles on a simple span"] = Of(Beam([12], Support.Pin(0), Support.Roller(12)), new Axle(0, 50), new Axle(2.5, 30)),
        ["three axles on two spans"] = Of(
            Beam([5, 6.5], Support.Pin(0), Support.Roller(5), Support.Roller(11.5)), new Axle(0, 4), new Axle(1.2, 9), new Axle(3.7, 6)),
        ["overhangs and a spring"] = Of(
            Beam([1.5, 4, 3.2, 1], Support.Pin(1.5), Support.Spring(5.5, 0.8), Support.Roller(8.7)), new Axle(0, 3), new Axle(2, 5)),
        ["a force up among those down"] = Of(
            Beam([4, 3], Support.Fixed(0), Support.Roller(4), Support.Roller(7)), new Axle(0, 7), new Axle(0.9, -4), new Axle(1.6, 5)),
        ["a cantilever with a hinge"] = Of(
            Beam([3, 2.5, 4], Support.Fixed(0), Support.Roller(5.5), Support.Roller(9.5)) with { Hinges = [2.2] }, new Axle(0, 2), new Axle(1, 3)),
        ["stiff and soft spans, one soft in shear"] = Of(
            new BeamModel(
                [new Span(4, 1, 1, 0.6), new Span(5, 3, 1), new Span(2, 0.4, 1, 2)],
                [Support.Pin(0), Support.Roller(4), Support.Roller(9)],
                [],
                [new LoadCase("all", [])],
                [new Combination("all", CombinationBasis.Service, [1])]),
            new Axle(0, 4), new Axle(1.5, 6)),
        ["a standing load besides"] = Of(
            Beam([5, 4], Support.Pin(0), Support.Roller(5), Support.Roller(9)) with
            {
                Cases = [new LoadCase("all", [new Load.Distributed(0.5, 7, 1, 3), new Load.Point(8, 2), new Load.Couple(2, 3, Side.Right)])],
            },
            new Axle(0, 5), new Axle(1.3, 2)),
        ["a train longer than the beam"] = Of(
            Beam([3], Support.Pin(0), Support.Roller(3)), new Axle(0, 2), new Axle(1.4, 5), new Axle(2.9, 3), new Axle(5.1, 4)),
        ["a factor that turns it over"] = Of(
            Beam([4, 4], Support.Pin(0), Support.Roller(4), Support.Roller(8)) with
            {
                Combinations =
                [
                    new Combination("down", CombinationBasis.Service, [1.2]), new Combination("up", CombinationBasis.Service, [-0.7]),
                ],
            },
            new Axle(0, 3), new Axle(1.1, 4)),
    };

    [Theory]
    [MemberData(nameof(Names))]
    public void EveryFigure_IsWhatTheBestPlaceGives(string name)
    {
        EnvelopeProblem problem = Problems[name];
        Envelope envelope = Assert.Single(EnvelopeSearch.Find(problem, new BeamSolver()));
        Tried[] tried = [.. Grid(problem)];

        foreach (Figure figure in Figure.All(problem.Model).Where(IsSmooth))
        {
            double most = Refined(problem, tried, figure.GreatestOf);
            double least = -Refined(problem, tried, response => -figure.LeastOf(response));
            double size = Near * Math.Max(1, Math.Max(Math.Abs(most), Math.Abs(least)));
            Assert.True(Math.Abs(most - figure.Greatest(envelope).Value) <= size, $"{figure.Name}: {most:R}, said {figure.Greatest(envelope).Value:R}");
            Assert.True(Math.Abs(least - figure.Least(envelope).Value) <= size, $"{figure.Name}: {least:R}, said {figure.Least(envelope).Value:R}");
        }

        Assert.All(Envelope.Curves, curve => Assert.Equal(EnvelopeCertainty.Exact, envelope.CertaintyOf(curve)));
        Assert.Equal(EnvelopeCertainty.Exact, envelope.ReactionCertainty);
    }

    /// <summary>Shear jumps beside an axle, where no place gives the whole of it; along the beam nothing acts, and of moments of reactions only one is not nothing.</summary>
    private static bool IsSmooth(Figure figure) => !figure.Name.StartsWith("Shear", StringComparison.Ordinal)
        && !figure.Name.StartsWith("Axial", StringComparison.Ordinal)
        && !figure.Name.StartsWith("horizontal", StringComparison.Ordinal)
        && !figure.Name.StartsWith("moment", StringComparison.Ordinal);

    /// <summary>The greatest over all places, from each place of the grid that is better than those beside it.</summary>
    private static double Refined(EnvelopeProblem problem, Tried[] tried, Func<BeamResponse, double> value)
    {
        double most = Answers(problem.Model).Max(value);
        foreach (IGrouping<bool, Tried> way in tried.GroupBy(one => one.IsReversed))
        {
            Tried[] places = [.. way];
            double[] values = [.. places.Select(one => one.Answers.Max(value))];
            double worthIt = values.Max() - 0.15 * (values.Max() - values.Min());
            most = Math.Max(most, values.Max());
            for (int i = 1; i + 1 < places.Length; i++)
            {
                if (values[i] >= values[i - 1] && values[i] >= values[i + 1] && values[i] > worthIt)
                {
                    most = Math.Max(most, Golden(places[i - 1].At, places[i + 1].At, at => At(problem, at, way.Key).Max(value)));
                }
            }
        }

        return most;
    }

    private static double Golden(double from, double to, Func<double, double> value)
    {
        double share = (Math.Sqrt(5) - 1) / 2;
        (double left, double right) = (to - share * (to - from), from + share * (to - from));
        (double atLeft, double atRight) = (value(left), value(right));
        for (int i = 0; i < 32; i++)
        {
            if (atLeft > atRight)
            {
                (to, right, atRight) = (right, left, atLeft);
                left = to - share * (to - from);
                atLeft = value(left);
            }
            else
            {
                (from, left, atLeft) = (left, right, atRight);
                right = from + share * (to - from);
                atRight = value(right);
            }
        }

        return Math.Max(atLeft, atRight);
    }

    private static IEnumerable<Tried> Grid(EnvelopeProblem problem) =>
        from place in EveryPlace.Steps(problem, Places)
        select new Tried(place.At, place.IsReversed, At(problem, place.At, place.IsReversed));

    private static BeamResponse[] At(EnvelopeProblem problem, double at, bool isReversed) =>
        Answers(EveryPlace.With(problem.Model, problem, (0, at, isReversed)));

    private static BeamResponse[] Answers(BeamModel model) =>
        [.. ((BeamOutcome.Stands)Solver.Solve(model)).Combinations.Select(one => one.Response)];

    private static EnvelopeProblem Of(BeamModel model, params Axle[] axles) =>
        new(model, [], [new RollingLoad("train", 0, [.. axles])]);

    private static BeamModel Beam(double[] lengths, params Support[] supports) => new(
        [.. lengths.Select(length => new Span(length, 1, 1))],
        [.. supports],
        [],
        [new LoadCase("all", [])],
        [new Combination("all", CombinationBasis.Service, [1])]);

    private sealed record Tried(double At, bool IsReversed, BeamResponse[] Answers);
}
