using System.Collections.Immutable;

namespace FieldCheck.Mechanics.Envelopes;

/// <summary>Forces that move together over the beam, heading either way.</summary>
/// <remarks>
/// Every force counts times one more than the impact, times the factor of its case. Forces off the beam count nothing.
/// </remarks>
/// <param name="Label">What it is called.</param>
/// <param name="Case">Index of its case in the model, whose factor it takes; the case may have no standing load.</param>
/// <param name="Axles">Its forces, in any order; one or more.</param>
/// <param name="Impact">What is added for impact, as a share of the forces [–]; zero or greater.</param>
/// <exception cref="ArgumentException">There is no axle, or a value breaks the bound given above.</exception>
public sealed record RollingLoad(string Label, int Case, ImmutableArray<Axle> Axles, double Impact = 0)
{
    /// <summary>Its forces, in any order; one or more.</summary>
    public ImmutableArray<Axle> Axles { get; } = Require.NotEmpty(Axles);

    /// <summary>What is added for impact, as a share of the forces [–]; zero or greater.</summary>
    public double Impact { get; } = Require.NotNegative(Impact);
}
