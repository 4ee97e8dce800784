namespace FieldCheck.Mechanics.Envelopes;

/// <summary>What a train does to one figure, a cubic an interval between two events.</summary>
internal sealed class TrainRow
{
    private readonly double[] _cubics;

    /// <summary>Adds up the influence of the axles.</summary>
    /// <param name="train">The train.</param>
    /// <param name="nodes">The nodes of the beam.</param>
    /// <param name="influence">The influence cubics of the figure.</param>
    internal TrainRow(Train train, BeamNodes nodes, double[] influence)
    {
        _cubics = new double[ForceInfluence.Cubic * train.IntervalCount];
        for (int i = 0; i < train.IntervalCount; i++)
        {
            Span<double> to = _cubics.AsSpan(ForceInfluence.Cubic * i, ForceInfluence.Cubic);
            for (int k = 0; k < train.Offsets.Length; k++)
            {
                int e = train.ElementOf(i, k);
                if (e >= 0)
                {
                    ReadOnlySpan<double> cubic = influence.AsSpan(ForceInfluence.Cubic * e, ForceInfluence.Cubic);
                    double length = nodes.LengthOf(e);
                    double start = (train.StartOf(i) + train.Offsets[k] - nodes.At(e)) / length;
                    AddShifted(to, cubic, train.Forces[k], start, train.LengthOf(i) / length);
                }
            }
        }
    }

    internal ReadOnlySpan<double> On(int interval) =>
        _cubics.AsSpan(ForceInfluence.Cubic * interval, ForceInfluence.Cubic);

    /// <summary>The greatest of it times a scale, over all places of the train.</summary>
    internal RollingPeak Greatest(double scale)
    {
        RollingPeak peak = RollingPeak.None;
        Span<double> scaled = stackalloc double[ForceInfluence.Cubic];
        for (int i = 0; i < _cubics.Length / ForceInfluence.Cubic; i++)
        {
            ReadOnlySpan<double> cubic = On(i);
            for (int k = 0; k < ForceInfluence.Cubic; k++)
            {
                scaled[k] = scale * cubic[k];
            }

            RollingScan.Take(scaled, i, 0, 1, ref peak);
        }

        return peak;
    }

    /// <summary>Adds a cubic in s, with s = start + step·u, as one in u.</summary>
    internal static void AddShifted(Span<double> to, ReadOnlySpan<double> cubic, double factor, double start, double step)
    {
        double second = cubic[2] + 3 * start * cubic[3];
        to[0] += factor * (cubic[0] + start * (cubic[1] + start * (cubic[2] + start * cubic[3])));
        to[1] += factor * step * (cubic[1] + start * (2 * cubic[2] + 3 * start * cubic[3]));
        to[2] += factor * step * step * second;
        to[3] += factor * step * step * step * cubic[3];
    }
}
