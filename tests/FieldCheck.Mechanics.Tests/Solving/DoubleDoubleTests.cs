using System.Numerics;
using CsCheck;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Tests.Solving;

/// <summary>Double-doubles against exact fractions of whole numbers.</summary>
public sealed class DoubleDoubleTests
{
    private static readonly Gen<DoubleDouble> AnyValue =
        Gen.Select(Size(1e6), Size(1e-11), DoubleDouble.Sum);

    [Fact]
    public void Sum_OfTwoDoubles_IsExact() =>
        Gen.Select(Size(1e9), Size(1e-9)).Sample((a, b) =>
            Assert.True((Exact.Of(a) + Exact.Of(b)).EqualTo(Exact.Of(DoubleDouble.Sum(a, b)))));

    [Fact]
    public void Product_OfTwoDoubles_IsExact() =>
        Gen.Select(Size(1e9), Size(1e9)).Sample((a, b) =>
            Assert.True((Exact.Of(a) * Exact.Of(b)).EqualTo(Exact.Of(DoubleDouble.Product(a, b)))));

    [Fact]
    public void SumAndDifference_AreGoodTo104Bits() =>
        Gen.Select(AnyValue, AnyValue).Sample((a, b) =>
        {
            AssertClose(Exact.Of(a) + Exact.Of(b), a + b);
            AssertClose(Exact.Of(a) + Exact.Of(-b), a - b);
        });

    [Fact]
    public void Product_IsGoodTo102Bits() =>
        Gen.Select(AnyValue, AnyValue).Sample((a, b) => AssertClose(Exact.Of(a) * Exact.Of(b), a * b));

    [Fact]
    public void Quotient_TimesItsDivisor_GivesTheDividendBack() =>
        Gen.Select(AnyValue, AnyValue).Where((_, b) => Math.Abs((double)b) > 1e-3).Sample((a, b) =>
            AssertClose(Exact.Of(a), a / b * b));

    [Fact]
    public void OneThird_HoldsTwiceTheDigitsOfADouble()
    {
        DoubleDouble third = (DoubleDouble)1 / 3;

        // 1/3 = 0x3FD5555555555555 + 1.8503717077085941e-17 + …, by hand from the binary expansion 0.0101…
        Assert.Equal(1.0 / 3, (double)third);
        Assert.Equal(1.0 / 3 * Math.Pow(2, -54), third.Low);
    }

    [Fact]
    public void Cancellation_KeepsWhatADoubleLoses()
    {
        DoubleDouble nearOne = DoubleDouble.Sum(1, 1e-25);

        Assert.Equal(1e-25, (double)(nearOne - 1));
    }

    /// <summary>Numbers of either sign, none so small that its last bits fall off the range of a double.</summary>
    private static Gen<double> Size(double most) =>
        Gen.Double[-most, most].Where(value => Math.Abs(value) > most * 1e-20);

    private static void AssertClose(Exact expected, DoubleDouble actual)
    {
        double error = expected.DistanceTo(Exact.Of(actual));
        Assert.True(error <= Math.Abs((double)actual) * Math.Pow(2, -102), $"off by {error}");
    }

    /// <summary>A whole number times a power of two: every double and every product of doubles is one.</summary>
    private readonly record struct Exact(BigInteger Whole, int Power)
    {
        public static Exact operator +(Exact a, Exact b)
        {
            int power = Math.Min(a.Power, b.Power);
            return new Exact((a.Whole << (a.Power - power)) + (b.Whole << (b.Power - power)), power);
        }

        public static Exact operator *(Exact a, Exact b) => new(a.Whole * b.Whole, a.Power + b.Power);

        public static Exact Of(double value)
        {
            if (value == 0)
            {
                return new Exact(0, 0);
            }

            long bits = BitConverter.DoubleToInt64Bits(value);
            long whole = (bits & 0xFFFFFFFFFFFFF) | 0x10000000000000;
            return new Exact(bits < 0 ? -whole : whole, (int)((bits >> 52) & 0x7FF) - 1075);
        }

        public static Exact Of(DoubleDouble value) => Of((double)value) + Of(value.Low);

        public bool EqualTo(Exact other) => DistanceTo(other) == 0;

        public double DistanceTo(Exact other)
        {
            Exact rest = this + new Exact(-other.Whole, other.Power);
            return Math.Abs((double)rest.Whole) * Math.Pow(2, rest.Power);
        }
    }
}
