using System.Collections.Immutable;


namespace FieldCheck.Mechanics.Strength;

/// <summary>An I or a channel bent about its weak axis, AISC 360-16 F6.</summary>
internal static class Aisc360WeakBending
{
    /// <param name="steel">The member.</param>
    /// <param name="moduli">Its moduli about the weak axis.</param>
    /// <param name="flange">Slenderness of the flange.</param>
    internal static Nominal Of(SteelMember steel, Moduli moduli, double flange)
    {
        double plastic = steel.Yield * Math.Min(moduli.Plastic, 1.6 * moduli.Elastic);
        double compact = 0.38 * steel.StiffnessRoot;
        double noncompact = 1.0 * steel.StiffnessRoot;
        ImmutableArray<CheckTerm> terms =
        [
            Term.Number(CheckSymbol.FlangeSlenderness, flange),
            Term.Number(CheckSymbol.CompactLimit, compact),
            Term.Number(CheckSymbol.NoncompactLimit, noncompact),
            .. Aisc360Bending.PlasticTerms(steel, moduli.Plastic, plastic),
        ];
        if (flange <= compact)
        {
            return new Nominal(CheckClause.Aisc360F6Yielding, plastic, terms);
        }

        double elastic = 0.7 * steel.Yield * moduli.Elastic;
        double buckling = flange <= noncompact
            ? plastic - (plastic - elastic) * (flange - compact) / (noncompact - compact)
            : 0.69 * steel.Modulus / (flange * flange) * moduli.Elastic;
        double moment = Math.Min(plastic, buckling);
        return new Nominal(
            CheckClause.Aisc360F6Flange,
            moment,
            [
                .. terms,
                Term.Modulus(CheckSymbol.SectionModulus, moduli.Elastic),
                Term.Moment(CheckSymbol.NominalMoment, moment),
            ]);
    }
}
