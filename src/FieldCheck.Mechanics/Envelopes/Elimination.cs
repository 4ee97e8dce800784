using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Envelopes;

/// <summary>
/// Where S(v) + A(u) + v·B(u) neither rises nor falls, S, A and B cubics: S'(v) + B(u) = 0 and A'(u) + v·B'(u) = 0. Of a
/// parabola S the first gives v = -(s₁ + B)/2s₂, of a cubic the second gives v = -A'/B'; put into the other equation this
/// leaves one polynomial in u, of degree 5 or 7.
/// </summary>
internal static class Elimination
{
    internal const int MostCoefficients = 8;

    /// <summary>Writes the polynomial in u.</summary>
    /// <returns>How many coefficients it has.</returns>
    internal static int Fill(
        ReadOnlySpan<double> standing, ReadOnlySpan<double> constant, ReadOnlySpan<double> rate, Span<double> to)
    {
        Span<double> slope = [constant[1], 2 * constant[2], 3 * constant[3]];
        Span<double> change = [rate[1], 2 * rate[2], 3 * rate[3]];
        to.Clear();
        if (standing[3] == 0)
        {
            AddProduct(to, slope, 2 * standing[2]);
            AddProduct(to, change, -standing[1]);
            AddProduct(to, rate, change, -1);
            return MostCoefficients - 2;
        }

        Span<double> square = stackalloc double[5];
        AddProduct(square, change, change, 1);
        AddProduct(to, square, standing[1]);
        AddProduct(to, rate, square, 1);
        AddProduct(to, slope, change, -2 * standing[2]);
        AddProduct(to, slope, slope, 3 * standing[3]);
        return MostCoefficients;
    }

    /// <summary>The place v that belongs to a root u.</summary>
    internal static double Place(
        ReadOnlySpan<double> standing, ReadOnlySpan<double> constant, ReadOnlySpan<double> rate, double at)
    {
        if (standing[3] == 0)
        {
            return -(standing[1] + Roots.Value(rate, at)) / (2 * standing[2]);
        }

        double slope = Roots.Value([constant[1], 2 * constant[2], 3 * constant[3]], at);
        double change = Roots.Value([rate[1], 2 * rate[2], 3 * rate[3]], at);
        return -slope / change;
    }

    private static void AddProduct(Span<double> to, ReadOnlySpan<double> polynomial, double factor)
    {
        for (int i = 0; i < polynomial.Length; i++)
        {
            to[i] += factor * polynomial[i];
        }
    }

    private static void AddProduct(
        Span<double> to, ReadOnlySpan<double> first, ReadOnlySpan<double> second, double factor)
    {
        for (int i = 0; i < first.Length; i++)
        {
            for (int k = 0; k < second.Length; k++)
            {
                to[i + k] += factor * first[i] * second[k];
            }
        }
    }
}
