using System.Collections.Immutable;

namespace FieldCheck.Mechanics.Strength;

/// <summary>An I or a channel bent about its weak axis, AISC 360-16 F6.</summary>
internal static class Aisc360WeakBending
{
    /// <param name="steel">The member.</param>
    /// <param name="moduli">Its moduli about the weak axis.</param>
    /// <param name="flange">Slenderness of the flange.</param>
    /// <param name="flangeBy">How that comes from its sizes.</param>
    internal static Nominal Of(SteelMember steel, Moduli moduli, double flange, CheckFormula flangeBy)
    {
        double plastic = steel.Yield * Math.Min(moduli.Plastic, 1.6 * moduli.Elastic);
        double compact = 0.38 * steel.StiffnessRoot;
        double noncompact = 1.0 * steel.StiffnessRoot;
        ImmutableArray<CheckTerm> terms =
        [
            .. Aisc360Bending.SteelTerms(steel),
            Term.Number(CheckSymbol.FlangeSlenderness, flange, flangeBy),
            Term.Number(CheckSymbol.FlangeCompactLimit, compact, CheckFormula.AiscFlangeCompact),
            Term.Number(CheckSymbol.FlangeNoncompactLimit, noncompact, CheckFormula.AiscFlangeNoncompact),
            .. Aisc360Bending.BoundedTerms(moduli, plastic),
        ];
        if (flange <= compact)
        {
            return new Nominal(CheckClause.Aisc360F6Yielding, plastic, [.. terms, Aisc360Bending.Yields(plastic)]);
        }

        double elastic = 0.7 * steel.Yield * moduli.Elastic;
        bool isNoncompact = flange <= noncompact;
        double buckling = isNoncompact
            ? plastic - (plastic - elastic) * (flange - compact) / (noncompact - compact)
            : 0.69 * steel.Modulus / (flange * flange) * moduli.Elastic;
        double moment = Math.Min(plastic, buckling);
        return new Nominal(
            CheckClause.Aisc360F6Flange,
            moment,
            [
                .. terms,
                Term.Moment(
                    CheckSymbol.NominalMoment,
                    moment,
                    isNoncompact ? CheckFormula.AiscNoncompactFlange : CheckFormula.AiscSlenderWeakFlange),
            ]);
    }
}
