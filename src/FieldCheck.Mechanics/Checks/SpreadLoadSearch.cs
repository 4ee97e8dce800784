using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Checks;

/// <summary>
/// The greatest of what a spread load does to one figure when its two ends have a part in each other: branch and bound
/// over where they stand. A cell is cut while its middle and the steepness in it leave room above the best value found;
/// what comes out is never less than the greatest.
/// </summary>
internal sealed class SpreadLoadSearch
{
    /// <summary>How near the search comes, as a share of how far apart the corners are [–].</summary>
    private const double Nearness = 5e-4;

    /// <summary>Corners that are alike, as a share of how far the figure could move at most [–].</summary>
    private const double Alike = 1e-6;

    private const int MostCells = 4000;

    private readonly LoadBox _box;
    private readonly InfluenceLine _line;
    private readonly InfluenceIntegral _integral;
    private readonly bool _along;
    private readonly double _sign;
    private readonly double _length;
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
        _length = box.Load is Load.Distributed spread ? spread.To - spread.From : 0;
    }

    internal double Greatest()
    {
        double reach = 0;
        foreach ((double start, double end) in _box.Sizes)
        {
            Cell all = new(
                _sign * start, _sign * end, Middle(_box.From), Half(_box.From), Middle(_box.To), Half(_box.To));
            TakeCorners(all);
            reach = Math.Max(reach, Open(all));
        }

        double enough = Math.Max(Nearness * (_best - _worst), Alike * reach);
        for (int count = 1; count < MostCells && _open.TryPeek(out Cell cell, out double bound); count++)
        {
            if (-bound <= _best + enough)
            {
                break;
            }

            _open.Dequeue();
            (Cell first, Cell second) = cell.Halves(Steepness(cell));
            Open(first);
            Open(second);
        }

        return _open.TryPeek(out _, out double left) ? Math.Max(_best, -left) : _best;
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

    /// <returns>How far the figure may be from its value in the middle of the cell.</returns>
    private double Open(Cell cell)
    {
        double middle = Value(cell, cell.A, cell.B);
        _best = Math.Max(_best, middle);
        (double ofA, double ofB) = Steepness(cell);
        double reach = ofA * cell.HalfA + ofB * cell.HalfB;
        _open.Enqueue(cell, -(middle + reach));
        return reach;
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
    /// The most that the figure changes per metre that an end moves, anywhere in a cell. At the left end the load there
    /// times η goes, and the rest shifts by half of what the intensities differ, times some mean of η; so at the right.
    /// A load that keeps its total thins out besides.
    /// </summary>
    private (double OfA, double OfB) Steepness(Cell cell)
    {
        Interval atA = Influence(cell.A - cell.HalfA, cell.A + cell.HalfA);
        Interval atB = Influence(cell.B - cell.HalfB, cell.B + cell.HalfB);
        Interval between = Influence(cell.A - cell.HalfA, cell.B + cell.HalfB);
        Interval shift = between.Times((cell.End - cell.Start) / 2);
        Interval ofA = atA.Times(-cell.Start).Plus(shift.Times(-1));
        Interval ofB = atB.Times(cell.End).Plus(shift.Times(-1));
        if (!_box.KeepsTotal)
        {
            return (ofA.Size, ofB.Size);
        }

        Interval thinning = between.Times(cell.Start / 2).Plus(between.Times(cell.End / 2));
        double scale = _length / (cell.B - cell.HalfB - cell.A - cell.HalfA);
        return (scale * ofA.Plus(thinning).Size, scale * ofB.Plus(thinning.Times(-1)).Size);
    }

    private Interval Influence(double from, double to)
    {
        (double low, double high) = _line.RangeOfOne(from, to, _along);
        return new Interval(low, high);
    }

    private readonly record struct Interval(double Low, double High)
    {
        internal double Size => Math.Max(Math.Abs(Low), Math.Abs(High));

        internal Interval Times(double factor) =>
            factor < 0 ? new Interval(factor * High, factor * Low) : new Interval(factor * Low, factor * High);

        internal Interval Plus(Interval other) => new(Low + other.Low, High + other.High);
    }

    private readonly record struct Cell(double Start, double End, double A, double HalfA, double B, double HalfB)
    {
        /// <summary>The two halves across the way in which more can change.</summary>
        internal (Cell First, Cell Second) Halves((double OfA, double OfB) steepness)
        {
            if (steepness.OfA * HalfA >= steepness.OfB * HalfB)
            {
                double a = HalfA / 2;
                return (this with { A = A - a, HalfA = a }, this with { A = A + a, HalfA = a });
            }

            double b = HalfB / 2;
            return (this with { B = B - b, HalfB = b }, this with { B = B + b, HalfB = b });
        }
    }
}
