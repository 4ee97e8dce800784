namespace FieldCheck.Mechanics.Strength;

/// <summary>Lateral-torsional buckling of a rectangular tube deeper than wide, AISC 360-16 F7.4.</summary>
internal static class Aisc360TubeLateral
{
    internal static Nominal Of(SteelMember steel, LateralFigures figures)
    {
        double plastic = steel.Yield * figures.Moduli.Plastic;
        double stiffness = steel.Modulus * figures.Radius * Math.Sqrt(figures.Torsion * figures.Area);
        double plasticLength = 0.13 * stiffness / plastic;
        double elasticLength = 2 * stiffness / (0.7 * steel.Yield * figures.Moduli.Elastic);
        double moment = figures.Length <= plasticLength ? plastic
            : figures.Length > elasticLength ? Math.Min(plastic, 2 * stiffness / figures.Length)
            : Math.Min(plastic, figures.Between(plasticLength, elasticLength, steel.Yield));
        return new Nominal(
            CheckClause.Aisc360F7Lateral,
            moment,
            [
                .. figures.Terms(steel),
                Term.Length(CheckSymbol.PlasticLength, plasticLength, CheckFormula.AiscTubePlasticLength),
                Term.Length(CheckSymbol.ElasticLength, elasticLength, CheckFormula.AiscTubeElasticLength),
                .. figures.LengthTerms,
                Term.Moment(
                    CheckSymbol.NominalMoment,
                    moment,
                    figures.Length <= plasticLength ? CheckFormula.Yielding
                        : figures.Length > elasticLength ? CheckFormula.AiscTubeLateralMoment
                        : CheckFormula.AiscBetweenLengths),
            ]);
    }
}
