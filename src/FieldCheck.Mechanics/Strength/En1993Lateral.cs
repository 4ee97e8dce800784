using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Strength;

/// <summary>
/// Lateral-torsional buckling under an even moment: EN 1993-1-1 6.3.2.2, or for an I 6.3.2.4, where that gives more.
/// </summary>
internal static class En1993Lateral
{
    /// <summary>λc0, as recommended.</summary>
    private const double Plateau = 0.5;

    /// <summary>kfl, as recommended.</summary>
    private const double MethodFactor = 1.10;

    internal static Resistance Of(SteelMember steel, Resistance bending)
    {
        Resistance blank = En1993.Moment(
            CheckKind.LateralStability,
            steel.Shape is SectionShape.I ? CheckClause.En1993SimplifiedLateral : CheckClause.En1993GeneralLateral);
        if (steel.UnbracedLength is not double length)
        {
            return blank with { Reason = NotJudgedReason.NoLateralSupport };
        }

        if (bending.Limit is not double moment)
        {
            return blank with { Reason = bending.Reason };
        }

        blank = blank with
        {
            Terms = [.. bending.Terms, Term.Moment(CheckSymbol.BendingResistance, moment, bending.LimitBy)],
        };
        Resistance general = En1993GeneralLateral.Of(
            blank with { Clause = CheckClause.En1993GeneralLateral }, steel, length, moment);
        if (steel.Shape is not SectionShape.I shape)
        {
            return general;
        }

        // Both are allowed: held closely the flange as a strut gives more, held rarely the torsional stiffness that it leaves out does.
        Resistance flange = Flange(blank, steel, shape, length, moment);
        return general.Limit is not double limit || flange.Limit >= limit ? flange : general;
    }

    /// <summary>The compression flange with a third of the compressed web as a strut.</summary>
    private static Resistance Flange(
        Resistance blank, SteelMember steel, SectionShape.I shape, double length, double moment)
    {
        bool isSquat = shape.Depth / shape.FlangeThickness <= 44 * En1993Class.YieldFactor(steel.Yield);
        if (!shape.IsRolled && !isSquat)
        {
            return blank with { Reason = NotJudgedReason.TooSlender };
        }

        double web = (shape.Depth - 2 * shape.FlangeThickness) / 6;
        double area = shape.FlangeWidth * shape.FlangeThickness + web * shape.WebThickness;
        double inertia =
            (shape.FlangeThickness * Math.Pow(shape.FlangeWidth, 3) + web * Math.Pow(shape.WebThickness, 3)) / 12;
        double radius = Math.Sqrt(inertia / area);
        double slenderness = length / (radius * Math.PI * steel.StiffnessRoot);
        double imperfection = shape.IsRolled ? BucklingCurve.C : BucklingCurve.D;
        double factor = BucklingCurve.Factor(slenderness, imperfection);
        double share = Math.Min(1, Math.Max(Plateau / slenderness, MethodFactor * factor));
        return blank with
        {
            Limit = share * moment / En1993.BucklingFactor,
            LimitBy = CheckFormula.EnFlangeMoment,
            Terms =
            [
                .. blank.Terms,
                Term.Stress(CheckSymbol.Modulus, steel.Modulus),
                Term.Length(CheckSymbol.UnbracedLength, length),
                Term.Number(CheckSymbol.MomentFactor, 1),
                Term.Length(CheckSymbol.FlangeRadius, radius, CheckFormula.EnFlangeRadius),
                Term.Number(CheckSymbol.LateralSlenderness, slenderness, CheckFormula.EnFlangeSlenderness),
                Term.Number(CheckSymbol.SlendernessLimit, Plateau),
                .. BucklingCurve.Terms(slenderness, imperfection),
                Term.Number(CheckSymbol.FlangeMethodFactor, MethodFactor),
                Term.Number(CheckSymbol.BucklingPartialFactor, En1993.BucklingFactor),
            ],
        };
    }
}
