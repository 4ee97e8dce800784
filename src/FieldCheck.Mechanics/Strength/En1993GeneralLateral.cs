using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Strength;

/// <summary>Lateral-torsional buckling by the general case, EN 1993-1-1 6.3.2.2, with curve d for shapes that are no I.</summary>
internal static class En1993GeneralLateral
{
    internal static Resistance Of(Resistance blank, SteelMember steel, double length, double moment)
    {
        bool isOpen = steel.Shape is SectionShape.Channel;
        if (steel.Section is not { LateralInertia: double inertia, TorsionConstant: double torsion }
            || isOpen && steel.Section.WarpingConstant is null)
        {
            return blank with { Reason = NotJudgedReason.NoShape };
        }

        double bending = Math.PI * Math.PI * steel.Modulus * inertia / (length * length);
        double warping = isOpen ? steel.Section.WarpingConstant!.Value : 0;
        double critical = bending * Math.Sqrt(warping / inertia + steel.ShearModulus * torsion / bending);
        double slenderness = Math.Sqrt(moment / critical);
        double factor = BucklingCurve.Factor(slenderness, BucklingCurve.D);
        return blank with
        {
            Limit = factor * moment / En1993.BucklingFactor,
            Terms =
            [
                Term.Moment(CheckSymbol.BendingResistance, moment),
                Term.Stress(CheckSymbol.Modulus, steel.Modulus),
                Term.Length(CheckSymbol.UnbracedLength, length),
                Term.Number(CheckSymbol.MomentFactor, 1),
                Term.Inertia(CheckSymbol.LateralInertia, inertia),
                Term.Inertia(CheckSymbol.TorsionConstant, torsion),
                Term.Stress(CheckSymbol.ShearModulus, steel.ShearModulus),
                Term.Moment(CheckSymbol.CriticalMoment, critical),
                Term.Number(CheckSymbol.LateralSlenderness, slenderness),
                Term.Number(CheckSymbol.Imperfection, BucklingCurve.D),
                Term.Number(CheckSymbol.BucklingFactor, factor),
                Term.Number(CheckSymbol.PartialFactor, En1993.BucklingFactor),
            ],
        };
    }
}
