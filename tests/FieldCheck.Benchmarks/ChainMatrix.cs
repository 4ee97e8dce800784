using FieldCheck.Mechanics.Solving;
using MathNet.Numerics.LinearAlgebra;

namespace FieldCheck.Benchmarks;

/// <summary>Stiffness of a chain of unit spans on springs: rise and turn of every joint, half-bandwidth 3.</summary>
internal sealed class ChainMatrix
{
    private const int Half = 3;

    private static readonly double[,] Unit =
    {
        { 12, 6, -12, 6 },
        { 6, 4, -6, 2 },
        { -12, -6, 12, -6 },
        { 6, 2, -6, 4 },
    };

    private readonly (int Row, int Column, double Value)[] _entries;
    private readonly BandFactor _factor = new();
    private readonly DoubleDouble[] _solution;

    internal ChainMatrix(int spans)
    {
        _entries = [.. Entries(spans)];
        Side = [.. Enumerable.Range(0, 2 * (spans + 1)).Select(i => 1.0 + (i % 5))];
        _solution = new DoubleDouble[Side.Length];
        SolveBanded();
    }

    internal double[] Side { get; }

    internal Matrix<double> Dense()
    {
        Matrix<double> matrix = Matrix<double>.Build.Dense(Side.Length, Side.Length);
        foreach ((int row, int column, double value) in _entries)
        {
            matrix[row, column] += value;
            if (row != column)
            {
                matrix[column, row] += value;
            }
        }

        return matrix;
    }

    internal void SolveBanded()
    {
        _factor.Clear(Side.Length, Half);
        foreach ((int row, int column, double value) in _entries)
        {
            _factor.Add(row, column, value);
        }

        if (!_factor.Factor())
        {
            throw new InvalidOperationException("The chain is beyond the arithmetic.");
        }

        for (int i = 0; i < Side.Length; i++)
        {
            _solution[i] = Side[i];
        }

        _factor.Solve(_solution);
    }

    /// <summary>Throws unless another solution is this one: a comparison of times must be one of equal work.</summary>
    internal void Compare(Vector<double> other)
    {
        double largest = _solution.Max(value => Math.Abs((double)value));
        for (int i = 0; i < other.Count; i++)
        {
            if (Math.Abs(other[i] - (double)_solution[i]) > 1e-6 * largest)
            {
                throw new InvalidOperationException("The two solutions differ.");
            }
        }
    }

    /// <summary>Entries on and below the diagonal; what stands at one place adds up.</summary>
    private static IEnumerable<(int Row, int Column, double Value)> Entries(int spans)
    {
        for (int span = 0; span < spans; span++)
        {
            for (int row = 0; row < 4; row++)
            {
                for (int column = 0; column <= row; column++)
                {
                    yield return ((2 * span) + row, (2 * span) + column, Unit[row, column]);
                }
            }
        }

        for (int joint = 0; joint <= spans; joint++)
        {
            yield return (2 * joint, 2 * joint, 1);
        }
    }
}
