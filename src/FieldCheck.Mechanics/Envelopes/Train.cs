namespace FieldCheck.Mechanics.Envelopes;

/// <summary>
/// A rolling load that heads one way, and its way over the beam: between two events, at which an axle passes a node, every
/// axle stays in its element and every figure is a cubic in the place.
/// </summary>
internal sealed class Train
{
    /// <summary>
    /// How far from a section an axle is said to stand where V holds on one side of it only, as a share of beam and train
    /// [–]: more than two places typed may differ by and be one, so that the place gives the value when it is typed.
    /// </summary>
    private const double Aside = 3e-9;

    private readonly List<Interval> _intervals = [];
    private readonly List<int> _elements = [];
    private readonly double _length;
    private readonly double _extent;

    internal Train(EnvelopeProblem problem, int rolling, bool isReversed, BeamNodes nodes)
    {
        RollingLoad load = problem.Rolling[rolling];
        Rolling = rolling;
        Case = load.Case;
        IsReversed = isReversed;
        (double Offset, double Down)[] axles =
        [
            .. from axle in load.Axles
               group axle.Down by isReversed ? -axle.Offset : axle.Offset into together
               where together.Sum() != 0
               orderby together.Key
               select (together.Key, together.Sum()),
        ];
        Offsets = [.. axles.Select(axle => axle.Offset)];
        Forces = [.. axles.Select(axle => (1 + load.Impact) * axle.Down)];
        _length = problem.Model.Length;
        double reach = Offsets.Length == 0 ? 0 : Math.Max(Math.Abs(Offsets[0]), Math.Abs(Offsets[^1]));
        _extent = _length + reach;
        Nearness = 1e-12 * _extent;
        Lay(nodes);
    }

    /// <summary>Index of the rolling load.</summary>
    internal int Rolling { get; }

    /// <summary>Index of the case whose factor it takes.</summary>
    internal int Case { get; }

    internal bool IsReversed { get; }

    /// <summary>Places of what weighs anything, from that of the first axle, left to right, none twice [m].</summary>
    internal double[] Offsets { get; }

    /// <summary>Their forces, with impact [N], positive down.</summary>
    internal double[] Forces { get; }

    /// <summary>What two places may differ by and be one [m].</summary>
    internal double Nearness { get; }

    internal int IntervalCount => _intervals.Count;

    /// <summary>The trains of a problem: every rolling load that weighs anything, both ways.</summary>
    internal static Train[] Of(EnvelopeProblem problem, BeamNodes nodes) =>
    [
        .. from rolling in Enumerable.Range(0, problem.Rolling.Length)
           from heading in Enumerable.Range(0, 2)
           let isReversed = heading == 1
           let train = new Train(problem, rolling, isReversed, nodes)
           where train.Offsets.Length > 0 && (!isReversed || train.Offsets.Any(offset => offset != 0))
           select train,
    ];

    /// <summary>Place of its first axle where an interval between two events begins [m].</summary>
    internal double StartOf(int interval) => _intervals[interval].Start;

    /// <summary>How far it goes in it [m].</summary>
    internal double LengthOf(int interval) => _intervals[interval].Length;

    /// <summary>Whether it is no way but one place, where an axle comes on just as another leaves.</summary>
    internal bool IsPlace(int interval) => _intervals[interval].Only is not null;

    /// <summary>The element that an axle is in, or -1: it is off the beam.</summary>
    internal int ElementOf(int interval, int axle) => _elements[interval * Offsets.Length + axle];

    /// <summary>The intervals from where some axle comes to the first of some elements to where the last leaves them all.</summary>
    internal (int First, int End) IntervalsOver(int firstElement, int endElement)
    {
        (int first, int end) = (IntervalCount, 0);
        for (int k = 0; k < Offsets.Length && firstElement < endElement; k++)
        {
            first = Math.Min(first, IntervalReaching(firstElement, k));
            end = Math.Max(end, IntervalReaching(endElement, k));
        }

        return (Math.Min(first, end), end);
    }

    /// <summary>The first interval in which an axle is in an element or right of it.</summary>
    private int IntervalReaching(int element, int axle)
    {
        int low = 0;
        int high = IntervalCount;
        while (low < high)
        {
            int middle = (low + high) / 2;
            int at = ElementOf(middle, axle);
            bool isThere = at >= 0 ? at >= element : StartOf(middle) + Offsets[axle] > _length / 2;
            (low, high) = isThere ? (low, middle) : (middle + 1, high);
        }

        return low;
    }

