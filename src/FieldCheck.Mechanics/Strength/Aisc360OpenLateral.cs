namespace FieldCheck.Mechanics.Strength;

/// <summary>Lateral-torsional buckling of an I or a channel, AISC 360-16 F2.2 (F3.1 sends there too).</summary>
internal static class Aisc360OpenLateral
{
    /// <param name="steel">The member.</param>
    /// <param name="figures">Its figures.</param>
    /// <param name="flangeDistance">Between the middles of its flanges, ho [m].</param>
    /// <param name="warping">Its warping constant, Cw [m⁶].</param>
    /// <param name="isChannel">True: of a channel.</param>
    internal static Nominal Of(
        SteelMember steel, LateralFigures figures, double flangeDistance, double? warping, bool isChannel)
    {
        if (warping is not > 0)
        {
            return Nominal.Unknown(CheckClause.Aisc360F2Lateral, NotJudgedReason.NoShape);
        }

        double elastic = figures.Moduli.Elastic;
        double effective = Math.Sqrt(Math.Sqrt(figures.Inertia * warping.Value) / elastic);
        double shapeFactor = isChannel ? flangeDistance / 2 * Math.Sqrt(figures.Inertia / warping.Value) : 1;
        double torsion = figures.Torsion * shapeFactor / (elastic * flangeDistance);
        double yielding = 0.7 * steel.Yield / steel.Modulus;
        double plasticLength = 1.76 * figures.Radius * steel.StiffnessRoot;
        double elasticLength = 1.95 * effective / yielding
            * Math.Sqrt(torsion + Math.Sqrt(torsion * torsion + 6.76 * yielding * yielding));
        double plastic = steel.Yield * figures.Moduli.Plastic;
        double slenderness = figures.Length / effective;
        double stress = Math.PI * Math.PI * steel.Modulus / (slenderness * slenderness)
            * Math.Sqrt(1 + 0.078 * torsion * slenderness * slenderness);
        bool isElastic = figures.Length > elasticLength;
        double moment = figures.Length <= plasticLength ? plastic
            : isElastic ? Math.Min(plastic, stress * elastic)
            : Math.Min(plastic, figures.Between(plasticLength, elasticLength, steel.Yield));
        return new Nominal(
            CheckClause.Aisc360F2Lateral,
            moment,
            [
                .. figures.Terms(steel),
                Term.Length(CheckSymbol.WarpingRadius, Math.Sqrt(warping.Value / figures.Inertia)),
                Term.Length(CheckSymbol.EffectiveRadius, effective, CheckFormula.AiscEffectiveRadius),
                Term.Length(CheckSymbol.FlangeDistance, flangeDistance),
                Term.Number(CheckSymbol.ShapeFactor, shapeFactor, isChannel ? CheckFormula.AiscChannelFactor : null),
                Term.Length(CheckSymbol.PlasticLength, plasticLength, CheckFormula.AiscPlasticLength),
                Term.Length(CheckSymbol.ElasticLength, elasticLength, CheckFormula.AiscElasticLength),
                .. figures.LengthTerms,
                .. isElastic
                    ? [Term.Stress(CheckSymbol.CriticalStress, stress, CheckFormula.AiscLateralStress)]
                    : Array.Empty<CheckTerm>(),
                Term.Moment(
                    CheckSymbol.NominalMoment,
                    moment,
                    figures.Length <= plasticLength ? CheckFormula.Yielding
                        : isElastic ? CheckFormula.MomentOfCriticalStress
                        : CheckFormula.AiscBetweenLengths),
            ]);
    }
}
