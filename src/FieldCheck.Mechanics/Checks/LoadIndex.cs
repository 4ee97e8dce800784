namespace FieldCheck.Mechanics.Checks;

/// <summary>Which load of a model.</summary>
/// <param name="Case">Index of its case.</param>
/// <param name="Load">Its index in that case.</param>
public readonly record struct LoadIndex(int Case, int Load);
