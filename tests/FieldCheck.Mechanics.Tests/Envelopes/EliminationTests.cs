using CsCheck;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Tests.Envelopes;

/// <summary>Where S(v) + A(u) + v·B(u) neither rises nor falls, v eliminated.</summary>
public sealed class EliminationTests
{
    private static readonly Gen<double[]> Cubic = Gen.Int[-20, 20].Select(n => n / 4.0).Array[4];

    /// <summary>
    /// S = 3v - 2v², A = u² and B = u - 1: S' + B = 2 - 4v + u, A' + vB' = 2u + v, so that v = -2u and u = -2/9.
    /// </summary>
    [Fact]
    public void OfAParabola_ItIsWorkedApart()
    {
        double[] standing = [0, 3, -2, 0];
        double[] constant = [0, 0, 1, 0];
        double[] rate = [-1, 1, 0, 0];
        double[] to = new double[Elimination.MostCoefficients];

        Assert.Equal(6, Elimination.Fill(standing, constant, rate, to));
        Assert.Equal(0, Roots.Value(to, -2 / 9.0), 1e-12);
        Assert.Equal(4 / 9.0, Elimination.Place(standing, constant, rate, -2 / 9.0), 1e-12);
    }

    /// <summary>What Fill gives is, but for a factor that is nothing nowhere, one equation with the v of the other put in.</summary>
    [Fact]
    public void Polynomial_IsOneEquationWithTheOtherPutIn() => Gen.Select(Cubic, Cubic, Cubic, Gen.Bool, Gen.Double[-1, 1]).Sample(
        (standing, constant, rate, isParabola, at) =>
        {
            standing[3] = isParabola ? 0 : standing[3];
            isParabola = standing[3] == 0;

            double slope = Slope(constant, at);
            double change = Slope(rate, at);
            if (isParabola ? standing[2] == 0 : Math.Abs(change) < 0.1)
            {
                return;
            }

            double[] to = new double[Elimination.MostCoefficients];
            int count = Elimination.Fill(standing, constant, rate, to);
            double place = Elimination.Place(standing, constant, rate, at);

            Assert.Equal(isParabola ? 6 : 8, count);
            double left = isParabola
                ? 2 * standing[2] * (slope + place * change)
                : change * change * (Slope(standing, place) + Roots.Value(rate, at));
            double scale = 1 + Math.Abs(slope) * Math.Abs(slope) + change * change * (1 + place * place);
            Assert.Equal(left, Roots.Value(to.AsSpan(0, count), at), 1e-9 * 100 * scale);
            Assert.Equal(0, isParabola ? Slope(standing, place) + Roots.Value(rate, at) : slope + place * change, 1e-9 * scale);
        });

    private static double Slope(double[] cubic, double at) => cubic[1] + 2 * cubic[2] * at + 3 * cubic[3] * at * at;
}
