using System.Collections.Immutable;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Checks;

/// <summary>Whether a set of stated reactions carries the loads, each figure known only as well as it was written.</summary>
public sealed record ReactionBalance
{
    /// <summary>Stated forces up against loads down.</summary>
    public required BalanceSide Forces { get; init; }

    /// <summary>Moments about <see cref="About"/>; null where a moment that a support can give is not stated.</summary>
    public required BalanceSide? Moments { get; init; }

    /// <summary>The place that moments are taken about [m].</summary>
    public required double About { get; init; }

    /// <summary>
    /// The load that would make up for what is lacking; null where the forces close, or where moments are not known.
    /// </summary>
    public required BalancingLoad? Lacking { get; init; }

    /// <summary>Whether both sums close; of moments that are not known nothing is asked.</summary>
    public bool Closes => Forces.Closes && Moments is not { Closes: false };

    /// <summary>Strikes the balance of a whole set.</summary>
    /// <param name="verticals">The stated force of every support that holds across; one or more.</param>
    /// <param name="couples">The stated moment of every support that holds rotation; null: not all are stated.</param>
    /// <param name="proof">Sums of the loads that they have to hold up.</param>
    /// <param name="about">The place to take moments about [m].</param>
    public static ReactionBalance Of(
        ImmutableArray<StatedForce> verticals,
        ImmutableArray<StatedForce>? couples,
        EquilibriumProof proof,
        double about)
    {
        ArgumentNullException.ThrowIfNull(proof);
        Require.NotEmpty(verticals);
        BalanceSide forces = new(
            verticals.Sum(vertical => vertical.Value), proof.LoadDown, verticals.Sum(vertical => vertical.Allowed));
        if (couples is not { } turning)
        {
            return new ReactionBalance { Forces = forces, Moments = null, About = about, Lacking = null };
        }

        BalanceSide moments = new(
            verticals.Sum(vertical => vertical.Value * (vertical.Position - about))
                + turning.Sum(couple => couple.Value),
            -proof.LoadMoment - (proof.LoadDown * about),
            verticals.Sum(vertical => vertical.Allowed * Math.Abs(vertical.Position - about))
                + turning.Sum(couple => couple.Allowed));
        return new ReactionBalance
        {
            Forces = forces,
            Moments = moments,
            About = about,
            Lacking = forces.Closes ? null : BalancingLoad.Of(forces, moments, about, verticals, turning),
        };
    }
}
