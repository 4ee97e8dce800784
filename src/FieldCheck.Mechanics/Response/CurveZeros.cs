using System.Collections.Immutable;

namespace FieldCheck.Mechanics.Response;

/// <summary>Finds where a quantity is zero.</summary>
internal static class CurveZeros
{
    /// <summary>The zeros strictly inside the beam, in order, each once; of a zero stretch its two ends.</summary>
    internal static ImmutableArray<double> Of(ReadOnlySpan<Piece> pieces, Curve curve)
    {
        Extreme[] stations = [];
        int count = CurveScan.Stations(pieces, curve, ref stations);
        double zero = CurveScan.Tie(stations.AsSpan(0, count));
        List<double> ends = [];
        int piece = 0;
        for (int i = 0; i < count; i++)
        {
            Extreme here = stations[i];
            if (Math.Abs(here.Value) <= zero)
            {
                Extend(ends, here.Position, i > 0 && Math.Abs(stations[i - 1].Value) <= zero);
            }
            else if (i > 0 && Math.Abs(stations[i - 1].Value) > zero && (here.Value < 0) != (stations[i - 1].Value < 0))
            {
                Extend(ends, Crossing(pieces, curve, ref piece, stations[i - 1], here), false);
            }
        }

        return Inside(ends, pieces[^1].To);
    }

    /// <summary>
    /// Begins a stretch (its left end and, until more follows, its right end), or lengthens the last one.
    /// </summary>
    private static void Extend(List<double> ends, double position, bool goesOn)
    {
        if (goesOn)
        {
            ends[^1] = position;
            return;
        }

        ends.Add(position);
        ends.Add(position);
    }

    private static double Crossing(
        ReadOnlySpan<Piece> pieces, Curve curve, ref int piece, Extreme before, Extreme after)
    {
        if (before.Position == after.Position)
        {
            return before.Position;
        }

        while (pieces[piece].To < after.Position)
        {
            piece++;
        }

        Span<double> polynomial = stackalloc double[Piece.MostCoefficients];
        int coefficients = pieces[piece].Polynomial(curve, polynomial);
        double from = pieces[piece].From;
        double length = pieces[piece].Length;
        double root = Roots.Bracketed(
            polynomial[..coefficients], (before.Position - from) / length, (after.Position - from) / length);
        return from + root * length;
    }

    private static ImmutableArray<double> Inside(List<double> ends, double length)
    {
        ImmutableArray<double>.Builder zeros = ImmutableArray.CreateBuilder<double>();
        foreach (double end in ends)
        {
            if (end > 0 && end < length && (zeros.Count == 0 || zeros[^1] < end))
            {
                zeros.Add(end);
            }
        }

        return zeros.ToImmutable();
    }
}
