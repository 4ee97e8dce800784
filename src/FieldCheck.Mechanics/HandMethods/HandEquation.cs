using System.Collections.Immutable;

namespace FieldCheck.Mechanics.HandMethods;

/// <summary>Unknowns with their coefficients on the left, what is known on the right.</summary>
/// <param name="Terms">The unknowns; one or more.</param>
/// <param name="Constant">What is known.</param>
public sealed record HandEquation(ImmutableArray<HandTerm> Terms, HandNumber Constant);

/// <summary>An unknown with its coefficient.</summary>
/// <param name="Coefficient">The coefficient.</param>
/// <param name="Unknown">The unknown.</param>
public readonly record struct HandTerm(HandNumber Coefficient, HandName Unknown)
{
    /// <summary>An unknown multiplied with a formula, which is written out in the line that uses it.</summary>
    internal static HandTerm Of(HandFormula coefficient, HandName unknown) => new(
        coefficient is HandFormula.Known known ? known.Number : new HandNumber(coefficient) { IsInline = true }, unknown);
}
