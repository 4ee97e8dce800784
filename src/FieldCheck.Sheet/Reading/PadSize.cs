namespace FieldCheck.Sheet.Reading;

/// <summary>The two sides of a pad under a support.</summary>
/// <param name="First">As written first; greater than 0.</param>
/// <param name="Second">As written second; greater than 0.</param>
public sealed record PadSize(Quantity First, Quantity Second);
