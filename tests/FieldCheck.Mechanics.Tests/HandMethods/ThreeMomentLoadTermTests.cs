using FieldCheck.Mechanics.HandMethods;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Tests.Laws;
using static FieldCheck.Mechanics.Tests.Solving.Beams;

namespace FieldCheck.Mechanics.Tests.HandMethods;

/// <summary>
/// Load terms against the integral that defines them: 6/L times the moment, about the far end, of the area below the
/// bending moment of the simple span. That moment is taken here from statics anew; the integrals are exact.
/// </summary>
public sealed class ThreeMomentLoadTermTests
{
    private const double L = 8;

    private static readonly Dictionary<string, Load> Loads = new()
    {
        ["point"] = new Load.Point(2.5, 3e3),
        ["point, up"] = new Load.Point(6.75, -1e3),
        ["uniform, whole"] = new Load.Distributed(0, L, 2e3, 2e3),
        ["uniform, part"] = new Load.Distributed(1.5, 4, 2e3, 2e3),
        ["rising, whole"] = new Load.Distributed(0, L, 0, 5e3),
        ["falling, whole"] = new Load.Distributed(0, L, 5e3, 0),
        ["rising, part"] = new Load.Distributed(0.5, 3.5, 0, 5e3),
        ["falling, part"] = new Load.Distributed(4.25, 7, 5e3, 0),
        ["trapezoid"] = new Load.Distributed(1, 7.5, 1e3, 4e3),
        ["down and up"] = new Load.Distributed(1, 7.5, 1e3, -2e3),
        ["couple"] = new Load.Couple(3, 6e3),
        ["couple, clockwise"] = new Load.Couple(7, -6e3),
    };

    public static TheoryData<string> Kinds() => new(Loads.Keys);

    [Theory]
    [MemberData(nameof(Kinds))]
    public void LoadTerms_AreTheIntegralsThatDefineThem(string kind)
    {
        Load load = Loads[kind];

        HandBeam beam = ThreeMomentCase.Work(Beam(L, [Support.Fixed(0), Support.Fixed(L)], [load]));

        Equal(6 / L * Integral(load, x => x), beam.Value(HandRole.LoadTermRight, 0));
        Equal(6 / L * Integral(load, x => L - x), beam.Value(HandRole.LoadTermLeft, 0));
    }

    [Fact]
    public void LoadTerms_OfSeveralLoads_AddUp()
    {
        HandBeam beam = ThreeMomentCase.Work(Beam(L, [Support.Fixed(0), Support.Fixed(L)], [.. Loads.Values]));

        double sum = 6 / L * Loads.Values.Sum(load => Integral(load, x => x));
        Equal(sum, beam.Value(HandRole.LoadTermRight, 0), scale: 10 * sum);
    }

    private static double Integral(Load load, Func<double, double> arm)
    {
        (double from, double to) = load switch
        {
            Load.Point point => (point.Position, point.Position),
            Load.Couple couple => (couple.Position, couple.Position),
            Load.Distributed spread => (spread.From, spread.To),
            _ => throw new ArgumentOutOfRangeException(nameof(load)),
        };
        double[] breaks = [.. new[] { 0, from, to, L }.Distinct()];
        return breaks.Zip(breaks.Skip(1)).Sum(stretch => Quadrature.Integral(
            x => arm(x) * Moment(load, x), stretch.First, stretch.Second));
    }

    private static double Moment(Load load, double x) => load switch
    {
        Load.Point point => (point.Down * (L - point.Position) / L * x)
            - (x > point.Position ? point.Down * (x - point.Position) : 0),
        Load.Couple couple => (couple.Moment / L * x) - (x > couple.Position ? couple.Moment : 0),
        Load.Distributed spread => (Tip(spread, L) / L * x) - Tip(spread, x),
        _ => throw new ArgumentOutOfRangeException(nameof(load)),
    };

    /// <summary>Moment about a place of what lies to its left.</summary>
    private static double Tip(Load.Distributed spread, double x)
    {
        double end = Math.Min(x, spread.To);
        double Intensity(double s) => spread.StartIntensity
            + ((spread.EndIntensity - spread.StartIntensity) * (s - spread.From) / (spread.To - spread.From));
        return end <= spread.From ? 0 : Quadrature.Integral(s => Intensity(s) * (x - s), spread.From, end);
    }
}
