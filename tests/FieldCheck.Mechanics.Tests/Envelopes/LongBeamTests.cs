using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;
using Xunit.Sdk;

namespace FieldCheck.Mechanics.Tests.Envelopes;

/// <summary>
/// Beams so long that what a load does dies away on them: equal spans of 1, where support moments away from the load follow
/// m₋ + 4m + m₊ = 0 [clapeyron-1857] and so fall off by √3 - 2 from support to support.
/// </summary>
public sealed class LongBeamTests
{
    private const int Spans = 80;
    private static readonly double Ratio = Math.Sqrt(3) - 2;
    private readonly BeamSolver _solver = new();

    /// <summary>Down to 1e-14 of the greatest each is found to a ten thousandth of itself: nothing is left out that counts.</summary>
    [Fact]
    public void InfluenceOnAMoment_FallsOffAsTheThreeMomentEquationSays()
    {
        InfluenceLine line = InfluenceLine.Of(Chain([]), Curve.Moment, Spans / 2, Side.Left, _solver)!;

        double previous = line.At((Spans / 2) + 1.5).Left;
        for (int away = 2; away < 24; away++)
        {
            double here = line.At((Spans / 2) + away + 0.5).Left;
            Assert.Equal(Ratio, here / previous, 1e-4);
            previous = here;
        }

        Assert.True(Math.Abs(previous) < 1e-13);
        Assert.Equal(0, line.At(Spans - 0.5).Left, 1e-16);
    }

    /// <summary>Force and couples near either end and in the middle, each bay solved alone by an ordinary solve.</summary>
    [Fact]
    public void PatternReaction_IsTheSumOfBaysSolvedOneByOne()
    {
        Load[] bays = [.. Enumerable.Range(0, Spans).Select(i => (Load)new Load.Distributed(i, i + 1, 1 + (i % 3), 2))];
        BeamModel model = Chain(bays);
        Envelope envelope = Assert.Single(EnvelopeSearch.Find(new EnvelopeProblem(model, [0], []), _solver));
        BeamResponse[] alone = [.. bays.Select(bay => Answer(Chain([bay])))];

        foreach (int support in new[] { 0, 1, 7, Spans / 2, Spans })
        {
            double[] shares = [.. alone.Select(one => one.Reactions[support].Vertical)];
            Assert.Equal(shares.Where(one => one > 0).Sum(), envelope.Reactions[support].Vertical.Max.Value, 1e-12);
            Assert.Equal(shares.Where(one => one < 0).Sum(), envelope.Reactions[support].Vertical.Min.Value, 1e-12);
        }
    }

    /// <summary>Two axles, the second as far behind as loads reach: no place may be worse, and what governs gives the value.</summary>
    [Theory]
    [InlineData(0.7)]
    [InlineData(55.3)]
    public void Axles_GiveWhatTheGoverningPlaceGives(double apart)
    {
        EnvelopeProblem problem = new(
            Chain([]), [], [new RollingLoad("axles", 0, [new Axle(0, 3), new Axle(apart, 2)])]);
        Envelope envelope = Assert.Single(EnvelopeSearch.Find(problem, _solver));
        BeamResponse[] places =
            [.. EveryPlace.Steps(problem, 400).Select(place => Answer(EveryPlace.With(problem.Model, problem, place)))];

        foreach (Figure figure in Figure.All(problem.Model))
        {
            (double most, Situation situation) = figure.Greatest(envelope);
            BeamResponse governing = EnvelopeSearch.Respond(problem, situation, _solver)!;
            // Beside an axle the place named leans 3e-9 of the way to the side that gives the shear.
            double lean = figure.Name.StartsWith($"{Curve.Shear}", StringComparison.Ordinal) ? 1e-5 : 1e-9;
            Assert.Equal(most, figure.GreatestOf(governing), lean);
            Assert.True(places.Max(figure.GreatestOf) <= most + 1e-9, figure.Name);
            Assert.True(places.Min(figure.LeastOf) >= figure.Least(envelope).Value - 1e-9, figure.Name);
        }
    }

    private BeamResponse Answer(BeamModel model) => _solver.Solve(model) is BeamOutcome.Stands stands
        ? stands.Combinations[0].Response
        : throw new XunitException("It stands.");

    private static BeamModel Chain(Load[] loads) => new(
        [.. Enumerable.Repeat(new Span(1, 1, 1), Spans)],
        [Support.Pin(0), .. Enumerable.Range(1, Spans).Select(i => Support.Roller(i))],
        [],
        [new LoadCase("live", [.. loads])],
        [new Combination("all", CombinationBasis.Service, [1])]);
}
