using CsCheck;
using FieldCheck.Mechanics.Solving;
using MathNet.Numerics.LinearAlgebra;

namespace FieldCheck.Mechanics.Tests.Solving;

/// <summary>The band factorisation by residuals and against a dense solver of a library.</summary>
public sealed class BandFactorTests
{
    private static readonly Gen<(int Count, int Half, int Seed)> AnyShape =
        Gen.Select(Gen.Int[1, 30], Gen.Int[0, 6], Gen.Int[0, 1_000_000]);

    [Fact]
    public void Solve_LeavesNoResidual() => AnyShape.Sample((count, half, seed) =>
    {
        double[,] matrix = PositiveDefinite(count, half, seed);
        double[] wanted = [.. Enumerable.Range(0, count).Select(i => Math.Sin(i + seed))];
        DoubleDouble[] side = [.. Enumerable.Range(0, count).Select(i => Row(matrix, i, wanted))];
        BandFactor factor = Filled(matrix, half);

        Assert.True(factor.Factor());
        factor.Solve(side);

        for (int i = 0; i < count; i++)
        {
            Assert.Equal(wanted[i], (double)side[i], 1e-15);
        }
    });

    [Fact]
    public void Solve_AgreesWithADenseSolver() => AnyShape.Sample((count, half, seed) =>
    {
        double[,] matrix = PositiveDefinite(count, half, seed);
        Vector<double> right = Vector<double>.Build.Dense(count, i => Math.Cos(i * 0.7 + seed));
        Vector<double> expected = Matrix<double>.Build.DenseOfArray(matrix).Cholesky().Solve(right);
        DoubleDouble[] side = [.. right.Select(value => (DoubleDouble)value)];
        BandFactor factor = Filled(matrix, half);

        Assert.True(factor.Factor());
        factor.Solve(side);

        for (int i = 0; i < count; i++)
        {
            Assert.Equal(expected[i], (double)side[i], 1e-12);
        }
    });

    /// <summary>Long matrices, so that most solutions die away before they come to an end.</summary>
    [Fact]
    public void SolveNear_AgreesAndLeavesOutNextToNothing() => Gen
        .Select(Gen.Int[1, 400], Gen.Int[0, 6], Gen.Int[0, 1_000_000], Gen.Double[0, 1], Gen.Int[1, 5])
        .Sample((count, half, seed, at, loaded) =>
        {
            BandFactor factor = Filled(PositiveDefinite(count, half, seed), half);
            Assert.True(factor.Factor());
            int first = (int)(at * (count - 1));
            int last = Math.Min(count - 1, first + loaded - 1);
            DoubleDouble[] whole = new DoubleDouble[count];
            DoubleDouble[] near = new DoubleDouble[count];
            for (int i = first; i <= last; i++)
            {
                whole[i] = near[i] = Math.Cos(i + seed);
            }

            factor.Solve(whole);
            (int from, int to) = factor.SolveNear(near, first, last);

            double most = whole.Max(value => Math.Abs((double)value));
            for (int i = 0; i < count; i++)
            {
                Assert.True(Math.Abs((double)(whole[i] - near[i])) <= 1e-24 * most);
                Assert.True((i >= from && i <= to) || near[i].IsZero);
            }
        });

    [Fact]
    public void SolveNear_DoesNotGoOnToTheEnds()
    {
        BandFactor factor = Filled(PositiveDefinite(2000, 2, 7), 2);
        Assert.True(factor.Factor());
        DoubleDouble[] side = new DoubleDouble[2000];
        side[1000] = 1;

        (int from, int to) = factor.SolveNear(side, 1000, 1000);

        Assert.InRange(from, 700, 1000);
        Assert.InRange(to, 1000, 1300);
    }

    [Theory]
    [InlineData(1048576.0)]
    [InlineData(1.0 / 1048576)]
    public void SolveNear_GoesAsFarWhateverTheSize(double size)
    {
        BandFactor factor = Filled(PositiveDefinite(2000, 2, 7), 2);
        Assert.True(factor.Factor());
        DoubleDouble[] one = new DoubleDouble[2000];
        DoubleDouble[] other = new DoubleDouble[2000];
        (one[1000], other[1000]) = (1, size);

        Assert.Equal(factor.SolveNear(one, 1000, 1000), factor.SolveNear(other, 1000, 1000));
    }

    [Fact]
    public void Factor_NotPositiveDefinite_SaysSo()
    {
        BandFactor factor = Filled(new double[,] { { 1, 2 }, { 2, 1 } }, 1);

        Assert.False(factor.Factor());
    }

    [Theory]
    [InlineData(1.0, 1.0, 1.0)]
    [InlineData(0.0, 0.0, 1.0)]
    [InlineData(-1.0, 0.0, 1.0)]
    [InlineData(double.PositiveInfinity, 0.0, 1.0)]
    [InlineData(double.NaN, 0.0, 1.0)]
    [InlineData(1e-200, 1e200, 1.0)]
    public void Factor_SingularOrBeyondTheArithmetic_SaysSo(double first, double beside, double second) =>
        Assert.False(Filled(new[,] { { first, beside }, { beside, second } }, 1).Factor());

    [Fact]
    public void Clear_ForgetsTheMatrixBefore()
    {
        BandFactor factor = Filled(new double[,] { { 9, 3 }, { 3, 9 } }, 1);
        factor.Clear(1, 0);
        factor.Add(0, 0, 4);
        DoubleDouble[] side = [8];

        Assert.True(factor.Factor());
        factor.Solve(side);

        Assert.Equal(2, (double)side[0]);
    }

    private static double[,] PositiveDefinite(int count, int half, int seed)
    {
        Random random = new(seed);
        double[,] matrix = new double[count, count];
        for (int i = 0; i < count; i++)
        {
            for (int j = Math.Max(0, i - half); j < i; j++)
            {
                matrix[i, j] = matrix[j, i] = random.NextDouble() - 0.5;
            }

            matrix[i, i] = half + 1 + random.NextDouble();
        }

        return matrix;
    }

    private static BandFactor Filled(double[,] matrix, int half)
    {
        int count = matrix.GetLength(0);
        BandFactor factor = new();
        factor.Clear(count, Math.Min(half, count));
        for (int i = 0; i < count; i++)
        {
            for (int j = Math.Max(0, i - half); j <= i; j++)
            {
                (int row, int column) = (i + j) % 3 == 0 ? (i, j) : (j, i);
                factor.Add(row, column, matrix[i, j]);
            }
        }

        return factor;
    }

    private static DoubleDouble Row(double[,] matrix, int row, double[] values)
    {
        DoubleDouble sum = 0;
        for (int j = 0; j < values.Length; j++)
        {
            sum += DoubleDouble.Product(matrix[row, j], values[j]);
        }

        return sum;
    }
}
