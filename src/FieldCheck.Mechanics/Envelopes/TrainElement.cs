using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Envelopes;

/// <summary>What a train does to the sections of one element.</summary>
internal sealed class TrainElement(Train train, ForceInfluence influence, int element)
{
    private const int Cubic = ForceInfluence.Cubic;

    /// <summary>N, V, M, turn and rise.</summary>
    private const int States = 5;

    private readonly TrainRow?[] _rows = new TrainRow?[States];
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

    /// <summary>N, V, M, turn or rise at the start of the element, a cubic in the train's place.</summary>
    internal ReadOnlySpan<double> On(int state, int interval) => Row(state).On(interval);

    /// <summary>What the same cannot exceed in an interval, whatever its sign.</summary>
    internal double SizeOn(int state, int interval) => Row(state).SizeOn(interval);

    /// <summary>The most that axles in the element at the same time weigh together, whatever their signs [N].</summary>
    internal double MostInside()
    {
        double most = 0;
        for (int i = Own.First; i < Own.End; i++)
        {
            double inside = 0;
            for (int k = 0; k < train.Offsets.Length; k++)
            {
                inside += IsInside(i, k) ? Math.Abs(train.Forces[k]) : 0;
            }

            most = Math.Max(most, inside);
        }

        return most;
    }

    internal double Between(double step, double moment, double force) => _section.Between(step, moment, force);

    internal SagSurface Sag() => new(this, influence.Nodes.SpanOf(element));

    internal bool IsInside(int interval, int axle) => train.ElementOf(interval, axle) == element;

    /// <summary>The intervals in which some axle is in the element.</summary>
    internal (int First, int End) Own { get; } = train.IntervalsOver(element, element + 1);

    /// <summary>The intervals in which the train does anything to a quantity in the element.</summary>
    internal (int First, int End) IntervalsOf(Curve curve)
    {
        (int first, int end) = Own;
        Range states = curve switch { Curve.Axial => 0..1, Curve.Shear => 1..2, Curve.Moment => 1..3, _ => 1..States };
        for (int state = states.Start.Value; state < states.End.Value; state++)
        {
            TrainRow row = Row(state);
            (first, end) = row.First == row.End ? (first, end) : (Math.Min(first, row.First), Math.Max(end, row.End));
        }

        return (first, end);
    }

    /// <summary>Gives up what it keeps; it is found again when it is asked for.</summary>
    internal void Forget() => Array.Clear(_rows);

    /// <summary>The greatest of a quantity times a scale at one section of the element, over all places of the train.</summary>
    internal RollingPeak Greatest(Curve curve, double position, double scale)
    {
        Span<double> weights = stackalloc double[States];
        _section.Weigh(curve, position - From, scale, weights);
        (int first, int end) = IntervalsOf(curve);
        RollingPeak near = RollingPeak.None;
        for (int i = Own.First; i < Own.End; i++)
        {
            TakeAt(curve, position, scale, i, weights, ref near);
        }

        RollingPeak peak = RollingPeak.Outside(first, end, train.IntervalCount);
        for (int i = first; i < Own.First; i++)
        {
            TakeFar(curve, position, scale, i, weights, near.Value, ref peak);
        }

        peak = near.Value > peak.Value ? near : peak;
        for (int i = Own.End; i < end; i++)
        {
            TakeFar(curve, position, scale, i, weights, peak.Value, ref peak);
        }

        return peak;
    }

    /// <summary>Takes in an interval in which no axle is in the element, if it could give as much as is known.</summary>
    private void TakeFar(
        Curve curve,
        double position,
        double scale,
        int interval,
        ReadOnlySpan<double> weights,
        double known,
        ref RollingPeak peak)
    {
        if (BoundOn(interval, weights) >= known)
        {
            TakeAt(curve, position, scale, interval, weights, ref peak);
        }
    }

    /// <summary>What the train cannot exceed in an interval, no axle between the section and the start of the element.</summary>
    private double BoundOn(int interval, ReadOnlySpan<double> weights)
    {
        double bound = 0;
        for (int state = 0; state < weights.Length; state++)
        {
            bound += weights[state] == 0 ? 0 : Math.Abs(weights[state]) * Row(state).SizeOn(interval);
        }

        return bound;
    }

    private void TakeAt(
        Curve curve, double position, double scale, int interval, ReadOnlySpan<double> weights, ref RollingPeak peak)
    {
        Span<double> polynomial = stackalloc double[Cubic];
        polynomial.Clear();
        for (int state = 0; state < weights.Length; state++)
        {
            if (weights[state] != 0)
            {
                Add(polynomial, Row(state).On(interval), weights[state]);
            }
        }

        LetPass(curve, position, scale, interval, polynomial, ref peak);
    }

    /// <summary>
    /// Lets the axles that pass the section act on it only while they are left of it. At an end of the beam one that only
    /// comes to stand there counts on both sides, since V jumps there.
    /// </summary>
    private void LetPass(
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
        new TrainRow(train, influence.Nodes, influence.OfStart(element, state));

    private static void Add(Span<double> to, ReadOnlySpan<double> cubic, double weight)
    {
        for (int k = 0; k < Cubic; k++)
        {
            to[k] += weight * cubic[k];
        }
    }
}
