using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Units;

/// <summary>A unit that may follow a number.</summary>
/// <param name="Spelling">As the beam-file contract spells it.</param>
/// <param name="Factor">How many coherent SI units it is.</param>
/// <param name="Kind">The first kind of value it is listed under.</param>
internal readonly record struct Unit(string Spelling, double Factor, QuantityKind Kind)
{
    internal Dimension Dimension => Dimension.Of(Kind);

    internal bool IsShare => Kind == QuantityKind.Share;

    /// <summary>So many of the unit in coherent SI, as if worked out on paper where decimals can hold it.</summary>
    /// <remarks>
    /// Plain doubles miss by a last digit now and then (4 × 0.3048 does), and two supports typed at 4 ft and at 48 in
    /// would not stand at one place. Decimals are used only where neither figure loses a digit by it.
    /// </remarks>
    internal double ToSi(double number)
    {
        double product = number * Factor;
        return IsExact(number) && IsExact(Factor) && Math.Abs(product) is > Smallest and < Largest
            ? (double)((decimal)number * (decimal)Factor)
            : product;
    }

    // Within these a decimal keeps at least 17 digits of the product, as many as a double has.
    private const double Smallest = 1e-10;
    private const double Largest = 1e12;

    private static bool IsExact(double value) =>
        Math.Abs(value) < Largest && (double)(decimal)value == value;
}
