using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Strength;

/// <summary>AISC 360-16, by allowable strength or by load and resistance factors.</summary>
/// <remarks>Told in docs/methods.md, "Checks: steel".</remarks>
internal sealed class Aisc360(bool isLrfd) : IStrengthRule
{
    public CombinationBasis Basis => isLrfd ? CombinationBasis.Factored : CombinationBasis.Service;

    public ImmutableArray<Resistance> Of(Member member, MemberActions actions)
    {
        if (SteelMember.Of(member) is not SteelMember steel)
        {
            NotJudgedReason reason = SteelMember.Missing(member)!.Value;
            return
            [
                Finished(CheckKind.Bending, CheckUnit.Moment, Nominal.Unknown(CheckClause.Aisc360Flexure, reason)),
                Finished(CheckKind.Shear, CheckUnit.Force, Nominal.Unknown(CheckClause.Aisc360Shear, reason)),
            ];
        }

        return
        [
            Finished(CheckKind.Bending, CheckUnit.Moment, Aisc360Bending.Of(steel)),
            Finished(CheckKind.Shear, CheckUnit.Force, Aisc360Shear.Of(steel)),
            .. steel.MayBuckleSideways && steel.Lateral is not LateralSupport.Braced
                ? [Finished(CheckKind.LateralStability, CheckUnit.Moment, Aisc360Lateral.Of(steel))]
                : ImmutableArray<Resistance>.Empty,
        ];
    }

    public ImmutableArray<Resistance> At(Member member, Seat seat, SeatPlace place)
    {
        if (SteelMember.Of(member) is not SteelMember steel || Aisc360Web.Of(steel) is not Aisc360Web web)
        {
            return [];
        }

        Resistance yields = Finished(CheckKind.WebYielding, CheckUnit.Force, web.Yielding(seat, place));
        Resistance cripples = Finished(CheckKind.WebCrippling, CheckUnit.Force, web.Crippling(seat, place));
        Resistance less = cripples.Limit < yields.Limit ? cripples : yields;
        return
        [
            less with
            {
                LengthFor = push => Math.Max(yields.LengthFor!(push), cripples.LengthFor!(push)),
                LeastLength = web.LeastLength(place),
            },
        ];
    }

    public Resistance? Axial(Member member, bool isTension)
    {
        CheckClause clause = isTension ? CheckClause.Aisc360Tension : CheckClause.Aisc360Squash;
        Nominal strength = SteelMember.Of(member) switch
        {
            null => Nominal.Unknown(clause, SteelMember.Missing(member)!.Value),
            { Section.Area: double area } steel => new Nominal(
                clause,
                steel.Yield * area,
                [
                    Term.Stress(CheckSymbol.Yield, steel.Yield),
                    Term.Area(CheckSymbol.Area, area),
                    Term.Force(CheckSymbol.NominalForce, steel.Yield * area, CheckFormula.YieldOfArea),
                ]),
            _ => Nominal.Unknown(clause, NotJudgedReason.NoArea),
        };
        return Finished(CheckKind.BendingAndAxial, CheckUnit.Force, strength);
    }

    private Resistance Finished(CheckKind kind, CheckUnit unit, Nominal strength)
    {
        (double omega, double phi) = strength.Factors;
        return new Resistance
        {
            Kind = kind,
            Clause = strength.Clause,
            Unit = unit,
            Limit = isLrfd ? phi * strength.Value : strength.Value / omega,
            LimitBy = (unit, kind, isLrfd) switch
            {
                (CheckUnit.Moment, _, true) => CheckFormula.DesignMoment,
                (CheckUnit.Moment, _, false) => CheckFormula.AllowableMoment,
                (_, CheckKind.Shear, true) => CheckFormula.DesignShear,
                (_, CheckKind.Shear, false) => CheckFormula.AllowableShear,
                (_, _, true) => CheckFormula.DesignForce,
                (_, _, false) => CheckFormula.AllowableForce,
            },
            Reason = strength.Reason,
            LengthFor = strength.LengthFor is Func<double, double> lengthFor
                ? push => lengthFor(isLrfd ? push / phi : push * omega)
                : null,
            Terms = strength.Value is null
                ? strength.Terms
                :
                [
                    .. strength.Terms,
                    isLrfd
                        ? Term.Number(CheckSymbol.ResistanceFactor, phi)
                        : Term.Number(CheckSymbol.SafetyFactor, omega),
                ],
        };
    }
}
