using System.Collections.Immutable;

namespace FieldCheck.Mechanics.HandMethods;

/// <summary>Unknowns with their coefficients on the left, what is known on the right.</summary>
/// <param name="Terms">The unknowns; one or more.</param>
/// <param name="Constant">What is known.</param>
public sealed record HandEquation(ImmutableArray<HandTerm> Terms, HandNumber Constant);

/// <summary>An unknown with its coefficient.</summary>
/// <param name="Coefficient">The coefficient.</param>
/// <param name="Unknown">The unknown.</param>
public readonly record struct HandTerm(HandNumber Coefficient, HandName Unknown);
