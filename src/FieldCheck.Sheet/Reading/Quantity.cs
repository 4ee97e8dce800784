namespace FieldCheck.Sheet.Reading;

/// <summary>What a text was read as.</summary>
/// <param name="Value">The value in coherent SI: m, N, rad and their products.</param>
/// <param name="Dimension">What kind of value it is.</param>
/// <param name="Spread">Half-width written after ±, in the unit of <paramref name="Value"/>; null without one.</param>
/// <param name="HalfDigit">
/// Half a unit of the last digit written, in the unit of <paramref name="Value"/>: 50 for "10.3 kN"; after feet and
/// inches that of the inches. 0 for fractions, sums and all else that was worked out.
/// </param>
public sealed record Quantity(double Value, Dimension Dimension, double? Spread = null, double HalfDigit = 0);
