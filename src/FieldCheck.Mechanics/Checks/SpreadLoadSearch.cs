using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Checks;

/// <summary>
/// The greatest of what a spread load does to one figure when its two ends have a part in each other: branch and bound
/// over where they stand. Where the figure only rises or only falls with an end, a cell shrinks to that side; it is cut while
/// its middle and the steepness in it leave room above the best value found. What comes out is never less than the greatest.
/// </summary>
internal sealed class SpreadLoadSearch
{
    /// <summary>How near the search comes, as a share of how far apart the corners are [–].</summary>
    private const double Nearness = 5e-4;

    /// <summary>How near an answer must be to be called exact, as a share of how far apart the corners are [–].</summary>
    private const double Near = 5e-3;

    /// <summary>Below this share of what it was summed up from a figure is rounding [–].</summary>
    private const double Rounding = 1e-11;

    private const int MostCells = 20_000;

    private readonly LoadBox _box;
    private readonly InfluenceLine _line;
    private readonly InfluenceIntegral _integral;
    private readonly bool _along;
    private readonly double _sign;
    private readonly double _length;
    private readonly double _steepness;
    private readonly double _jump;
    private readonly PriorityQueue<Cell, double> _open = new();
    private double _best = double.NegativeInfinity;
    private double _worst = double.PositiveInfinity;

    /// <param name="box">The load.</param>
    /// <param name="line">The influence line of the figure.</param>
    /// <param name="along">Whether the load acts along.</param>
    /// <param name="sign">1: the greatest; -1: the greatest of the figure with its sign turned.</param>
    internal SpreadLoadSearch(LoadBox box, InfluenceLine line, bool along, double sign)
    {
        _box = box;
        _line = line;
        _along = along;
        _sign = sign;
        _integral = line.Integral(along);
        _steepness = line.Steepness(along ? 1 : 0, box.From.Low, box.To.High);
        _jump = line.JumpOf(along, box.From.Low, box.To.High);
        _length = box.Load is Load.Distributed spread ? spread.To - spread.From : 0;
    }

    /// <summary>False: the search was given up, and what it found is farther out than it need be.</summary>
    internal bool IsNear { get; private set; } = true;

    internal double Greatest()
    {
        double rounding = 0;
        foreach ((double start, double end) in _box.Sizes)
        {
            Cell all = new(
                _sign * start, _sign * end, Middle(_box.From), Half(_box.From), Middle(_box.To), Half(_box.To));
            TakeCorners(all);
            Open(all);
            rounding = Math.Max(rounding, Rounding * _line.Size * (Math.Abs(start) + Math.Abs(end)) * _length);
        }

        double enough = Math.Max(Nearness * (_best - _worst), rounding);
        for (int count = 1; count < MostCells && _open.TryPeek(out Cell cell, out double bound); count++)
        {
            if (-bound <= _best + enough)
            {
                break;
            }

            _open.Dequeue();
            (Interval ofA, Interval ofB) = Rates(cell);
            (Cell first, Cell second) = cell.Halves(ofA.Size, ofB.Size);
            Open(first);
            Open(second);
        }

        double greatest = _open.TryPeek(out _, out double left) ? Math.Max(_best, -left) : _best;
        IsNear = greatest - _best <= Math.Max(Near * (_best - _worst), enough);
        return greatest;
    }

    private static double Middle((double Low, double High) range) => (range.Low + range.High) / 2;

    private static double Half((double Low, double High) range) => (range.High - range.Low) / 2;

    private void TakeCorners(Cell cell)
    {
        foreach (double a in (double[])[cell.A - cell.HalfA, cell.A + cell.HalfA])
        {
            foreach (double b in (double[])[cell.B - cell.HalfB, cell.B + cell.HalfB])
            {
                double value = Value(cell, a, b);
                _best = Math.Max(_best, value);
                _worst = Math.Min(_worst, value);
            }
        }
    }

    private void Open(Cell whole)
    {
        (Interval ofA, Interval ofB) = Rates(whole);
        Cell cell = whole.Shrunk(ofA.Side, ofB.Side);
        double middle = Value(cell, cell.A, cell.B);
        _best = Math.Max(_best, middle);
        _open.Enqueue(cell, -(middle + ofA.Size * cell.HalfA + ofB.Size * cell.HalfB));
    }

