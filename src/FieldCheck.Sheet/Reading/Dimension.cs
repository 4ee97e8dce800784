namespace FieldCheck.Sheet.Reading;

/// <summary>Exponents of length, force and angle. Force stands for mass too: "lb" on a beam is a force.</summary>
/// <param name="Length">Exponent of length.</param>
/// <param name="Force">Exponent of force.</param>
/// <param name="Angle">Exponent of angle.</param>
public readonly record struct Dimension(sbyte Length, sbyte Force, sbyte Angle);
