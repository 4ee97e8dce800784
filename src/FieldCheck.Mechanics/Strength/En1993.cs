using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Strength;

/// <summary>EN 1993-1-1 with the partial factors that it recommends; national annexes may set others.</summary>
/// <remarks>Told in docs/methods.md, "Checks: steel".</remarks>
internal sealed class En1993 : IStrengthRule
{
    /// <summary>γM0, for resistance of sections.</summary>
    internal const double SectionFactor = 1.00;

    /// <summary>γM1, for resistance of members to buckling.</summary>
    internal const double BucklingFactor = 1.00;

    public CombinationBasis Basis => CombinationBasis.Factored;

    public ImmutableArray<Resistance> Of(Member member, MemberActions actions)
    {
        if (SteelMember.Of(member) is not SteelMember steel)
        {
            NotJudgedReason reason = SteelMember.Missing(member)!.Value;
            return
            [
                Moment(CheckKind.Bending, CheckClause.En1993Bending) with { Reason = reason },
                Force(CheckKind.Shear, CheckClause.En1993Shear) with { Reason = reason },
            ];
        }

        Resistance bending = En1993Bending.Of(steel);
        Resistance shear = En1993Shear.Of(steel);
        return
        [
            En1993HighShear.Lowered(steel, bending, shear, actions.Shear),
            shear,
            .. steel.MayBuckleSideways && steel.Lateral is not LateralSupport.Braced
                ? [En1993Lateral.Of(steel, bending)]
                : ImmutableArray<Resistance>.Empty,
        ];
    }

    public ImmutableArray<Resistance> At(Member member, Seat seat, SeatPlace place) => [];

    public Resistance? Axial(Member member, bool isTension)
    {
        Resistance blank = Force(
            CheckKind.BendingAndAxial, isTension ? CheckClause.En1993Tension : CheckClause.En1993Squash);
        return SteelMember.Of(member) switch
        {
            null => blank with { Reason = SteelMember.Missing(member) },
            { Section.Area: double area } steel => blank with
            {
                Limit = area * steel.Yield / SectionFactor,
                LimitBy = CheckFormula.EnAxial,
                Terms =
                [
                    Term.Stress(CheckSymbol.Yield, steel.Yield),
                    Term.Area(CheckSymbol.Area, area),
                    Term.Number(CheckSymbol.PartialFactor, SectionFactor),
                ],
            },
            _ => blank with { Reason = NotJudgedReason.NoArea },
        };
    }

    internal static Resistance Moment(CheckKind kind, CheckClause clause) =>
        new() { Kind = kind, Clause = clause, Unit = CheckUnit.Moment };

    internal static Resistance Force(CheckKind kind, CheckClause clause) =>
        new() { Kind = kind, Clause = clause, Unit = CheckUnit.Force };
}