    /// <summary>One of some even steps from where it is off one end of the beam to where it is off the other [m].</summary>
    internal double Step(int step, int steps)
    {
        double first = -Offsets[^1];
        return first + (_length - Offsets[0] - first) * step / steps;
    }

    /// <summary>
    /// Whether an axle stands exactly at an end of the beam and cannot move: no section lies beyond it, 1 to the right of
    /// the left end, -1 to the left of the right end; else 0.
    /// </summary>
    internal int StopOf(int interval, int axle)
    {
        double? only = _intervals[interval].Only;
        double place = (only ?? 0) + Offsets[axle];
        return only is null ? 0 : place == 0 ? 1 : place == _length ? -1 : 0;
    }

    /// <summary>
    /// Where it stands for a value that was found; moved by next to nothing where the value belongs to one side of the
    /// place only: an axle just on or off the beam, or beside the section.
    /// </summary>
    internal RollingPlace PlaceOf(in RollingPeak peak, bool jumpsBesideAxle)
    {
        if (_intervals[peak.Interval].Only is double only)
        {
            return new RollingPlace(Rolling, only, IsReversed);
        }

        double at = StartOf(peak.Interval) + peak.Share * LengthOf(peak.Interval);
        double aside = peak.Lean == 0 ? 0
            : IsOnAnother(peak.Interval, at) ? Nearness
            : jumpsBesideAxle ? Aside * _extent
            : 0;
        return new RollingPlace(Rolling, at + peak.Lean * aside, IsReversed);
    }

    private bool IsOnAnother(int interval, double at)
    {
        for (int k = 0; k < Offsets.Length; k++)
        {
            if (IsOn(k, at) != (ElementOf(interval, k) >= 0))
            {
                return true;
            }
        }

        return false;
    }

    private bool IsOn(int axle, double at) => at + Offsets[axle] >= 0 && at + Offsets[axle] <= _length;

    private void Lay(BeamNodes nodes)
    {
        double[] events = Events(nodes);
        for (int i = 0; i < events.Length; i++)
        {
            double before = i == 0 ? double.NegativeInfinity : (events[i - 1] + events[i]) / 2;
            double after = i + 1 == events.Length ? double.PositiveInfinity : (events[i] + events[i + 1]) / 2;
            if (IsAlone(before, events[i], after))
            {
                double next = Nearness / 1000;
                Add(new Interval(events[i] - next, 2 * next, events[i]), events[i], nodes);
            }

            if (i + 1 < events.Length)
            {
                Add(new Interval(events[i], events[i + 1] - events[i], null), after, nodes);
            }
        }
    }

    /// <summary>
    /// Whether an axle comes on at one end just where another leaves at the other: for a moment both are on the beam.
    /// </summary>
    private bool IsAlone(double before, double at, double after)
    {
        bool comes = false;
        bool leaves = false;
        for (int k = 0; k < Offsets.Length; k++)
        {
            comes |= IsOn(k, at) && !IsOn(k, before);
            leaves |= IsOn(k, at) && !IsOn(k, after);
        }

        return comes && leaves;
    }

    private void Add(Interval interval, double at, BeamNodes nodes)
    {
        _intervals.Add(interval);
        foreach (double offset in Offsets)
        {
            double place = at + offset;
            _elements.Add(place == _length && interval.Only is not null ? nodes.ElementCount - 1 : nodes.ElementAt(place));
        }
    }

    private double[] Events(BeamNodes nodes)
    {
        List<double> all = new(Offsets.Length * nodes.Positions.Length);
        foreach (double offset in Offsets)
        {
            foreach (double node in nodes.Positions)
            {
                all.Add(node - offset);
            }
        }

        all.Sort();
        List<double> apart = new(all.Count);
        foreach (double one in all)
        {
            if (apart.Count == 0 || one - apart[^1] > 4 * Nearness)
            {
                apart.Add(one);
            }
        }

        return [.. apart];
    }

    /// <summary>The train's way between two events; or, where set, one place only.</summary>
    private readonly record struct Interval(double Start, double Length, double? Only);
}
