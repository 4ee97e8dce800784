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
            steel, shape.FlangeWidth, shape.FlangeThickness, shape.FlangeWidth / (2 * shape.FlangeThickness)),
        SectionShape.Channel shape when steel.Section.IsFlat => Flanges(
            steel, shape.FlangeWidth, shape.FlangeThickness, shape.FlangeWidth / shape.FlangeThickness),
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
        double coefficient = isSurest || slenderness <= limit ? 1 : limit / slenderness;
        ImmutableArray<CheckTerm> ratio = [Term.Number(CheckSymbol.WebSlenderness, slenderness)];
        return slenderness > ThinnestWeb
            ? Nominal.Unknown(CheckClause.Aisc360G2, NotJudgedReason.TooSlender, ratio)
            : Strength(steel, CheckClause.Aisc360G2, ratio, area, coefficient) with
            {
                Factors = isSurest ? AiscFactors.Surest : AiscFactors.Usual,
            };
    }

    /// <summary>G4.</summary>
    private static Nominal Tube(SteelMember steel, TubeSides sides) => Strength(
        steel,
        CheckClause.Aisc360G4,
        [Term.Number(CheckSymbol.WebSlenderness, sides.WebSlenderness)],
        2 * sides.ShearHeight * sides.Wall,
        Coefficient(steel, TubeBuckling, sides.WebSlenderness));

    /// <summary>G6: both flanges carry it.</summary>
    private static Nominal Flanges(SteelMember steel, double width, double thickness, double slenderness) => Strength(
        steel,
        CheckClause.Aisc360G6,
        [Term.Number(CheckSymbol.FlangeSlenderness, slenderness)],
        2 * width * thickness,
        Coefficient(steel, OutstandBuckling, slenderness));

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
                Term.Number(CheckSymbol.WallSlenderness, wall),
                Term.Stress(CheckSymbol.CriticalStress, stress),
                Term.Area(CheckSymbol.WebArea, area / 2),
                Term.Force(CheckSymbol.NominalShear, stress * area / 2),
            ]);
    }

    private static Nominal Bar(SteelMember steel) => steel.Section.PeakShearArea is double area
        ? Strength(steel, CheckClause.SolidBarShear, [], area, 1)
        : Nominal.Unknown(CheckClause.SolidBarShear, NotJudgedReason.NoShape);

    /// <summary>Cv2 of G2.2.</summary>
    private static double Coefficient(SteelMember steel, double buckling, double slenderness)
    {
        double root = Math.Sqrt(buckling) * steel.StiffnessRoot;
        return slenderness <= 1.10 * root ? 1
            : slenderness <= 1.37 * root ? 1.10 * root / slenderness
            : 1.51 * root * root / (slenderness * slenderness);
    }

    private static Nominal Strength(
        SteelMember steel, CheckClause clause, ImmutableArray<CheckTerm> ratio, double area, double coefficient)
    {
        double strength = 0.6 * steel.Yield * area * coefficient;
        return new Nominal(
            clause,
            strength,
            [
                .. ratio,
                Term.Stress(CheckSymbol.Yield, steel.Yield),
                Term.Area(CheckSymbol.WebArea, area),
                Term.Number(CheckSymbol.ShearCoefficient, coefficient),
                Term.Force(CheckSymbol.NominalShear, strength),
            ]);
    }
}
