using FieldCheck.Mechanics.Response;

namespace FieldCheck.Sheet.Influence;

/// <summary>A cubic on a stretch of the beam.</summary>
internal sealed class CubicStretch
{
    private const int Halvings = 60;

    private readonly double[] _coefficients;

    /// <param name="from">Left end [m].</param>
    /// <param name="to">Right end [m].</param>
    /// <param name="values">Its values at 1/8, 3/8, 5/8 and 7/8 of the stretch.</param>
    internal CubicStretch(double from, double to, ReadOnlySpan<double> values)
    {
        From = from;
        To = to;
        _coefficients = Through(values);
    }

    internal double From { get; }

    internal double To { get; }

    /// <summary>Where the values are taken that it is made of, as shares of a stretch [–].</summary>
    internal static ReadOnlySpan<double> Shares => [0.125, 0.375, 0.625, 0.875];

    internal double At(double position) => Value(Share(position));

    internal double SlopeAt(double position)
    {
        double t = Share(position);
        return (_coefficients[1] + t * (2 * _coefficients[2] + t * 3 * _coefficients[3])) / (To - From);
    }

    /// <summary>The values at both ends and at the turning points between.</summary>
    internal IEnumerable<Extreme> Extremes() => [new(At(From), From), .. Inside(), new(At(To), To)];

    /// <summary>The turning points inside.</summary>
    internal IEnumerable<Extreme> Inside() => Turns().Select(t => new Extreme(Value(t), From + t * (To - From)));

    /// <summary>Places inside where it passes through zero [m].</summary>
    internal IEnumerable<double> Zeros(double negligible)
    {
        double[] ends = [0, .. Turns(), 1];
        for (int index = 1; index < ends.Length; index++)
        {
            double low = ends[index - 1];
            double high = ends[index];
            bool passes = Value(low) * Value(high) < 0
                && Math.Min(Math.Abs(Value(low)), Math.Abs(Value(high))) > negligible;
            if (passes)
            {
                yield return From + Root(low, high) * (To - From);
            }
        }
    }

    private double Root(double low, double high)
    {
        for (int step = 0; step < Halvings; step++)
        {
            double middle = (low + high) / 2;
            (low, high) = Value(low) * Value(middle) <= 0 ? (low, middle) : (middle, high);
        }

        return (low + high) / 2;
    }

    // Roots of the derivative c1 + 2 c2 t + 3 c3 t²; the form that does not cancel.
    private IEnumerable<double> Turns()
    {
        double a = 3 * _coefficients[3];
        double b = _coefficients[2];
        double c = _coefficients[1];
        double root = b * b - a * c;
        if (root < 0)
        {
            return [];
        }

        double q = -(b + Math.CopySign(Math.Sqrt(root), b));
        return new[] { q / a, c / q }.Where(t => t > 1e-9 && t < 1 - 1e-9).Distinct().Order();
    }

    private double Value(double t) =>
        _coefficients[0] + t * (_coefficients[1] + t * (_coefficients[2] + t * _coefficients[3]));

    private double Share(double position) => Math.Clamp((position - From) / (To - From), 0, 1);

    // Newton's divided differences at equal distances of 1/4, multiplied out.
    private static double[] Through(ReadOnlySpan<double> values)
    {
        const double step = 0.25;
        double first = (values[1] - values[0]) / step;
        double second = (values[2] - 2 * values[1] + values[0]) / (2 * step * step);
        double third = (values[3] - 3 * values[2] + 3 * values[1] - values[0]) / (6 * step * step * step);
        (double p, double q, double r) = (Shares[0], Shares[1], Shares[2]);
        return
        [
            values[0] - p * first + p * q * second - p * q * r * third,
            first - (p + q) * second + (p * q + p * r + q * r) * third,
            second - (p + q + r) * third,
            third,
        ];
    }
}
