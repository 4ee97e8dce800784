namespace FieldCheck.Sheet.Reading;

/// <summary>A whole text worked out: a value, and the plus-or-minus that may follow it.</summary>
/// <param name="Value">What stands before ±.</param>
/// <param name="Spread">What stands after it; null when there is none.</param>
internal readonly record struct Measured(Term Value, Term? Spread);
