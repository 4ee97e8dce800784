using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Strength;

/// <summary>Lateral-torsional buckling by the general case, EN 1993-1-1 6.3.2.2, with the curves of Table 6.4.</summary>
internal static class En1993GeneralLateral
{
    internal static Resistance Of(Resistance blank, SteelMember steel, double length, double moment)
    {
        bool isOpen = steel.Shape is SectionShape.I or SectionShape.Channel;
        if (steel.Section is not { LateralInertia: double inertia, TorsionConstant: double torsion }
            || isOpen && steel.Section.WarpingConstant is null)
        {
            return blank with { Reason = NotJudgedReason.NoShape, Terms = [] };
        }

        double bending = Math.PI * Math.PI * steel.Modulus * inertia / (length * length);
        double warping = isOpen ? steel.Section.WarpingConstant!.Value : 0;
        double critical = bending * Math.Sqrt(warping / inertia + steel.ShearModulus * torsion / bending);
        double slenderness = Math.Sqrt(moment / critical);
        double imperfection = ImperfectionOf(steel.Shape);
        return blank with
        {
            Limit = BucklingCurve.Factor(slenderness, imperfection) * moment / En1993.BucklingFactor,
            LimitBy = CheckFormula.EnLateralMoment,
            Terms =
            [
                .. blank.Terms,
                Term.Stress(CheckSymbol.Modulus, steel.Modulus),
                Term.Length(CheckSymbol.UnbracedLength, length),
                Term.Number(CheckSymbol.MomentFactor, 1),
                Term.Inertia(CheckSymbol.LateralInertia, inertia),
                Term.Inertia(CheckSymbol.TorsionConstant, torsion),
                .. isOpen ? [Term.Length(CheckSymbol.WarpingRadius, Math.Sqrt(warping / inertia))] : ImmutableArray<CheckTerm>.Empty,
                Term.Stress(CheckSymbol.ShearModulus, steel.ShearModulus),
                Term.Moment(
                    CheckSymbol.CriticalMoment,
                    critical,
                    isOpen ? CheckFormula.CriticalMoment : CheckFormula.CriticalMomentWithoutWarping),
                Term.Number(CheckSymbol.LateralSlenderness, slenderness, CheckFormula.EnLateralSlenderness),
                .. BucklingCurve.Terms(slenderness, imperfection),
                Term.Number(CheckSymbol.BucklingPartialFactor, En1993.BucklingFactor),
            ],
        };
    }

    /// <summary>Table 6.4 with the factors of Table 6.3.</summary>
    private static double ImperfectionOf(SectionShape? shape) => shape is not SectionShape.I one ? BucklingCurve.D
        : (one.IsRolled, IsStocky: one.Depth <= 2 * one.FlangeWidth) switch
        {
            (true, true) => BucklingCurve.A,
            (true, false) => BucklingCurve.B,
            (false, true) => BucklingCurve.C,
            (false, false) => BucklingCurve.D,
        };
}
