using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Strength;

/// <summary>The factor k_crit of EN 1995-1-1 6.3.3 for rectangles of softwood, loaded on top.</summary>
internal static class En1995Stability
{
    /// <summary>Bending limited by sideways buckling; null where it cannot happen: held, or not deeper than wide.</summary>
    /// <param name="member">The member.</param>
    /// <param name="bending">Its bending without k_crit.</param>
    internal static Resistance? Of(Member member, Resistance bending) => TimberResistance.Lateral(
        member, bending, CheckClause.En1995LateralStability,
        (bare, outline, unbraced) => member.Material!.Timber is { MinimumModulus: double modulus } timber
            ? Limited(bare, bending, new En1995Factors(member.Section!, member.Material), timber, outline, unbraced, modulus)
            : bare with { Reason = NotJudgedReason.NoModulus });

    /// <summary>k_crit of equation 6.34 [–].</summary>
    /// <param name="slenderness">Relative slenderness λrel,m [–].</param>
    internal static double LateralFactor(double slenderness) => slenderness switch
    {
        <= 0.75 => 1,
        <= 1.4 => 1.56 - 0.75 * slenderness,
        _ => 1 / (slenderness * slenderness),
    };

    private static CheckTerm FactorTerm(double slenderness) => Term.Number(
        CheckSymbol.LateralFactor,
        LateralFactor(slenderness),
        slenderness switch
        {
            <= 0.75 => null,
            <= 1.4 => CheckFormula.EnTimberBetween,
            _ => CheckFormula.EnTimberSlender,
        });

    private static Resistance Limited(
        Resistance bare,
        Resistance bending,
        En1995Factors factors,
        TimberStrengths timber,
        TimberOutline outline,
        double unbraced,
        double modulus)
    {
        // Table 6.1 has at most 1.0 of the span, and 2h more for loads on the compression side: taken for all.
        double effective = unbraced + 2 * outline.Depth;
        double buckling = 0.78 * outline.PlyWidth * outline.PlyWidth * modulus / (outline.Depth * effective);
        FactorProduct product = factors.Bending;
        double characteristic = timber.Bending * product.Factors.Single(one => one.Kind == FactorKind.Depth).Value;
        double slenderness = Math.Sqrt(characteristic / buckling);
        double factor = LateralFactor(slenderness);
        return bare with
        {
            Limit = bending.Limit * factor,
            Factors = product.With(FactorKind.LateralStability, factor, after: FactorKind.System).Factors,
            Terms =
            [
                .. bending.Terms,
                Term.Stress(CheckSymbol.BracedStrength, bending.Limit!.Value, CheckFormula.EnTimberBending),
                Term.Length(CheckSymbol.UnbracedLength, unbraced),
                Term.Length(CheckSymbol.Depth, outline.Depth),
                Term.Length(CheckSymbol.PlyWidth, outline.PlyWidth),
                Term.Length(CheckSymbol.EffectiveLength, effective, CheckFormula.EnTimberLength),
                Term.Stress(CheckSymbol.StabilityModulus, modulus),
                Term.Stress(CheckSymbol.BucklingStress, buckling, CheckFormula.EnTimberBuckling),
                Term.Number(CheckSymbol.RelativeSlenderness, slenderness, CheckFormula.EnTimberSlenderness),
                FactorTerm(slenderness),
            ],
        };
    }
}
