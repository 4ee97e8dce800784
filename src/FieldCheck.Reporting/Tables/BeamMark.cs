namespace FieldCheck.Reporting.Tables;

/// <summary>A place along a beam that is worth reading off.</summary>
/// <param name="Position">The place [m from the left end].</param>
/// <param name="Words">What is there, as "B" or "load 2 ends, zero shear".</param>
public sealed record BeamMark(double Position, string Words);
