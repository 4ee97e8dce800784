using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Envelopes;

/// <summary>What a train does to the sections of one element.</summary>
internal sealed class TrainElement(Train train, ForceInfluence influence, int element)
{
    private const int Cubic = ForceInfluence.Cubic;

    private readonly TrainRow?[] _rows = new TrainRow?[5];
    private readonly SectionRelation _section = new(influence.Nodes.SpanOf(element));

    internal Train Train => train;

    /// <summary>Left end of the element [m].</summary>
    internal double From => influence.Nodes.At(element);

    /// <summary>Right end of the element [m].</summary>
    internal double To => influence.Nodes.At(element + 1);

    /// <summary>V at the start of the element, a cubic in the train's place.</summary>
    internal ReadOnlySpan<double> Shear(int interval) => Row(1).On(interval);

    /// <summary>M at the start of the element, a cubic in the train's place.</summary>
    internal ReadOnlySpan<double> Moment(int interval) => Row(2).On(interval);

    internal bool IsInside(int interval, int axle) => train.ElementOf(interval, axle) == element;

    /// <summary>The greatest of a quantity times a scale at one section of the element, over all places of the train.</summary>
    internal RollingPeak Greatest(Curve curve, double position, double scale)
    {
        RollingPeak peak = RollingPeak.None;
        Span<double> polynomial = stackalloc double[Cubic];
        Span<double> weights = stackalloc double[5];
        _section.Weigh(curve, position - From, scale, weights);
        for (int i = 0; i < train.IntervalCount; i++)
        {
            polynomial.Clear();
            for (int state = 0; state < weights.Length; state++)
            {
                if (weights[state] != 0)
                {
                    Add(polynomial, Row(state).On(i), weights[state]);
                }
            }

            Take(curve, position, scale, i, polynomial, ref peak);
        }

        return peak;
    }

    /// <summary>
    /// Lets the axles that pass the section act on it only while they are left of it. At an end of the beam one that only
    /// comes to stand there counts on both sides, since V jumps there.
    /// </summary>
    private void Take(
        Curve curve, double position, double scale, int interval, Span<double> polynomial, ref RollingPeak peak)
    {
        double from = 0;
        double length = train.LengthOf(interval);
        int axles = curve == Curve.Axial ? 0 : train.Offsets.Length;
        bool isEnd = position == 0 || position == influence.Nodes.Positions[^1];
        double margin = isEnd ? -train.Nearness : train.Nearness;
        for (int k = 0; k < axles; k++)
        {
            double left = position - train.Offsets[k] - train.StartOf(interval);
            int stop = train.StopOf(interval, k);
            if (IsInside(interval, k) && left > margin && stop >= 0)
            {
                _section.AddAxle(polynomial, curve, scale * train.Forces[k], left, length);
            }
        }

        for (int k = axles - 1; k >= 0; k--)
        {
            double left = position - train.Offsets[k] - train.StartOf(interval);
            bool passes = left > margin && left < length - margin;
            if (IsInside(interval, k) && passes && train.StopOf(interval, k) == 0)
            {
                double share = Math.Clamp(left / length, 0, 1);
                RollingScan.Take(polynomial, interval, from, share, ref peak);
                _section.AddAxle(polynomial, curve, -scale * train.Forces[k], left, length);
                from = share;
            }
        }

        RollingScan.Take(polynomial, interval, from, 1, ref peak);
    }

    private TrainRow Row(int state) => _rows[state] ??=
        new TrainRow(train, influence.Nodes, influence.Row(influence.StartRow(element, state)));

    private static void Add(Span<double> to, ReadOnlySpan<double> cubic, double weight)
    {
        for (int k = 0; k < Cubic; k++)
        {
            to[k] += weight * cubic[k];
        }
    }
}
