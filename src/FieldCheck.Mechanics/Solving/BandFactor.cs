namespace FieldCheck.Mechanics.Solving;

/// <summary>A symmetric band matrix in double-double, factored in place as L·D·Lᵀ without pivoting.</summary>
/// <remarks>
/// Row i keeps columns i - h to i (h the half-bandwidth), so factoring costs n·h² and solving n·h. Its memory grows
/// to the largest matrix met and is then reused. A held beam's matrix is positive definite: no pivoting is needed.
/// </remarks>
internal sealed class BandFactor
{
    /// <summary>
    /// Work done, relative to the greatest, below which a row has died away: forces below 1e-26, far below the noise floor.
    /// </summary>
    private const double DiedAway = 1e-52;

    private DoubleDouble[] _rows = [];
    private DoubleDouble[] _inverse = [];
    private int _count;
    private int _half;

    /// <summary>Makes room for an empty matrix of a size and half-bandwidth.</summary>
    internal void Clear(int count, int half)
    {
        _count = count;
        _half = half;
        Workspace.Grow(ref _rows, count * (half + 1));
        Workspace.Grow(ref _inverse, count);
        Array.Clear(_rows, 0, count * (half + 1));
    }

    /// <summary>Adds to the entry at a row and column, and so to its mirror image.</summary>
    internal void Add(int row, int column, DoubleDouble value)
    {
        int place = row >= column ? Place(row, column) : Place(column, row);
        _rows[place] += value;
    }

    /// <summary>Factors what was added up.</summary>
    /// <returns>False: the arithmetic met a pivot that is not positive or not finite.</returns>
    internal bool Factor()
    {
        for (int i = 0; i < _count; i++)
        {
            int first = Math.Max(0, i - _half);
            for (int j = first; j < i; j++)
            {
                _rows[Place(i, j)] -= Overlap(i, j, Math.Max(first, j - _half));
            }

            DoubleDouble pivot = _rows[Place(i, i)];
            for (int j = first; j < i; j++)
            {
                DoubleDouble scaled = _rows[Place(i, j)];
                DoubleDouble entry = scaled * _inverse[j];
                pivot -= scaled * entry;
                _rows[Place(i, j)] = entry;
            }

            if (!pivot.IsPositive || !pivot.IsFinite)
            {
                return false;
            }

            _inverse[i] = (DoubleDouble)1 / pivot;
        }

        return true;
    }

    /// <summary>Replaces a right side by the solution.</summary>
    internal void Solve(DoubleDouble[] side)
    {
        for (int i = 0; i < _count; i++)
        {
            DoubleDouble value = side[i];
            for (int j = Math.Max(0, i - _half); j < i; j++)
            {
                value -= _rows[Place(i, j)] * side[j];
            }

            side[i] = value;
        }

        for (int i = _count - 1; i >= 0; i--)
        {
            DoubleDouble value = side[i] * _inverse[i];
            for (int j = i + 1; j <= Math.Min(_count - 1, i + _half); j++)
            {
                value -= _rows[Place(j, i)] * side[j];
            }

            side[i] = value;
        }
    }

    /// <summary>
    /// The same for a right side that is nothing outside some rows, as far as the solution reaches: where it has died away
    /// it is not followed further. That is the solution to a right side altered by that little.
    /// </summary>
    /// <param name="side">The right side; nothing outside those rows, and nothing outside the rows returned after it.</param>
    /// <param name="first">The first of the rows.</param>
    /// <param name="last">The last of them.</param>
    /// <returns>The first and last row that are written.</returns>
    internal (int First, int Last) SolveNear(DoubleDouble[] side, int first, int last)
    {
        int end = Descend(side, first, last);
        int quiet = 0;
        double most = 0;
        for (int i = end; i >= 0; i--)
        {
            DoubleDouble value = side[i] * _inverse[i];
            for (int j = i + 1; j <= Math.Min(end, i + _half); j++)
            {
                value -= _rows[Place(j, i)] * side[j];
            }

            side[i] = value;
            double work = (double)value * (double)value / (double)_inverse[i];
            most = Math.Max(most, work);
            quiet = work > DiedAway * most ? 0 : quiet + 1;
            if (i <= first && quiet > _half)
            {
                return (i, end);
            }
        }

        return (0, end);
    }

    /// <summary>The first half of solving, down to where nothing is left.</summary>
    private int Descend(DoubleDouble[] side, int first, int last)
    {
        int quiet = 0;
        double most = 0;
        for (int i = first; i < _count; i++)
        {
            DoubleDouble value = side[i];
            for (int j = Math.Max(first, i - _half); j < i; j++)
            {
                value -= _rows[Place(i, j)] * side[j];
            }

            side[i] = value;
            double work = (double)value * (double)value * (double)_inverse[i];
            most = Math.Max(most, work);
            quiet = work > DiedAway * most ? 0 : quiet + 1;
            if (i >= last && quiet > _half)
            {
                return i;
            }
        }

        return _count - 1;
    }

    /// <summary>Σ over k from a first column up to j of (L·D)(i, k) · L(j, k).</summary>
    private DoubleDouble Overlap(int i, int j, int first)
    {
        DoubleDouble sum = DoubleDouble.Zero;
        for (int k = first; k < j; k++)
        {
            sum += _rows[Place(i, k)] * _rows[Place(j, k)];
        }

        return sum;
    }

    private int Place(int row, int column) => row * (_half + 1) + column - row + _half;
}
