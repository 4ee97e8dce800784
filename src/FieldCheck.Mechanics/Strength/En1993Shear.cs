using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Strength;

/// <summary>Resistance in shear, EN 1993-1-1 6.2.6, with η = 1.</summary>
internal static class En1993Shear
{
    internal static Resistance Of(SteelMember steel)
    {
        CheckClause clause = steel.Shape is SectionShape.Rectangle or SectionShape.Round
            ? CheckClause.En1993ElasticShear
            : CheckClause.En1993Shear;
        Resistance blank = En1993.Force(CheckKind.Shear, clause);
        double limit = 72 * En1993Class.YieldFactor(steel.Yield);
        double? ratio = ClearSlenderness(steel);
        ImmutableArray<CheckTerm> slenderness = ratio is double clear
            ? [Term.Number(CheckSymbol.WebSlenderness, clear), Term.Number(CheckSymbol.SlendernessLimit, limit)]
            : [];
        return ratio > limit ? blank with { Reason = NotJudgedReason.TooSlender, Terms = slenderness }
            : Area(steel) is not double area ? blank with { Reason = NotJudgedReason.NoShape }
            : blank with
            {
                Limit = area * steel.Yield / Math.Sqrt(3) / En1993.SectionFactor,
                Terms =
                [
                    .. slenderness,
                    Term.Stress(CheckSymbol.Yield, steel.Yield),
                    clause == CheckClause.En1993Shear
                        ? Term.Area(CheckSymbol.ShearArea, area)
                        : Term.Area(CheckSymbol.PeakShearArea, area),
                    Term.Number(CheckSymbol.PartialFactor, En1993.SectionFactor),
                ],
            };
    }

    /// <summary>Shear area by 6.2.6(3), and by the greatest elastic stress where that has none, in solid bars.</summary>
    internal static double? Area(SteelMember steel) => steel.Shape switch
    {
        SectionShape.I shape when steel.Section.IsFlat => 2 * shape.FlangeWidth * shape.FlangeThickness,
        SectionShape.Channel shape when steel.Section.IsFlat => 2 * shape.FlangeWidth * shape.FlangeThickness,
        SectionShape.I { IsRolled: true } shape => Rolled(steel.Section.Area, shape),
        SectionShape.I shape => ClearWeb(shape.Depth, shape.FlangeThickness) * shape.WebThickness,
        SectionShape.Channel shape => steel.Section.Area - 2 * shape.FlangeWidth * shape.FlangeThickness
            + shape.WebThickness * shape.FlangeThickness,
        SectionShape.RectangularTube tube => TubeSides.Of(tube, steel.Section.IsFlat) is var sides
            ? steel.Section.Area * sides.Depth / (sides.Width + sides.Depth)
            : null,
        SectionShape.RoundTube => 2 / Math.PI * steel.Section.Area,
        _ => steel.Section.PeakShearArea,
    };

    private static double? Rolled(double? area, SectionShape.I shape) => area is double whole
        ? Math.Max(
            whole - 2 * shape.FlangeWidth * shape.FlangeThickness
                + (shape.WebThickness + 2 * shape.RootRadius) * shape.FlangeThickness,
            ClearWeb(shape.Depth, shape.FlangeThickness) * shape.WebThickness)
        : null;

    private static double ClearWeb(double depth, double flange) => depth - 2 * flange;

    /// <summary>hw/tw of upright webs; null where there are none.</summary>
    private static double? ClearSlenderness(SteelMember steel) => steel.Shape switch
    {
        SectionShape.I shape when !steel.Section.IsFlat =>
            ClearWeb(shape.Depth, shape.FlangeThickness) / shape.WebThickness,
        SectionShape.Channel shape when !steel.Section.IsFlat =>
            ClearWeb(shape.Depth, shape.FlangeThickness) / shape.WebThickness,
        SectionShape.RectangularTube tube => TubeSides.Of(tube, steel.Section.IsFlat) is var sides
            ? ClearWeb(sides.Depth, sides.Wall) / sides.Wall
            : null,
        _ => null,
    };
}
