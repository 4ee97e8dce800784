namespace FieldCheck.Sheet.Editing;

/// <summary>One row of what is stated.</summary>
/// <param name="Label">The support's label; null where the file names none.</param>
/// <param name="Entry">The row of the file, counted from 0; null while nothing is stated of the support.</param>
public sealed record StatedRow(string? Label, int? Entry);
