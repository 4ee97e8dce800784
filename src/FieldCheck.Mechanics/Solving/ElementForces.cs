namespace FieldCheck.Mechanics.Solving;

/// <summary>Internal forces just inside the two ends of an element.</summary>
/// <param name="Start">At its left end.</param>
/// <param name="End">At its right end.</param>
internal readonly record struct ElementForces(SectionForces Start, SectionForces End);
