namespace FieldCheck.Mechanics.Response;

/// <summary>
/// Real roots of a polynomial strictly between 0 and 1, coefficients given with the constant term first.
/// </summary>
/// <remarks>
/// No complex numbers: the roots of the derivative cut the stretch into parts on which the polynomial only rises or
/// only falls, so that each part holds at most one root, found by Newton's method kept inside its bracket. A place
/// where the polynomial touches zero counts when its value there comes out exactly zero.
/// </remarks>
internal static class Roots
{
    private const int MostSteps = 100;

    /// <summary>The polynomial's value.</summary>
    internal static double Value(ReadOnlySpan<double> polynomial, double at)
    {
        double value = 0;
        for (int k = polynomial.Length - 1; k >= 0; k--)
        {
            value = Math.FusedMultiplyAdd(value, at, polynomial[k]);
        }

        return value;
    }

    /// <summary>Writes the roots in order.</summary>
    /// <param name="polynomial">Its coefficients.</param>
    /// <param name="roots">Room for one less than it has coefficients.</param>
    /// <returns>How many there are; none of a polynomial that is zero throughout.</returns>
    internal static int Inside(ReadOnlySpan<double> polynomial, Span<double> roots)
    {
        int degree = Degree(polynomial);
        return degree switch
        {
            0 => 0,
            1 => Keep(-polynomial[0] / polynomial[1], roots, 0),
            2 => Quadratic(polynomial[2], polynomial[1], polynomial[0], roots),
            _ when KeepsItsSign(polynomial) => 0,
            _ => BetweenTurns(polynomial[..(degree + 1)], roots),
        };
    }

    /// <summary>Where the derivative is zero: the same as the roots of it.</summary>
    internal static int TurnsInside(ReadOnlySpan<double> polynomial, Span<double> turns)
    {
        if (polynomial.Length < 2)
        {
            return 0;
        }

        Span<double> derivative = stackalloc double[polynomial.Length - 1];
        for (int k = 1; k < polynomial.Length; k++)
        {
            derivative[k - 1] = k * polynomial[k];
        }

        return Inside(derivative, turns);
    }

    /// <summary>The one root between two places at which the polynomial's signs differ.</summary>
    internal static double Bracketed(ReadOnlySpan<double> polynomial, double low, double high)
    {
        bool risesFromBelow = Value(polynomial, low) < 0;
        double at = (low + high) / 2;
        for (int step = 0; step < MostSteps; step++)
        {
            (double value, double rate) = ValueAndRate(polynomial, at);
            if (value == 0)
            {
                return at;
            }

            (low, high) = value < 0 == risesFromBelow ? (at, high) : (low, at);
            double next = at - value / rate;
            next = next > low && next < high ? next : (low + high) / 2;
            if (next == at || next == low || next == high)
            {
                return next;
            }

            at = next;
        }

        return at;
    }

    /// <summary>The highest power that counts: a coefficient below the rounding of the largest is none.</summary>
    private static int Degree(ReadOnlySpan<double> polynomial)
    {
        double largest = 0;
        foreach (double coefficient in polynomial)
        {
            largest = Math.Max(largest, Math.Abs(coefficient));
        }

        int degree = polynomial.Length - 1;
        while (degree > 0 && Math.Abs(polynomial[degree]) <= largest * 1e-18)
        {
            degree--;
        }

        return degree;
    }

    /// <summary>
    /// Whether the constant term outweighs all others together, so that there can be no root; saves most searches.
    /// </summary>
    private static bool KeepsItsSign(ReadOnlySpan<double> polynomial)
    {
        double others = 0;
        for (int k = 1; k < polynomial.Length; k++)
        {
            others += Math.Abs(polynomial[k]);
        }

        return Math.Abs(polynomial[0]) > others;
    }

    private static int Keep(double root, Span<double> roots, int count)
    {
        if (root > 0 && root < 1)
        {
            roots[count++] = root;
        }

        return count;
    }

    /// <summary>Both roots of a·t² + b·t + c, the second from the product of the two so that nothing cancels.</summary>
    private static int Quadratic(double a, double b, double c, Span<double> roots)
    {
        double square = Discriminant(a, b, c);
        if (square < 0)
        {
            return 0;
        }

        double sum = -(b + Math.CopySign(Math.Sqrt(square), b)) / 2;
        double first = sum / a;
        double second = c / sum; // No number when both are zero, and then not inside either.
        int count = Keep(Math.Min(first, second), roots, 0);
        return first == second ? count : Keep(Math.Max(first, second), roots, count);
    }

    /// <summary>b² - 4ac with the rounding of both products taken back in.</summary>
    private static double Discriminant(double a, double b, double c)
    {
        double square = b * b;
        double product = 4 * a * c;
        double squareRest = Math.FusedMultiplyAdd(b, b, -square);
        double productRest = Math.FusedMultiplyAdd(4 * a, c, -product);
        return square - product + (squareRest - productRest);
    }

    private static int BetweenTurns(ReadOnlySpan<double> polynomial, Span<double> roots)
    {
        Span<double> turns = stackalloc double[polynomial.Length];
        int turnCount = TurnsInside(polynomial, turns);
        turns[turnCount] = 1;
        double low = 0;
        double valueLow = polynomial[0];
        int count = 0;
        for (int i = 0; i <= turnCount; i++)
        {
            double high = turns[i];
            double valueHigh = Value(polynomial, high);
            if (valueLow * valueHigh < 0)
            {
                count = Keep(Bracketed(polynomial, low, high), roots, count);
            }

            if (valueHigh == 0 && i < turnCount)
            {
                roots[count++] = high;
            }

            (low, valueLow) = (high, valueHigh);
        }

        return count;
    }

    private static (double Value, double Rate) ValueAndRate(ReadOnlySpan<double> polynomial, double at)
    {
        double value = 0;
        double rate = 0;
        for (int k = polynomial.Length - 1; k >= 0; k--)
        {
            rate = Math.FusedMultiplyAdd(rate, at, value);
            value = Math.FusedMultiplyAdd(value, at, polynomial[k]);
        }

        return (value, rate);
    }
}
