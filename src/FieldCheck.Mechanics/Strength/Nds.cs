using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Strength;

/// <summary>National Design Specification for wood, allowable stress design: solid sticks, and figures alone.</summary>
/// <remarks>The rules are told in docs/methods.md, "Checks: timber".</remarks>
internal sealed class Nds : IStrengthRule
{
    /// <inheritdoc/>
    public CombinationBasis Basis => CombinationBasis.Service;

    /// <inheritdoc/>
    public ImmutableArray<Resistance> Of(Member member, MemberActions actions)
    {
        Resistance bending = TimberResistance.Bending(
            member, TimberBasis.Reference, CheckClause.NdsBending,
            (section, material) => new NdsFactors(section, material).Bending);
        Resistance shear = TimberResistance.Shear(
            member, TimberBasis.Reference, CheckClause.NdsShear,
            (section, material) => new NdsFactors(section, material).Shear);
        return NdsStability.Of(member, bending) is Resistance lateral ? [bending, lateral, shear] : [bending, shear];
    }

    /// <inheritdoc/>
    public ImmutableArray<Resistance> At(Member member, Seat seat, SeatPlace place) =>
        [NdsBearing.Of(member, seat, place)];

    /// <summary>Tension where the grade has that strength; none of compression, which may buckle.</summary>
    public Resistance? Axial(Member member, bool isTension) => !isTension ? null : TimberResistance.Tension(
        member, TimberBasis.Reference, CheckClause.NdsTension,
        (section, material) => new NdsFactors(section, material).Tension);
}
