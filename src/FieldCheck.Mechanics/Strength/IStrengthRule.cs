using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Strength;

/// <summary>One set of rules: what it lets a member carry, for actions of one basis.</summary>
internal interface IStrengthRule
{
    /// <summary>The basis of the combinations that it speaks of.</summary>
    CombinationBasis Basis { get; }

    /// <summary>Bending, shear and lateral stability of a member, each at most once.</summary>
    /// <param name="member">The member.</param>
    /// <param name="actions">The greatest actions on it, where a resistance depends on them.</param>
    ImmutableArray<Resistance> Of(Member member, MemberActions actions);

    /// <summary>What the member carries over a support: bearing, or the web; the action is the push of the support [N].</summary>
    /// <param name="member">The member over the support.</param>
    /// <param name="seat">What it bears by.</param>
    /// <param name="place">Where that is.</param>
    ImmutableArray<Resistance> At(Member member, Seat seat, SeatPlace place);

    /// <summary>Axial strength for the plain sum of bending and axial force; as a force, with its terms.</summary>
    /// <param name="member">The member.</param>
    /// <param name="isTension">True: of tension; false: of compression, buckling left out.</param>
    Resistance? Axial(Member member, bool isTension);
}
