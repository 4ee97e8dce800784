using System.Collections.Immutable;

namespace FieldCheck.Mechanics.Envelopes;

/// <summary>One of all that may happen to a beam.</summary>
/// <param name="Combination">Index of the combination in the model.</param>
/// <param name="Patterns">
/// For each case of the model the bays on which its loads stand; null where they stand always. Bays that change nothing
/// are left out, so that what is named is what matters.
/// </param>
/// <param name="Rolling">The rolling load on the beam and its place; null: none.</param>
public sealed record Situation(int Combination, ImmutableArray<LoadedBays?> Patterns, RollingPlace? Rolling)
{
    /// <summary>Whether the same happens: a list compares by what it is, not by what it holds.</summary>
    /// <param name="other">Another situation.</param>
    public bool Equals(Situation? other) => other is not null
        && Combination == other.Combination
        && Rolling == other.Rolling
        && Patterns.SequenceEqual(other.Patterns);

    /// <inheritdoc/>
    public override int GetHashCode() => Patterns.Aggregate(HashCode.Combine(Combination, Rolling), HashCode.Combine);
}
