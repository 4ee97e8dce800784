using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Strength;

/// <summary>Bending beside high shear, EN 1993-1-1 6.2.8: the shear area yields sooner.</summary>
internal static class En1993HighShear
{
    /// <summary>
    /// The resistance in bending left beside a shear. The shear is taken as the member's greatest, which is on the safe
    /// side. Beyond the resistance in shear no more is taken off: there the shear itself is over.
    /// </summary>
    internal static Resistance Lowered(SteelMember steel, Resistance bending, Resistance shear, double action)
    {
        if (bending.Limit is not double moment || shear.Limit is not double plastic || action <= plastic / 2)
        {
            return bending;
        }

        double excess = 2 * Math.Min(1, action / plastic) - 1;
        double reduction = excess * excess;
        ImmutableArray<CheckTerm> share = Share(steel);
        return bending with
        {
            Clause = CheckClause.En1993BendingWithShear,
            Limit = moment * (1 - reduction * share[^1].Value),
            LimitBy = CheckFormula.EnReducedMoment,
            Terms =
            [
                .. bending.Terms,
                Term.Moment(CheckSymbol.BendingResistance, moment, bending.LimitBy),
                Term.Force(CheckSymbol.Shear, action),
                Term.Force(CheckSymbol.ShearResistance, plastic),
                Term.Number(CheckSymbol.ShearReduction, reduction, CheckFormula.EnShearReduction),
                .. share,
            ],
        };
    }

    /// <summary>
    /// Share of the moment that the shear area carries, with what it comes from. Of an I on edge as (6.30) has it; where the shear area lies nearest
    /// the axis of bending at most its share of the area; of what lies flat all but the hundredth of its web.
    /// </summary>
    private static ImmutableArray<CheckTerm> Share(SteelMember steel) => steel switch
    {
        { Shape: SectionShape.I or SectionShape.Channel, Section.IsFlat: true } => [Term.Number(CheckSymbol.ShearAreaShare, 0.99)],
        { Shape: SectionShape.I shape, Section.PlasticModulus: double plastic } =>
        [
            Term.Number(
                CheckSymbol.ShearAreaShare,
                Math.Pow(shape.Depth - 2 * shape.FlangeThickness, 2) * shape.WebThickness / (4 * plastic),
                CheckFormula.EnWebShare),
        ],
        { Section.Area: double area } when En1993Shear.Area(steel) is CheckTerm part =>
        [
            Term.Area(CheckSymbol.Area, area),
            Term.Area(CheckSymbol.ShearArea, part.Value, part.By),
            Term.Number(CheckSymbol.ShearAreaShare, part.Value / area, CheckFormula.EnAreaShare),
        ],
        _ => [Term.Number(CheckSymbol.ShearAreaShare, 0.99)],
    };
}
