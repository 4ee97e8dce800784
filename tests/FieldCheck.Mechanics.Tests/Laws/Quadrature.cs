namespace FieldCheck.Mechanics.Tests.Laws;

/// <summary>Integrals that are exact for the polynomials at hand, so that no difference quotient is needed.</summary>
internal static class Quadrature
{
    // Gauss-Legendre, five points: exact to degree 9 (Abramowitz and Stegun, table 25.4, from memory; the test
    // class beside this file proves it on powers).
    private static readonly (double Place, double Weight)[] Gauss =
    [
        (0, 128 / 225.0),
        (Inner, InnerWeight), (-Inner, InnerWeight),
        (Outer, OuterWeight), (-Outer, OuterWeight),
    ];

    private static double Inner => Math.Sqrt(5 - (2 * Math.Sqrt(10 / 7.0))) / 3;

    private static double Outer => Math.Sqrt(5 + (2 * Math.Sqrt(10 / 7.0))) / 3;

    private static double InnerWeight => (322 + (13 * Math.Sqrt(70))) / 900;

    private static double OuterWeight => (322 - (13 * Math.Sqrt(70))) / 900;

    internal static double Integral(Func<double, double> value, double from, double to)
    {
        double middle = (from + to) / 2;
        double half = (to - from) / 2;
        return half * Gauss.Sum(point => point.Weight * value(middle + (half * point.Place)));
    }
}
