namespace FieldCheck.Mechanics.Envelopes;

/// <summary>
/// Bounds of a polynomial between 0 and 1: it lies between the least and the greatest of its coefficients in Bernstein's
/// form, bₖ = Σ C(k,i)/C(n,i)·aᵢ (docs/methods.md, "Envelopes").
/// </summary>
internal static class Bernstein
{
    /// <summary>What a factor times the polynomial cannot exceed.</summary>
    internal static double Most(ReadOnlySpan<double> polynomial, double factor)
    {
        int degree = polynomial.Length - 1;
        if (degree == 3)
        {
            return MostOfCubic(factor * polynomial[0], factor * polynomial[1], factor * polynomial[2], factor * polynomial[3]);
        }

        double most = factor * polynomial[0];
        for (int k = 1; k <= degree; k++)
        {
            double sum = polynomial[0];
            double weight = 1;
            for (int i = 1; i <= k; i++)
            {
                weight *= (double)(k - i + 1) / (degree - i + 1);
                sum += weight * polynomial[i];
            }

            most = Math.Max(most, factor * sum);
        }

        return most;
    }

    /// <summary>Adds a polynomial's coefficients in Bernstein's form, times a factor.</summary>
    internal static void AddTo(Span<double> to, ReadOnlySpan<double> polynomial, double factor)
    {
        int degree = polynomial.Length - 1;
        for (int k = 0; k <= degree; k++)
        {
            double sum = polynomial[0];
            double weight = 1;
            for (int i = 1; i <= k; i++)
            {
                weight *= (double)(k - i + 1) / (degree - i + 1);
                sum += weight * polynomial[i];
            }

            to[k] += factor * sum;
        }
    }

    /// <summary>
    /// Turns a polynomial in two shares, row by row the coefficients of powers of the second, into Bernstein's form in both.
    /// </summary>
    internal static void FromPowersInBoth(Span<double> polynomial, int rows, int columns)
    {
        for (int j = 0; j < columns; j++)
        {
            FromPowers(polynomial[j..], rows, columns);
        }

        for (int i = 0; i < rows; i++)
        {
            FromPowers(polynomial[(i * columns)..], columns, 1);
        }
    }

    /// <summary>Turns coefficients in Bernstein's form into those of powers: aᵢ = C(n,i)·Δⁱb₀.</summary>
    internal static void ToPowers(ReadOnlySpan<double> bounds, Span<double> polynomial)
    {
        int degree = bounds.Length - 1;
        bounds.CopyTo(polynomial);
        double choices = 1;
        for (int i = 1; i <= degree; i++)
        {
            for (int k = degree; k >= i; k--)
            {
                polynomial[k] -= polynomial[k - 1];
            }
        }

        for (int i = 1; i <= degree; i++)
        {
            choices *= (double)(degree - i + 1) / i;
            polynomial[i] *= choices;
        }
    }

    /// <summary>Divides by C(n,i), then adds up as in Pascal's triangle; coefficients lie a stride apart.</summary>
    private static void FromPowers(Span<double> polynomial, int count, int stride)
    {
        double choices = 1;
        for (int i = 1; i < count; i++)
        {
            choices *= (double)(count - i) / i;
            polynomial[i * stride] /= choices;
        }

        for (int i = 1; i < count; i++)
        {
            for (int k = count - 1; k >= i; k--)
            {
                polynomial[k * stride] += polynomial[(k - 1) * stride];
            }
        }
    }

    /// <summary>The same, written out: most polynomials are cubics.</summary>
    private static double MostOfCubic(double a, double b, double c, double d)
    {
        double third = b * (1.0 / 3);
        double ends = Math.Max(a, a + b + c + d);
        return Math.Max(ends, Math.Max(a + third, a + 2 * third + c * (1.0 / 3)));
    }
}
