using CsCheck;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Tests.Envelopes;

/// <summary>Bernstein's form of polynomials between 0 and 1, by its definition bₖ = Σ C(k,i)/C(n,i)·aᵢ.</summary>
public sealed class BernsteinTests
{
    private static readonly Gen<double[]> Polynomials =
        Gen.Int[1, 7].SelectMany(count => Gen.Int[-50, 50].Select(n => n / 10.0).Array[count]);

    /// <summary>1 - 6x + 6x² has 1, -2, 1; a cubic x³ has 0, 0, 0, 1; 2 + 3x has its ends.</summary>
    [Fact]
    public void Coefficients_OfSmallPolynomials()
    {
        Assert.Equal([1, -2, 1], Form([1, -6, 6]));
        Assert.Equal([0, 0, 0, 1], Form([0, 0, 0, 1]));
        Assert.Equal([2, 5], Form([2, 3]));
        Assert.Equal([4], Form([4]));
        Assert.Equal([0, 2, 0, 0, 0], Form([0, 8, -24, 24, -8]), (one, other) => Math.Abs(one - other) < 1e-12);
    }

    [Fact]
    public void AddTo_AddsTimesAFactor()
    {
        double[] to = [10, 20, 30];

        Bernstein.AddTo(to, [1, -6, 6], -2);

        Assert.Equal([8, 24, 28], to);
    }

    /// <summary>The most is the greatest coefficient, so that of the other sign the least counts.</summary>
    [Theory]
    [InlineData(1, 1)]
    [InlineData(-1, 2)]
    [InlineData(-3, 6)]
    public void Most_IsTheGreatestCoefficient(double factor, double most)
    {
        Assert.Equal(most, Bernstein.Most([1, -6, 6], factor));
        Assert.Equal(Math.Abs(factor), Bernstein.Most([1, -6, 6, 0], factor), 1e-12); // as a cubic 1, -1, -1, 1: closer
    }

    [Fact]
    public void NoValue_IsMoreThanTheMost_AndTheFormAddsUpToTheValue() => Gen.Select(Polynomials, Gen.Double[0, 1], Gen.Double[-2, 2]).Sample(
        (polynomial, at, factor) =>
        {
            double[] form = Form(polynomial);
            double value = Roots.Value(polynomial, at);

            Assert.Equal(value, Sum(form, at), 1e-10);
            Assert.True(factor * value <= Bernstein.Most(polynomial, factor) + 1e-10);
            Assert.Equal(form.Max(one => factor * one), Bernstein.Most(polynomial, factor), 1e-10);
        });

    [Fact]
    public void ToPowers_GivesThePolynomialBack() => Polynomials.Sample(polynomial =>
    {
        double[] back = new double[polynomial.Length];

        Bernstein.ToPowers(Form(polynomial), back);

        Assert.Equal(polynomial, back, (one, other) => Math.Abs(one - other) < 1e-8);
    });

    /// <summary>x·y² and 3 in two shares, two rows of three columns: both add up to the value everywhere.</summary>
    [Fact]
    public void FromPowersInBoth_AddsUpToTheValue() => Gen.Select(
        Gen.Int[-9, 9].Array[6], Gen.Double[0, 1], Gen.Double[0, 1]).Sample(
        (numbers, x, y) =>
        {
            double[] polynomial = [.. numbers.Select(one => (double)one)];
            double value = 0;
            for (int i = 0; i < 6; i++)
            {
                value += polynomial[i] * Math.Pow(x, i / 3) * Math.Pow(y, i % 3);
            }

            Bernstein.FromPowersInBoth(polynomial, 2, 3);

            Assert.Equal(value, Sum([Sum(polynomial[..3], y), Sum(polynomial[3..], y)], x), 1e-9);
        });

    private static double[] Form(double[] polynomial)
    {
        double[] form = new double[polynomial.Length];
        Bernstein.AddTo(form, polynomial, 1);
        return form;
    }

    private static double Sum(double[] form, double at)
    {
        int degree = form.Length - 1;
        double sum = 0;
        double choices = 1;
        for (int k = 0; k <= degree; k++)
        {
            sum += form[k] * choices * Math.Pow(at, k) * Math.Pow(1 - at, degree - k);
            choices *= (double)(degree - k) / (k + 1);
        }

        return sum;
    }
}
