namespace FieldCheck.Sheet.Reading;

/// <summary>A number as written, before its unit.</summary>
/// <param name="Value">As read.</param>
/// <param name="HalfDigit">Half a unit of its last digit; 0 for a fraction.</param>
/// <param name="IsWhole">Written with digits alone: a fraction may follow.</param>
internal readonly record struct Magnitude(double Value, double HalfDigit, bool IsWhole)
{
    internal static Magnitude Fraction(double value) => new(value, 0, false);
}
