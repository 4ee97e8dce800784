using System.Collections.Immutable;

namespace FieldCheck.Mechanics.Response;

/// <summary>Finds where a quantity turns, peaks and vanishes, from its pieces.</summary>
internal static class CurveScan
{
    /// <summary>
    /// What counts as equal, and as zero, relative to the greatest size along the beam: well above the rounding of the
    /// inputs (1e-16, magnified by a few spans), well below what any measurement could tell.
    /// </summary>
    internal const double Closeness = 1e-12;

    /// <summary>Most stations that one piece gives: its two ends and the turns between.</summary>
    internal const int MostStations = Piece.MostCoefficients;

    /// <summary>
    /// Values of a quantity at both ends of each piece and wherever it turns: the stations, so that between two it is
    /// monotone.
    /// </summary>
    /// <param name="pieces">The pieces, left to right.</param>
    /// <param name="curve">The quantity.</param>
    /// <param name="stations">Where they go; made longer when too short.</param>
    /// <returns>How many stations there are.</returns>
    internal static int Stations(ReadOnlySpan<Piece> pieces, Curve curve, ref Extreme[] stations)
    {
        Span<double> polynomial = stackalloc double[Piece.MostCoefficients];
        Span<double> turns = stackalloc double[Piece.MostCoefficients];
        int count = 0;
        for (int i = 0; i < pieces.Length; i++)
        {
            if (stations.Length < count + MostStations)
            {
                Array.Resize(ref stations, 2 * (count + MostStations));
            }

            ref readonly Piece piece = ref pieces[i];
            stations[count++] = new Extreme(piece.AtStart(curve), piece.From);
            int coefficients = piece.Polynomial(curve, polynomial);
            int turnCount = Roots.TurnsInside(polynomial[..coefficients], turns);
            for (int k = 0; k < turnCount; k++)
            {
                double value = Roots.Value(polynomial[..coefficients], turns[k]);
                stations[count++] = new Extreme(value, piece.From + turns[k] * piece.Length);
            }

            stations[count++] = new Extreme(piece.AtEnd(curve), piece.To);
        }

        return count;
    }

    /// <summary>Greatest and least at the stations; of values that tie within rounding the leftmost place.</summary>
    internal static Extremes Extremes(ReadOnlySpan<Extreme> stations)
    {
        (double least, double most) = Range(stations);
        double tie = Tie(stations);
        int mostAt = 0;
        while (stations[mostAt].Value < most - tie)
        {
            mostAt++;
        }

        int leastAt = 0;
        while (stations[leastAt].Value > least + tie)
        {
            leastAt++;
        }

        return new Extremes(
            new Extreme(most, stations[mostAt].Position), new Extreme(least, stations[leastAt].Position));
    }

    /// <summary>The difference below which two values at the stations are equal, and one is zero.</summary>
    internal static double Tie(ReadOnlySpan<Extreme> stations)
    {
        (double least, double most) = Range(stations);
        return Closeness * Math.Max(Math.Abs(most), Math.Abs(least));
    }

    /// <summary>The stations at which the quantity stops rising or falling, its two ends among them.</summary>
    internal static ImmutableArray<Extreme> Peaks(ReadOnlySpan<Extreme> stations)
    {
        double tie = Tie(stations);
        ImmutableArray<Extreme>.Builder peaks = ImmutableArray.CreateBuilder<Extreme>();
        peaks.Add(stations[0]);
        bool wasRising = false;
        foreach (Extreme station in stations)
        {
            Extreme last = peaks[^1];
            if (Math.Abs(station.Value - last.Value) <= tie)
            {
                continue;
            }

            bool isRising = station.Value > last.Value;
            if (peaks.Count > 1 && isRising == wasRising)
            {
                peaks[^1] = station;
            }
            else
            {
                peaks.Add(station);
            }

            wasRising = isRising;
        }

        return peaks.ToImmutable();
    }

    private static (double Least, double Most) Range(ReadOnlySpan<Extreme> stations)
    {
        double most = double.NegativeInfinity;
        double least = double.PositiveInfinity;
        foreach (Extreme station in stations)
        {
            most = Math.Max(most, station.Value);
            least = Math.Min(least, station.Value);
        }

        return (least, most);
    }
}
