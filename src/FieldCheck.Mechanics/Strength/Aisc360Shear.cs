using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Strength;

/// <summary>Shear strength without stiffeners, AISC 360-16 chapter G.</summary>
internal static class Aisc360Shear
{
    private const double WebBuckling = 5.34;
    private const double TubeBuckling = 5;
    private const double OutstandBuckling = 1.2;

    /// <summary>F13.2: a web without stiffeners is not thinner.</summary>
    private const double ThinnestWeb = 260;

    internal static Nominal Of(SteelMember steel) => steel.Shape switch
    {
        SectionShape.I shape when steel.Section.IsFlat => Flanges(
            steel,
            2 * shape.FlangeWidth * shape.FlangeThickness,
            Term.Number(
                CheckSymbol.FlangeSlenderness, shape.FlangeWidth / (2 * shape.FlangeThickness), CheckFormula.HalfFlange)),
        SectionShape.Channel shape when steel.Section.IsFlat => Flanges(
            steel,
            2 * shape.FlangeWidth * shape.FlangeThickness,
            Term.Number(CheckSymbol.FlangeSlenderness, shape.FlangeWidth / shape.FlangeThickness, CheckFormula.WholeFlange)),
        SectionShape.I shape => Web(
            steel, shape.Depth * shape.WebThickness, WebPlate.SlendernessOf(shape), shape.IsRolled),
        SectionShape.Channel shape => Web(
            steel, shape.Depth * shape.WebThickness, WebPlate.SlendernessOf(shape), isRolledI: false),
        SectionShape.RectangularTube tube => Tube(steel, TubeSides.Of(tube, steel.Section.IsFlat)),
        SectionShape.RoundTube tube => Tube(steel, tube),
        SectionShape.Rectangle or SectionShape.Round => Bar(steel),
        _ => Nominal.Unknown(CheckClause.Aisc360Shear, NotJudgedReason.ShapeNotInRules),
    };

    /// <summary>G2.1.</summary>
    private static Nominal Web(SteelMember steel, double area, double slenderness, bool isRolledI)
    {
        bool isSurest = isRolledI && slenderness <= 2.24 * steel.StiffnessRoot;
        double limit = 1.10 * Math.Sqrt(WebBuckling) * steel.StiffnessRoot;
        CheckTerm ratio = Term.Number(CheckSymbol.WebSlenderness, slenderness, CheckFormula.WebBetweenFillets);
        CheckTerm coefficient = isSurest || slenderness <= limit
            ? Term.Number(CheckSymbol.ShearCoefficient, 1)
            : Term.Number(CheckSymbol.ShearCoefficient, limit / slenderness, CheckFormula.AiscWebCoefficient);
        return slenderness > ThinnestWeb
            ? Nominal.Unknown(CheckClause.Aisc360G2, NotJudgedReason.TooSlender, ratio)
            : Strength(
                steel,
                CheckClause.Aisc360G2,
                [ratio],
                Term.Area(CheckSymbol.WebArea, area, CheckFormula.AiscWebArea),
                coefficient) with
            {
                Factors = isSurest ? AiscFactors.Surest : AiscFactors.Usual,
            };
    }

    /// <summary>G4.</summary>
    private static Nominal Tube(SteelMember steel, TubeSides sides) => Strength(
        steel,
        CheckClause.Aisc360G4,
        [Term.Number(CheckSymbol.WebSlenderness, sides.WebSlenderness, CheckFormula.TubeWeb)],
        Term.Area(CheckSymbol.WebArea, 2 * sides.ShearHeight * sides.Wall, CheckFormula.AiscTubeShearArea),
        Coefficient(
            steel,
            TubeBuckling,
            sides.WebSlenderness,
            CheckFormula.AiscTubeCoefficientBetween,
            CheckFormula.AiscTubeCoefficientElastic));

    /// <summary>G6: both flanges carry it.</summary>
    private static Nominal Flanges(SteelMember steel, double area, CheckTerm slenderness) => Strength(
        steel,
        CheckClause.Aisc360G6,
        [slenderness],
        Term.Area(CheckSymbol.WebArea, area, CheckFormula.BothFlanges),
        Coefficient(
            steel,
            OutstandBuckling,
            slenderness.Value,
            CheckFormula.AiscFlangeCoefficientBetween,
            CheckFormula.AiscFlangeCoefficientElastic));

    /// <summary>G5, without the part of it that asks for the distance to where the shear is nil: on the safe side.</summary>
    private static Nominal Tube(SteelMember steel, SectionShape.RoundTube tube)
    {
        if (steel.Section.Area is not double area)
        {
            return Nominal.Unknown(CheckClause.Aisc360G5, NotJudgedReason.NoArea);
        }

        double wall = tube.Diameter / tube.Wall;
        double stress = Math.Min(0.6 * steel.Yield, 0.78 * steel.Modulus / Math.Pow(wall, 1.5));
        return new Nominal(
            CheckClause.Aisc360G5,
            stress * area / 2,
            [
                .. Aisc360Bending.SteelTerms(steel),
                Term.Number(CheckSymbol.WallSlenderness, wall),
                Term.Stress(CheckSymbol.CriticalStress, stress, CheckFormula.AiscRoundShearStress),
                Term.Area(CheckSymbol.Area, area),
                Term.Area(CheckSymbol.WebArea, area / 2, CheckFormula.HalfArea),
                Term.Force(CheckSymbol.NominalShear, stress * area / 2, CheckFormula.AiscRoundShear),
            ]);
    }

    private static Nominal Bar(SteelMember steel) => steel.Section.PeakShearArea is double area
        ? Strength(
            steel,
            CheckClause.SolidBarShear,
            [],
            Term.Area(CheckSymbol.WebArea, area),
            Term.Number(CheckSymbol.ShearCoefficient, 1))
        : Nominal.Unknown(CheckClause.SolidBarShear, NotJudgedReason.NoShape);

    /// <summary>Cv2 of G2.2.</summary>
    private static CheckTerm Coefficient(
        SteelMember steel, double buckling, double slenderness, CheckFormula between, CheckFormula elastic)
    {
        double root = Math.Sqrt(buckling) * steel.StiffnessRoot;
        return slenderness <= 1.10 * root ? Term.Number(CheckSymbol.ShearCoefficient, 1)
            : slenderness <= 1.37 * root
                ? Term.Number(CheckSymbol.ShearCoefficient, 1.10 * root / slenderness, between)
            : Term.Number(CheckSymbol.ShearCoefficient, 1.51 * root * root / (slenderness * slenderness), elastic);
    }

    private static Nominal Strength(
        SteelMember steel, CheckClause clause, ImmutableArray<CheckTerm> ratio, CheckTerm area, CheckTerm coefficient)
    {
        double strength = 0.6 * steel.Yield * area.Value * coefficient.Value;
        return new Nominal(
            clause,
            strength,
            [
                .. coefficient.By is null ? [Term.Stress(CheckSymbol.Yield, steel.Yield)] : Aisc360Bending.SteelTerms(steel),
                .. ratio,
                area,
                coefficient,
                Term.Force(CheckSymbol.NominalShear, strength, CheckFormula.AiscShear),
            ]);
    }
}
