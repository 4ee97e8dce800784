namespace FieldCheck.Mechanics.Solving;

/// <summary>A symmetric band matrix in double-double, factored in place as L·D·Lᵀ without pivoting.</summary>
/// <remarks>
/// Row i keeps columns i - h to i (h the half-bandwidth), so factoring costs n·h² and solving n·h. Its memory grows
/// to the largest matrix met and is then reused. A held beam's matrix is positive definite: no pivoting is needed.
/// </remarks>
internal sealed class BandFactor
{
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
