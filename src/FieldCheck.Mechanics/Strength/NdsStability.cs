using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Strength;

/// <summary>The beam stability factor C_L of NDS 3.3.3, for loads of any kind.</summary>
internal static class NdsStability
{
    private const double Steepest = 50;

    /// <summary>Bending limited by sideways buckling; null where it cannot happen: held, or not deeper than wide.</summary>
    /// <param name="member">The member.</param>
    /// <param name="bending">Its bending without C_L.</param>
    internal static Resistance? Of(Member member, Resistance bending) => TimberResistance.Lateral(
        member, bending, CheckClause.NdsLateralStability,
        (bare, outline, unbraced) => new NdsFactors(member.Section!, member.Material!)
            is { StabilityModulus: double modulus } factors
                ? Limited(bare, bending, member.Material!.Timber!.Bending, factors, outline, unbraced, modulus)
                : bare with { Reason = NotJudgedReason.NoModulus });

    /// <summary>Effective length le of NDS Table 3.3.3, footnote 1 [m].</summary>
    /// <param name="unbraced">Unbraced length lu [m].</param>
    /// <param name="depth">Depth d [m].</param>
    internal static double EffectiveLength(double unbraced, double depth) => EffectiveLengthOf(unbraced, depth).Length;

    /// <summary>C_L of NDS equation 3.3-6 [–], in a form that loses no digits for a stiff beam.</summary>
    /// <param name="ratio">FbE/Fb* [–].</param>
    internal static double BeamStabilityFactor(double ratio)
    {
        double half = (1 + ratio) / 1.9;
        return ratio / 0.95 / (half + Math.Sqrt(half * half - ratio / 0.95));
    }

    private static (double Length, CheckFormula By) EffectiveLengthOf(double unbraced, double depth) => (unbraced / depth) switch
    {
        < 7 => (2.06 * unbraced, CheckFormula.NdsShortLength),
        <= 14.3 => (1.63 * unbraced + 3 * depth, CheckFormula.NdsMiddleLength),
        _ => (1.84 * unbraced, CheckFormula.NdsLongLength),
    };

    private static Resistance Limited(
        Resistance bare,
        Resistance bending,
        double strength,
        NdsFactors factors,
        TimberOutline outline,
        double unbraced,
        double modulus)
    {
        (double effective, CheckFormula by) = EffectiveLengthOf(unbraced, outline.Depth);
        double slenderness = Math.Sqrt(effective * outline.Depth) / outline.PlyWidth;
        double buckling = 1.2 * modulus / (slenderness * slenderness);
        double braced = strength * factors.Bending.Without(FactorKind.FlatUse)!.Value;
        double factor = BeamStabilityFactor(buckling / braced);
        bool isTooSteep = slenderness > Steepest * (1 + 1e-9);
        return bare with
        {
            Limit = isTooSteep ? null : bending.Limit * factor,
            Reason = isTooSteep ? NotJudgedReason.TooSlenderSideways : null,
            Factors = factors.Bending.With(FactorKind.BeamStability, factor, after: FactorKind.Temperature).Factors,
            Terms =
            [
                .. bending.Terms,
                Term.Stress(CheckSymbol.BracedStrength, braced, CheckFormula.NdsBracedStrength),
                Term.Length(CheckSymbol.UnbracedLength, unbraced),
                Term.Length(CheckSymbol.Depth, outline.Depth),
                Term.Length(CheckSymbol.PlyWidth, outline.PlyWidth),
                Term.Length(CheckSymbol.EffectiveLength, effective, by),
                Term.Number(CheckSymbol.SlendernessRatio, slenderness, CheckFormula.NdsSlenderness),
                Term.Stress(CheckSymbol.StabilityModulus, modulus),
                Term.Stress(CheckSymbol.BucklingStress, buckling, CheckFormula.NdsBucklingStress),
                Term.Number(CheckSymbol.BucklingRatio, buckling / braced, CheckFormula.BucklingRatio),
                Term.Number(CheckSymbol.BeamStability, factor, CheckFormula.NdsBeamStability),
            ],
        };
    }
}
