using System.Runtime.CompilerServices;

namespace FieldCheck.Mechanics.Solving;

/// <summary>A number kept as the exact sum of two doubles: 106 bits where a double has 53.</summary>
/// <remarks>
/// Sums and products follow Dekker and Knuth, with the fused multiply-add for the error of a product; each operation
/// is good to a few units in 2^-104. docs/methods.md, "Arithmetic", says why a beam needs them.
/// </remarks>
internal readonly struct DoubleDouble
{
    private readonly double _high;
    private readonly double _low;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private DoubleDouble(double high, double low)
    {
        _high = high;
        _low = low;
    }

    internal static DoubleDouble Zero => default;

    internal bool IsZero => _high == 0;

    internal bool IsPositive => _high > 0;

    internal bool IsFinite => double.IsFinite(_high);

    /// <summary>The part that the nearest double leaves over.</summary>
    internal double Low => _low;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static implicit operator DoubleDouble(double value) => new(value, 0);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static explicit operator double(DoubleDouble value) => value._high;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static DoubleDouble operator -(DoubleDouble value) => new(-value._high, -value._low);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static DoubleDouble operator +(DoubleDouble a, DoubleDouble b)
    {
        DoubleDouble high = Sum(a._high, b._high);
        DoubleDouble low = Sum(a._low, b._low);
        DoubleDouble once = Renormalised(high._high, high._low + low._high);
        return Renormalised(once._high, once._low + low._low);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static DoubleDouble operator -(DoubleDouble a, DoubleDouble b) => a + (-b);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static DoubleDouble operator *(DoubleDouble a, DoubleDouble b)
    {
        double high = a._high * b._high;
        double low = Math.FusedMultiplyAdd(a._high, b._high, -high);
        low = Math.FusedMultiplyAdd(a._high, b._low, low);
        low = Math.FusedMultiplyAdd(a._low, b._high, low);
        return Renormalised(high, low);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static DoubleDouble operator *(DoubleDouble a, double b)
    {
        double high = a._high * b;
        double low = Math.FusedMultiplyAdd(a._high, b, -high);
        return Renormalised(high, Math.FusedMultiplyAdd(a._low, b, low));
    }

    public static DoubleDouble operator /(DoubleDouble a, DoubleDouble b)
    {
        double first = a._high / b._high;
        DoubleDouble rest = a - b * first;
        double second = rest._high / b._high;
        rest -= b * second;
        return Renormalised(first, second) + rest._high / b._high;
    }

    /// <summary>a + b without error.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static DoubleDouble Sum(double a, double b)
    {
        double high = a + b;
        double share = high - a;
        return new DoubleDouble(high, (a - (high - share)) + (b - share));
    }

    /// <summary>a - b without error.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static DoubleDouble Difference(double a, double b) => Sum(a, -b);

    /// <summary>a times b without error.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static DoubleDouble Product(double a, double b)
    {
        double high = a * b;
        return new DoubleDouble(high, Math.FusedMultiplyAdd(a, b, -high));
    }

    /// <summary>Times a power of two, without error.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal DoubleDouble Scaled(double powerOfTwo) => new(_high * powerOfTwo, _low * powerOfTwo);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static DoubleDouble Renormalised(double high, double low)
    {
        double sum = high + low;
        return new DoubleDouble(sum, low - (sum - high));
    }
}
