using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Envelopes;

/// <summary>The greatest of a polynomial on a part of an interval.</summary>
internal static class RollingScan
{
    /// <summary>
    /// How near to an end of the part a turn belongs to that side of it [–]: where the influence comes in level, as at a
    /// fixed end, rounding puts the turn on the end or just beside it.
    /// </summary>
    private const double Nearness = 1e-6;

    /// <summary>Puts the greatest in place of a value that is less.</summary>
    internal static void Take(ReadOnlySpan<double> polynomial, int interval, double from, double to, ref RollingPeak peak)
    {
        if (Bernstein.Most(polynomial, 1) <= peak.Value)
        {
            return;
        }

        TakeAt(polynomial, interval, from, from < 1 ? 1 : -1, ref peak);
        TakeAt(polynomial, interval, to, to > 0 ? -1 : 1, ref peak);
        Span<double> turns = stackalloc double[polynomial.Length];
        int count = Roots.TurnsInside(polynomial, turns);
        for (int i = 0; i < count; i++)
        {
            if (turns[i] > from && turns[i] < to)
            {
                int lean = to - turns[i] < Nearness ? -1 : turns[i] - from < Nearness ? 1 : 0;
                TakeAt(polynomial, interval, turns[i], lean, ref peak);
            }
        }
    }

    private static void TakeAt(
        ReadOnlySpan<double> polynomial, int interval, double share, int lean, ref RollingPeak peak)
    {
        double value = Roots.Value(polynomial, share);
        if (value > peak.Value)
        {
            peak = new RollingPeak(value, interval, share, lean);
        }
    }
}