    private double Value(Cell cell, double a, double b)
    {
        (double zerothA, double firstA) = _integral.To(a);
        (double zerothB, double firstB) = _integral.To(b);
        double whole = zerothB - zerothA;
        double towardEnd = (firstB - firstA - a * whole) / (b - a);
        double scale = _box.KeepsTotal ? _length / (b - a) : 1;
        return scale * (cell.Start * (whole - towardEnd) + cell.End * towardEnd);
    }

    /// <summary>
    /// What the figure changes per metre that an end moves, anywhere in a cell. At the left end the load there times η
    /// goes, and the rest shifts by half of what the intensities differ, times the mean of η weighted toward that end; so
    /// at the right. A load that keeps its total thins out besides.
    /// </summary>
    private (Interval OfA, Interval OfB) Rates(Cell cell)
    {
        (Interval towardA, Interval towardB) = Means(cell);
        double half = (cell.End - cell.Start) / 2;
        Interval ofA = Influence(cell.A - cell.HalfA, cell.A + cell.HalfA).Times(-cell.Start).Plus(towardA.Times(-half));
        Interval ofB = Influence(cell.B - cell.HalfB, cell.B + cell.HalfB).Times(cell.End).Plus(towardB.Times(-half));
        if (!_box.KeepsTotal)
        {
            return (ofA, ofB);
        }

        Interval thinning = towardA.Times(cell.Start / 2).Plus(towardB.Times(cell.End / 2));
        double shortest = cell.B - cell.HalfB - cell.A - cell.HalfA;
        double longest = cell.B + cell.HalfB - cell.A + cell.HalfA;
        Interval scale = new(_length / longest, _length / shortest);
        return (ofA.Plus(thinning).Times(scale), ofB.Plus(thinning.Times(-1)).Times(scale));
    }

    /// <summary>
    /// Means of η over the load, weighted in a straight line toward its left and its right end, anywhere in a cell: in the
    /// middle of it, give or take what η changes over the half widths, and what jumps into or out of the load.
    /// </summary>
    private (Interval TowardA, Interval TowardB) Means(Cell cell)
    {
        (double zerothA, double firstA) = _integral.To(cell.A);
        (double zerothB, double firstB) = _integral.To(cell.B);
        (double zeroth, double first) = (zerothB - zerothA, firstB - firstA);
        double length = cell.B - cell.A;
        double scale = 2 / (length * length);
        double shortest = length - cell.HalfA - cell.HalfB;
        double spread = _steepness * Math.Max(cell.HalfA, cell.HalfB)
            + _jump * 2 * (cell.HalfA + cell.HalfB) / shortest;
        return (
            Interval.Around(scale * (cell.B * zeroth - first), spread),
            Interval.Around(scale * (first - cell.A * zeroth), spread));
    }

    private Interval Influence(double from, double to)
    {
        (double low, double high) = _line.RangeOfOne(from, to, _along);
        return new Interval(low, high);
    }

    private readonly record struct Interval(double Low, double High)
    {
        internal static Interval Around(double middle, double half) => new(middle - half, middle + half);

        internal double Size => Math.Max(Math.Abs(Low), Math.Abs(High));

        /// <summary>1: rising all over; -1: falling; 0: not known.</summary>
        internal int Side => Low >= 0 ? 1 : High <= 0 ? -1 : 0;

        internal Interval Times(double factor) =>
            factor < 0 ? new Interval(factor * High, factor * Low) : new Interval(factor * Low, factor * High);

        /// <summary>Times a factor that lies in a range above zero.</summary>
        internal Interval Times(Interval factor) => new(
            Math.Min(factor.Low * Low, factor.High * Low), Math.Max(factor.Low * High, factor.High * High));

        internal Interval Plus(Interval other) => new(Low + other.Low, High + other.High);
    }

    private readonly record struct Cell(double Start, double End, double A, double HalfA, double B, double HalfB)
    {
        /// <summary>The side toward which the figure rises, where that is known.</summary>
        internal Cell Shrunk(int sideA, int sideB)
        {
            Cell cell = sideA == 0 ? this : this with { A = A + sideA * HalfA, HalfA = 0 };
            return sideB == 0 ? cell : cell with { B = B + sideB * HalfB, HalfB = 0 };
        }

        /// <summary>The two halves across the way in which more can change.</summary>
        internal (Cell First, Cell Second) Halves(double ofA, double ofB)
        {
            if (ofA * HalfA >= ofB * HalfB)
            {
                double a = HalfA / 2;
                return (this with { A = A - a, HalfA = a }, this with { A = A + a, HalfA = a });
            }

            double b = HalfB / 2;
            return (this with { B = B - b, HalfB = b }, this with { B = B + b, HalfB = b });
        }
    }
}
