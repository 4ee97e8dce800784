using System.Collections.Immutable;

namespace FieldCheck.Mechanics.Model;

/// <summary>Cases added up, each with a factor.</summary>
/// <param name="Name">What the combination is called.</param>
/// <param name="Basis">Whether its figures are service or factored ones; the two are never compared.</param>
/// <param name="Factors">One factor for each case of the model, in its order [–].</param>
public sealed record Combination(string Name, CombinationBasis Basis, ImmutableArray<double> Factors);
