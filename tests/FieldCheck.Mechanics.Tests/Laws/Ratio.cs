using System.Globalization;
using System.Numerics;

namespace FieldCheck.Mechanics.Tests.Laws;

/// <summary>An exact fraction, so that "exactly nil" in these tests means exactly nil.</summary>
internal readonly struct Ratio
{
    private readonly BigInteger _numerator;
    private readonly BigInteger _denominatorLessOne;

    internal Ratio(BigInteger numerator, BigInteger denominator)
    {
        BigInteger common = BigInteger.GreatestCommonDivisor(numerator, denominator) * denominator.Sign;
        _numerator = numerator / common;
        _denominatorLessOne = (denominator / common) - 1;
    }

    internal int Sign => _numerator.Sign;

    // Stored less one, so that default(Ratio) is a sound zero.
    private BigInteger Denominator => _denominatorLessOne + 1;

    public static implicit operator Ratio(int value) => new(value, 1);

    public static Ratio operator +(Ratio a, Ratio b) => new(
        (a._numerator * b.Denominator) + (b._numerator * a.Denominator), a.Denominator * b.Denominator);

    public static Ratio operator -(Ratio a, Ratio b) => new(
        (a._numerator * b.Denominator) - (b._numerator * a.Denominator), a.Denominator * b.Denominator);

    public static Ratio operator -(Ratio a) => new(-a._numerator, a.Denominator);

    public static Ratio operator *(Ratio a, Ratio b) => new(a._numerator * b._numerator, a.Denominator * b.Denominator);

    public static Ratio operator /(Ratio a, Ratio b) => new(a._numerator * b.Denominator, a.Denominator * b._numerator);

    /// <summary>The exact value of a double.</summary>
    internal static Ratio Of(double value)
    {
        int shift = 0;
        while (value != Math.Truncate(value))
        {
            value *= 2;
            shift++;
        }

        return new Ratio(new BigInteger(value), BigInteger.One << shift);
    }

    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{_numerator}/{Denominator}");
}
