using System.Collections.Immutable;
using FieldCheck.Mechanics.Checks;

namespace FieldCheck.Sheet.Stated;

/// <summary>What would explain figures that are stated together and differ from the computed ones.</summary>
/// <param name="Against">The answer that they are held against.</param>
/// <param name="Source">Who states them, where the same support is stated more than once; else null.</param>
/// <param name="Set">The figures as the search has them, with the beam.</param>
/// <param name="Rows">For each of them, its index among all figures of the sheet.</param>
/// <param name="Diagnosis">What was found.</param>
public sealed record StatedExplanation(
    StatedAgainst Against,
    string? Source,
    StatedSet Set,
    ImmutableArray<int> Rows,
    Diagnosis.Differs Diagnosis);
