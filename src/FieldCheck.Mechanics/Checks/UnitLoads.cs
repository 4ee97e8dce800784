using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Checks;

/// <summary>
/// The loads of one on a stretch from whose answers the influence of a load anywhere on it follows exactly: the answer
/// is a cubic in the place of a force across, straight in that of a force along and a parabola in that of a couple,
/// whether or not shear deforms the beam.
/// </summary>
internal static class UnitLoads
{
    /// <summary>How many loads of one a stretch needs.</summary>
    internal const int Count = 9;

    /// <summary>Coefficients of each influence: across, along, couple.</summary>
    internal static readonly ImmutableArray<Range> Parts = ImmutableArray.Create(0..4, 4..6, 6..9);

    /// <summary>Places as shares of the stretch [–]: inside it, where nothing jumps.</summary>
    private static readonly double[][] Shares = [[0.05, 0.35, 0.65, 0.95], [0.2, 0.8], [0.1, 0.5, 0.9]];

    /// <summary>One load a case, in the order of the coefficients.</summary>
    internal static IEnumerable<LoadCase> On(double start, double length) =>
    [
        .. Shares[0].Select(share => Case(new Load.Point(start + share * length, 1))),
        .. Shares[1].Select(share => Case(new Load.Point(start + share * length, 0, 1))),
        .. Shares[2].Select(share => Case(new Load.Couple(start + share * length, 1))),
    ];

    internal static LoadCase Case(Load load) => new("", [load]);

    /// <summary>Turns the answers at the places into the coefficients of the polynomials in the share [–].</summary>
    internal static void Fit(Span<double> answers)
    {
        for (int part = 0; part < Parts.Length; part++)
        {
            Fit(part, answers[Parts[part]]);
        }
    }

    /// <summary>The same for one kind of load.</summary>
    internal static void Fit(int part, Span<double> answers) => Fit(Shares[part], answers);

    /// <summary>Newton's divided differences, then multiplied out.</summary>
    private static void Fit(double[] at, Span<double> values)
    {
        int count = at.Length;
        for (int order = 1; order < count; order++)
        {
            for (int i = count - 1; i >= order; i--)
            {
                values[i] = (values[i] - values[i - 1]) / (at[i] - at[i - order]);
            }
        }

        for (int order = count - 2; order >= 0; order--)
        {
            for (int i = order; i < count - 1; i++)
            {
                values[i] -= at[order] * values[i + 1];
            }
        }
    }
}
