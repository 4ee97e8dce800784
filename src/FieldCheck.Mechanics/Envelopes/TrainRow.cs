namespace FieldCheck.Mechanics.Envelopes;

/// <summary>What a train does to one figure, a cubic an interval between two events.</summary>
internal sealed class TrainRow
{
    private static readonly double[] Nothing = new double[ForceInfluence.Cubic];

    private readonly double[] _cubics;
    private readonly double[] _sizes;

    /// <summary>Adds up the influence of the axles.</summary>
    /// <param name="train">The train.</param>
    /// <param name="nodes">The nodes of the beam.</param>
    /// <param name="influence">The influence on the figure.</param>
    internal TrainRow(Train train, BeamNodes nodes, InfluenceRow influence)
    {
        (First, End) = train.IntervalsOver(influence.First, influence.End);
        _cubics = new double[ForceInfluence.Cubic * (End - First)];
        _sizes = new double[End - First];
        for (int i = First; i < End; i++)
        {
            Span<double> to = _cubics.AsSpan(ForceInfluence.Cubic * (i - First), ForceInfluence.Cubic);
            for (int k = 0; k < train.Offsets.Length; k++)
            {
                int e = train.ElementOf(i, k);
                if (e >= influence.First && e < influence.End)
                {
                    double length = nodes.LengthOf(e);
                    double start = (train.StartOf(i) + train.Offsets[k] - nodes.At(e)) / length;
                    AddShifted(to, influence.On(e), train.Forces[k], start, train.LengthOf(i) / length);
                }
            }

            _sizes[i - First] = Math.Abs(to[0]) + Math.Abs(to[1]) + Math.Abs(to[2]) + Math.Abs(to[3]);
        }
    }

    /// <summary>The first interval in which the train does anything to the figure.</summary>
    internal int First { get; }

    /// <summary>The first after the last of them.</summary>
    internal int End { get; }

    internal ReadOnlySpan<double> On(int interval) => interval >= First && interval < End
        ? _cubics.AsSpan(ForceInfluence.Cubic * (interval - First), ForceInfluence.Cubic)
        : Nothing;

    /// <summary>What it cannot exceed in an interval, whatever its sign.</summary>
    internal double SizeOn(int interval) => interval >= First && interval < End ? _sizes[interval - First] : 0;

    /// <summary>The greatest of it times a scale, over all places of the train.</summary>
    /// <param name="scale">The scale.</param>
    /// <param name="intervals">How many intervals the train's way has.</param>
    internal RollingPeak Greatest(double scale, int intervals)
    {
        RollingPeak peak = RollingPeak.Outside(First, End, intervals);
        Span<double> scaled = stackalloc double[ForceInfluence.Cubic];
        for (int i = First; i < End; i++)
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
