using CsCheck;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Tests.Response;

/// <summary>Roots of polynomials built from known roots.</summary>
public sealed class RootsTests
{
    [Fact]
    public void Inside_LineThroughZero_FindsIt() => Assert.Equal([0.25], Find(-1, 4));

    [Fact]
    public void Inside_RootAtAnEnd_IsNotInside() => Assert.Empty(Find(0, 1));

    [Fact]
    public void Inside_ConstantOrZeroPolynomial_HasNone()
    {
        Assert.Empty(Find(3));
        Assert.Empty(Find(0, 0, 0, 0));
    }

    [Fact]
    public void Inside_NegligibleLeadingCoefficients_AreLeftOut() => Assert.Equal([0.5], Find(-1, 2, 1e-25, -1e-30));

    [Fact]
    public void Inside_QuadraticWithOneTinyRoot_KeepsItsDigits()
    {
        // (t - 1e-9)(t - 0.75): the naive formula loses half the digits of the small root.
        double[] roots = Find(0.75e-9, -(0.75 + 1e-9), 1);

        Assert.Equal(2, roots.Length);
        Assert.Equal(1, roots[0] / 1e-9, 1e-14);
        Assert.Equal(0.75, roots[1], 1e-15);
    }

    [Fact]
    public void Inside_DoubleRootOfAQuadratic_CountsOnce() => Assert.Equal([0.5], Find(0.25, -1, 1));

    [Fact]
    public void Inside_QuadraticThatStaysAbove_HasNone() => Assert.Empty(Find(0.2501, -1, 1));

    [Fact]
    public void Inside_CubicTouchingZero_CountsTheTouchOnce()
    {
        // (t - 1/4)² (t - 3/4) has exact coefficients in binary.
        double[] roots = Find(-0.046875, 0.4375, -1.25, 1);

        Assert.Equal([0.25, 0.75], roots);
    }

    [Fact]
    public void Inside_QuinticFromFiveRoots_FindsAllOfThem()
    {
        double[] wanted = [0.1, 0.3, 0.5, 0.7, 0.9];

        double[] roots = Find(FromRoots(wanted, 2));

        Assert.Equal(wanted.Length, roots.Length);
        Assert.All(wanted.Zip(roots), pair => Assert.Equal(pair.First, pair.Second, 1e-13));
    }

    [Fact]
    public void Inside_AnyRootsWellApart_AreAllFoundInOrder() =>
        Gen.Double[-1.5, 2.5].Array[1, 5].Where(AreApart).Sample(all =>
        {
            double[] wanted = [.. all.Where(root => root is > 0 and < 1).Order()];

            double[] roots = Find(FromRoots(all, 3));

            Assert.Equal(wanted.Length, roots.Length);
            Assert.All(wanted.Zip(roots), pair => Assert.Equal(pair.First, pair.Second, 1e-9));
        });

    [Fact]
    public void TurnsInside_OfAParabola_IsItsVertex()
    {
        Span<double> turns = stackalloc double[2];

        Assert.Equal(1, Roots.TurnsInside([5, -3, 4], turns));
        Assert.Equal(0.375, turns[0]);
    }

    [Fact]
    public void Bracketed_SteepStep_IsFoundWithoutLeavingItsBracket()
    {
        // 1e9 (t - 0.3)³ + tiny slope: Newton alone crawls or jumps out.
        double[] polynomial = [-0.027e9 - 0.3e-3, 0.27e9 + 1e-3, -0.9e9, 1e9];

        Assert.Equal(0.3, Roots.Bracketed(polynomial, 0, 1), 1e-5);
    }

    [Fact]
    public void Value_IsThatOfTheWrittenPolynomial() =>
        Assert.Equal(1 + 0.5 * 2 + 0.25 * 3, Roots.Value([1, 2, 3], 0.5));

    private static bool AreApart(double[] roots)
    {
        double[] ordered = [.. roots.Order()];
        bool fromEnds = ordered.All(root => Math.Abs(root) > 0.01 && Math.Abs(root - 1) > 0.01);
        return fromEnds && ordered.Zip(ordered.Skip(1)).All(pair => pair.Second - pair.First > 0.02);
    }

    private static double[] FromRoots(double[] roots, double leading)
    {
        double[] polynomial = [leading];
        foreach (double root in roots)
        {
            double[] next = new double[polynomial.Length + 1];
            for (int k = 0; k < polynomial.Length; k++)
            {
                next[k] -= root * polynomial[k];
                next[k + 1] += polynomial[k];
            }

            polynomial = next;
        }

        return polynomial;
    }

    private static double[] Find(params double[] polynomial)
    {
        Span<double> roots = stackalloc double[Piece.MostCoefficients];
        return roots[..Roots.Inside(polynomial, roots)].ToArray();
    }
}
