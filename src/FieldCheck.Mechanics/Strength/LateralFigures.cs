using System.Collections.Immutable;

namespace FieldCheck.Mechanics.Strength;

/// <summary>Figures of a section that may buckle sideways.</summary>
/// <param name="Length">Distance between lateral supports [m].</param>
/// <param name="Moduli">Moduli about the axis of bending.</param>
/// <param name="Area">Area [m²].</param>
/// <param name="Inertia">Second moment of area in sideways bending [m⁴].</param>
/// <param name="Torsion">Torsion constant [m⁴].</param>
internal readonly record struct LateralFigures(
    double Length, Moduli Moduli, double Area, double Inertia, double Torsion)
{
    internal double Radius => Math.Sqrt(Inertia / Area);

    /// <summary>From the length to which the section yields first, straight down to 0.7 of yield at the elastic one.</summary>
    internal double Between(double plasticLength, double elasticLength, double yield)
    {
        double plastic = yield * Moduli.Plastic;
        double elastic = 0.7 * yield * Moduli.Elastic;
        return plastic - (plastic - elastic) * (Length - plasticLength) / (elasticLength - plasticLength);
    }

    /// <summary>What the lengths start from.</summary>
    internal ImmutableArray<CheckTerm> Terms(SteelMember steel) =>
    [
        .. Aisc360Bending.SteelTerms(steel),
        Term.Modulus(CheckSymbol.SectionModulus, Moduli.Elastic),
        .. Aisc360Bending.PlasticTerms(steel, Moduli.Plastic),
        Term.Area(CheckSymbol.Area, Area),
        Term.Inertia(CheckSymbol.LateralInertia, Inertia),
        Term.Inertia(CheckSymbol.TorsionConstant, Torsion),
        Term.Length(CheckSymbol.RadiusOfGyration, Radius, CheckFormula.RadiusOfGyration),
    ];

    /// <summary>The unbraced length.</summary>
    internal ImmutableArray<CheckTerm> LengthTerms =>
        [Term.Length(CheckSymbol.UnbracedLength, Length), Term.Number(CheckSymbol.MomentFactor, 1)];
}
