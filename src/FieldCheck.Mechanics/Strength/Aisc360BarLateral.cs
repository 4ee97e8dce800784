namespace FieldCheck.Mechanics.Strength;

/// <summary>Lateral-torsional buckling of a rectangular bar on edge, AISC 360-16 F11.2.</summary>
internal static class Aisc360BarLateral
{
    /// <param name="steel">The member.</param>
    /// <param name="moduli">Moduli of all plies together.</param>
    /// <param name="length">Distance between lateral supports [m].</param>
    /// <param name="sides">Sides of one ply: nothing makes plies of steel buckle as one.</param>
    internal static Nominal Of(SteelMember steel, Moduli moduli, double length, BarSides sides)
    {
        double ratio = steel.Modulus / steel.Yield;
        double slenderness = length * sides.Depth / (sides.Width * sides.Width);
        double plastic = steel.Yield * Math.Min(moduli.Plastic, 1.6 * moduli.Elastic);
        double yielding = steel.Yield * moduli.Elastic;
        double moment = slenderness <= 0.08 * ratio ? plastic
            : slenderness <= 1.9 * ratio ? Math.Min(plastic, (1.52 - 0.274 * slenderness / ratio) * yielding)
            : Math.Min(plastic, 1.9 * ratio / slenderness * yielding);
        return new Nominal(
            CheckClause.Aisc360F11Lateral,
            moment,
            [
                .. Aisc360Bending.SteelTerms(steel),
                .. Aisc360Bending.BoundedTerms(moduli, plastic),
                Term.Length(CheckSymbol.UnbracedLength, length),
                Term.Number(CheckSymbol.BarSlenderness, slenderness),
                Term.Number(CheckSymbol.MomentFactor, 1),
                Term.Moment(
                    CheckSymbol.NominalMoment,
                    moment,
                    slenderness <= 0.08 * ratio ? CheckFormula.Yielding
                        : slenderness <= 1.9 * ratio ? CheckFormula.AiscBarBetween
                        : CheckFormula.AiscBarElastic),
            ]);
    }
}
