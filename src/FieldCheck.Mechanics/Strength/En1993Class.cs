using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Strength;

/// <summary>The class of a section in bending, EN 1993-1-1 Table 5.2.</summary>
/// <param name="Number">1 and 2: plastic; 3: elastic; 4: buckles locally before it yields.</param>
/// <param name="Terms">The work to it.</param>
internal readonly record struct En1993Class(int Number, ImmutableArray<CheckTerm> Terms)
{
    internal static En1993Class Of(SteelMember steel)
    {
        double factor = YieldFactor(steel.Yield);
        bool isFlat = steel.Section.IsFlat;
        (int number, ImmutableArray<CheckTerm> ratios) = steel.Shape switch
        {
            SectionShape.I shape => Greatest(
                Outstand(OutstandOf(shape), factor, CheckFormula.EnOutstand),
                isFlat ? Unpressed : Bent(WebPlate.SlendernessOf(shape), factor, CheckFormula.WebBetweenFillets)),
            SectionShape.Channel shape => Greatest(
                Outstand(
                    (shape.FlangeWidth - shape.WebThickness) / shape.FlangeThickness, factor, CheckFormula.EnChannelOutstand),
                isFlat
                    ? Pressed(
                        CheckSymbol.WebSlenderness, WebPlate.SlendernessOf(shape), factor, CheckFormula.WebBetweenFillets)
                    : Bent(WebPlate.SlendernessOf(shape), factor, CheckFormula.WebBetweenFillets)),
            SectionShape.RectangularTube tube => TubeSides.Of(tube, isFlat) is var sides
                ? Greatest(
                    Pressed(CheckSymbol.FlangeSlenderness, sides.FlangeSlenderness, factor, CheckFormula.TubeFlange),
                    Bent(sides.WebSlenderness, factor, CheckFormula.TubeWeb))
                : default,
            SectionShape.RoundTube tube => Round(tube.Diameter / tube.Wall, factor * factor),
            _ => (1, []),
        };
        return new En1993Class(
            number,
            [
                Term.Stress(CheckSymbol.Yield, steel.Yield),
                Term.Number(CheckSymbol.YieldFactor, factor, CheckFormula.EnYieldFactor),
                .. ratios,
                Term.Number(CheckSymbol.SectionClass, number),
            ]);
    }

    internal static double YieldFactor(double yield) => Math.Sqrt(235e6 / yield);

    private static (int Number, ImmutableArray<CheckTerm> Ratio) Unpressed => (1, []);

    private static double OutstandOf(SectionShape.I shape) =>
        ((shape.FlangeWidth - shape.WebThickness) / 2 - shape.RootRadius) / shape.FlangeThickness;

    private static (int Number, ImmutableArray<CheckTerm> Ratio) Outstand(double ratio, double factor, CheckFormula by) =>
        Part(Term.Number(CheckSymbol.FlangeSlenderness, ratio, by), 9 * factor, 10 * factor, 14 * factor);

    private static (int Number, ImmutableArray<CheckTerm> Ratio) Pressed(
        CheckSymbol symbol, double ratio, double factor, CheckFormula by) =>
        Part(Term.Number(symbol, ratio, by), 33 * factor, 38 * factor, 42 * factor);

    private static (int Number, ImmutableArray<CheckTerm> Ratio) Bent(double ratio, double factor, CheckFormula by) =>
        Part(Term.Number(CheckSymbol.WebSlenderness, ratio, by), 72 * factor, 83 * factor, 124 * factor);

    private static (int Number, ImmutableArray<CheckTerm> Ratio) Round(double ratio, double factor) =>
        Part(Term.Number(CheckSymbol.WallSlenderness, ratio), 50 * factor, 70 * factor, 90 * factor);

    private static (int Number, ImmutableArray<CheckTerm> Ratio) Part(
        CheckTerm ratio, double first, double second, double third) =>
        (ratio.Value <= first ? 1 : ratio.Value <= second ? 2 : ratio.Value <= third ? 3 : 4, [ratio]);

    private static (int Number, ImmutableArray<CheckTerm> Ratios) Greatest(
        (int Number, ImmutableArray<CheckTerm> Ratio) one, (int Number, ImmutableArray<CheckTerm> Ratio) other) =>
        (Math.Max(one.Number, other.Number), [.. one.Ratio, .. other.Ratio]);
}
