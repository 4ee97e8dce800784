using System.Collections.Immutable;

namespace FieldCheck.Mechanics.Strength;

/// <summary>Buckling curves of EN 1993-1-1 6.3.</summary>
internal static class BucklingCurve
{
    /// <summary>Imperfection factor of curve a, Table 6.1.</summary>
    internal const double A = 0.21;

    /// <summary>Imperfection factor of curve b, Table 6.1.</summary>
    internal const double B = 0.34;

    /// <summary>Imperfection factor of curve c, Table 6.1.</summary>
    internal const double C = 0.49;

    /// <summary>Imperfection factor of curve d, Table 6.1.</summary>
    internal const double D = 0.76;

    private const double Start = 0.2;

    /// <summary>Reduction factor χ, (6.49) and (6.56); at most 1.</summary>
    internal static double Factor(double slenderness, double imperfection)
    {
        double half = Half(slenderness, imperfection);
        return slenderness <= Start ? 1 : 1 / (half + Math.Sqrt(half * half - slenderness * slenderness));
    }

    /// <summary>The work to it.</summary>
    internal static ImmutableArray<CheckTerm> Terms(double slenderness, double imperfection) =>
    [
        Term.Number(CheckSymbol.Imperfection, imperfection),
        .. slenderness <= Start
            ? [Term.Number(CheckSymbol.BucklingFactor, 1)]
            : new[]
            {
                Term.Number(CheckSymbol.BucklingPhi, Half(slenderness, imperfection), CheckFormula.EnBucklingPhi),
                Term.Number(CheckSymbol.BucklingFactor, Factor(slenderness, imperfection), CheckFormula.EnBucklingFactor),
            },
    ];

    private static double Half(double slenderness, double imperfection) =>
        0.5 * (1 + imperfection * (slenderness - Start) + slenderness * slenderness);
}
