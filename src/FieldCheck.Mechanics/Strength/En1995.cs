using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Strength;

/// <summary>EN 1995-1-1 with its recommended values: solid timber and glulam, and figures alone.</summary>
/// <remarks>The rules are told in docs/methods.md, "Checks: timber".</remarks>
internal sealed class En1995 : IStrengthRule
{
    /// <inheritdoc/>
    public CombinationBasis Basis => CombinationBasis.Factored;

    /// <inheritdoc/>
    public ImmutableArray<Resistance> Of(Member member, MemberActions actions)
    {
        Resistance bending = TimberResistance.Bending(
            member, TimberBasis.Characteristic, CheckClause.En1995Bending,
            (section, material) => new En1995Factors(section, material).Bending);
        Resistance shear = TimberResistance.Shear(
            member, TimberBasis.Characteristic, CheckClause.En1995Shear,
            (section, material) => new En1995Factors(section, material).Shear,
            En1995Factors.CrackShare(member.Material));
        return En1995Stability.Of(member, bending) is Resistance lateral ? [bending, lateral, shear] : [bending, shear];
    }

    /// <inheritdoc/>
    public ImmutableArray<Resistance> At(Member member, Seat seat, SeatPlace place) =>
        [En1995Bearing.Of(member, seat, place)];

    /// <summary>Tension where the grade has that strength; none of compression, which may buckle.</summary>
    public Resistance? Axial(Member member, bool isTension) => !isTension ? null : TimberResistance.Tension(
        member, TimberBasis.Characteristic, CheckClause.En1995Tension,
        (section, material) => new En1995Factors(section, material).Tension);
}
