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

    /// <summary>
    /// W. Kahan, "On the Cost of Floating-Point Computation Without Extra-Precise Arithmetic" (2004): in plain
    /// arithmetic b² - 4ac comes out as zero. The roots are 1, which does not lie inside, and c/a.
    /// </summary>
    [Fact]
    public void Inside_QuadraticWithRootsThatNearlyCoincide_KeepsItsDigits() =>
        Assert.Equal([94906265.625 / 94906268.375], Find(94906265.625, -2 * 94906267.0, 94906268.375));

    [Fact]
    public void Inside_QuadraticThatOnlyTouchesAtAnEnd_HasNone() => Assert.Empty(Find(0, 0, 1));

    [Theory]
    [InlineData(-0.25, 0, 1, 0.5)]
    [InlineData(0.25, 0, -1, 0.5)]
    [InlineData(0, -1, 2, 0.5)]
    [InlineData(-3, 5, 2, 0.5)]
    [InlineData(1.5, -3.5, 1, 0.5)]
    public void Inside_QuadraticWithOneRootInside_GivesIt(double c, double b, double a, double root) =>
        Assert.Equal([root], Find(c, b, a));

    [Fact]
    public void Inside_CubicWhoseConstantOutweighsTheRest_HasNone() => Assert.Empty(Find(-3.5, 1, 1, 1));

    [Fact]
    public void Inside_CubicWithRootsAtBothEnds_GivesTheOneBetween() =>
        Assert.Equal([0.5], Find(0, 0.5, -1.5, 1));

    [Fact]
    public void TurnsInside_OfAConstant_AreNone() => Assert.Equal(0, Roots.TurnsInside([5], [0]));

    [Theory]
    [InlineData(1)]
    [InlineData(-1)]
    public void Bracketed_RootAtTheMiddle_IsFoundAtOnce(double sign) =>
        Assert.Equal(0.5, Roots.Bracketed([-0.125 * sign, 0, 0, sign], 0, 1));

    [Theory]
    [InlineData(1)]
    [InlineData(-1)]
    public void Bracketed_OneOfThreeRoots_IsThatOfTheBracket(double sign)
    {
        // (t - 1/8)(t - 1/2)(t - 7/8)
        double[] polynomial = [-0.0546875 * sign, 0.609375 * sign, -1.5 * sign, sign];

        Assert.Equal(0.125, Roots.Bracketed(polynomial, 0, 0.3), 1e-15);
        Assert.Equal(0.5, Roots.Bracketed(polynomial, 0.3, 0.6), 1e-15);
        Assert.Equal(0.875, Roots.Bracketed(polynomial, 0.7, 1), 1e-15);
    }

    [Fact]
    public void Bracketed_NewtonWouldGoToAnotherRoot_StaysInItsBracket()
    {
        // The same cubic: just beyond its turn at 0.2835 Newton's method leaps to 1.6, and from there to 7/8.
        double[] polynomial = [-0.0546875, 0.609375, -1.5, 1];

        Assert.Equal(0.125, Roots.Bracketed(polynomial, 0.1, 0.49), 1e-15);
        Assert.Equal(0.875, Roots.Bracketed(polynomial, 0.51, 0.9), 1e-15);
    }

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
