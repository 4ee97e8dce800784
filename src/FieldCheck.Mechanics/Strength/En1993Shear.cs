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
        double factor = En1993Class.YieldFactor(steel.Yield);
        double limit = 72 * factor;
        CheckTerm? ratio = ClearSlenderness(steel);
        CheckTerm yield = Term.Stress(CheckSymbol.Yield, steel.Yield);
        ImmutableArray<CheckTerm> slenderness = ratio is null
            ? [yield]
            :
            [
                yield,
                ratio,
                Term.Number(CheckSymbol.YieldFactor, factor, CheckFormula.EnYieldFactor),
                Term.Number(CheckSymbol.SlendernessLimit, limit, CheckFormula.EnWebLimit),
            ];
        return ratio?.Value > limit ? blank with { Reason = NotJudgedReason.TooSlender, Terms = slenderness }
            : Area(steel) is not CheckTerm area ? blank with { Reason = NotJudgedReason.NoShape }
            : blank with
            {
                Limit = area.Value * steel.Yield / Math.Sqrt(3) / En1993.SectionFactor,
                LimitBy = clause == CheckClause.En1993Shear ? CheckFormula.EnShear : CheckFormula.EnPeakShear,
                Terms =
                [
                    .. slenderness,
                    area,
                    Term.Number(CheckSymbol.PartialFactor, En1993.SectionFactor),
                ],
            };
    }

    /// <summary>Shear area by 6.2.6(3), and by the greatest elastic stress where that has none, in solid bars.</summary>
    internal static CheckTerm? Area(SteelMember steel) => steel.Shape switch
    {
        SectionShape.I shape when steel.Section.IsFlat =>
            Of(2 * shape.FlangeWidth * shape.FlangeThickness, CheckFormula.BothFlanges),
        SectionShape.Channel shape when steel.Section.IsFlat =>
            Of(2 * shape.FlangeWidth * shape.FlangeThickness, CheckFormula.BothFlanges),
        SectionShape.I { IsRolled: true } shape => Of(Rolled(steel.Section.Area, shape), CheckFormula.EnRolledShearArea),
        SectionShape.I shape => Of(
            ClearWeb(shape.Depth, shape.FlangeThickness) * shape.WebThickness, CheckFormula.EnBuiltShearArea),
        SectionShape.Channel shape => Of(
            steel.Section.Area - 2 * shape.FlangeWidth * shape.FlangeThickness + shape.WebThickness * shape.FlangeThickness,
            CheckFormula.EnChannelShearArea),
        SectionShape.RectangularTube tube => TubeSides.Of(tube, steel.Section.IsFlat) is var sides
            ? Of(steel.Section.Area * sides.Depth / (sides.Width + sides.Depth), CheckFormula.EnTubeShearArea)
            : null,
        SectionShape.RoundTube => Of(2 / Math.PI * steel.Section.Area, CheckFormula.EnRoundShearArea),
        _ => steel.Section.PeakShearArea is double area ? Term.Area(CheckSymbol.PeakShearArea, area) : null,
    };

    private static CheckTerm? Of(double? area, CheckFormula by) =>
        area is double known ? Term.Area(CheckSymbol.ShearArea, known, by) : null;

    private static double? Rolled(double? area, SectionShape.I shape) => area is double whole
        ? Math.Max(
            whole - 2 * shape.FlangeWidth * shape.FlangeThickness
                + (shape.WebThickness + 2 * shape.RootRadius) * shape.FlangeThickness,
            ClearWeb(shape.Depth, shape.FlangeThickness) * shape.WebThickness)
        : null;

    private static double ClearWeb(double depth, double flange) => depth - 2 * flange;

    /// <summary>hw/tw of upright webs; null where there are none.</summary>
    private static CheckTerm? ClearSlenderness(SteelMember steel) => steel.Shape switch
    {
        SectionShape.I shape when !steel.Section.IsFlat => Web(shape.Depth, shape.FlangeThickness, shape.WebThickness),
        SectionShape.Channel shape when !steel.Section.IsFlat => Web(shape.Depth, shape.FlangeThickness, shape.WebThickness),
        SectionShape.RectangularTube tube => TubeSides.Of(tube, steel.Section.IsFlat) is var sides
            ? Term.Number(
                CheckSymbol.WebSlenderness, ClearWeb(sides.Depth, sides.Wall) / sides.Wall, CheckFormula.EnTubeWebSlenderness)
            : null,
        _ => null,
    };

    private static CheckTerm Web(double depth, double flange, double thickness) =>
        Term.Number(CheckSymbol.WebSlenderness, ClearWeb(depth, flange) / thickness, CheckFormula.EnWebSlenderness);
}
