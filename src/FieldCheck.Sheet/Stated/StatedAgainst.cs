using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Sheet.Stated;

/// <summary>The answer of the beam that a stated figure is held against.</summary>
/// <param name="Name">Name of the combination or case.</param>
/// <param name="IsCase">True: a case alone, with factor 1; false: a combination.</param>
/// <param name="Basis">What its figures may be compared with; a case alone is service.</param>
/// <param name="Factors">One factor for each case of the model, in its order [–].</param>
/// <param name="Response">The answer.</param>
public sealed record StatedAgainst(
    string Name, bool IsCase, CombinationBasis Basis, ImmutableArray<double> Factors, BeamResponse Response)
{
    /// <summary>
    /// "max" or "min": it governs that end of the envelope over the combinations of its basis; null: it was named, or
    /// is the only one that the figure can be for.
    /// </summary>
    public string? Extreme { get; init; }

    /// <summary>
    /// What governs that end over all patterns and rolling loads; of a case alone its combination says nothing. Null: the
    /// answer is that of the whole combination or case.
    /// </summary>
    public Situation? Governs { get; init; }

    /// <summary>Whether both are the same combination or case.</summary>
    /// <param name="other">Another answer of the same beam.</param>
    public bool IsSameAs(StatedAgainst other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return IsCase == other.IsCase && Name == other.Name;
    }
}
