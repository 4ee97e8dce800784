using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Strength;

/// <summary>Lateral-torsional buckling under an even moment (Cb = 1), AISC 360-16 F2.2, F7.4 and F11.2.</summary>
internal static class Aisc360Lateral
{
    internal static Nominal Of(SteelMember steel)
    {
        CheckClause clause = steel.Shape switch
        {
            SectionShape.RectangularTube => CheckClause.Aisc360F7Lateral,
            SectionShape.Rectangle => CheckClause.Aisc360F11Lateral,
            _ => CheckClause.Aisc360F2Lateral,
        };
        if (steel.UnbracedLength is not double length)
        {
            return Nominal.Unknown(clause, NotJudgedReason.NoLateralSupport);
        }

        if (Aisc360Bending.Of(steel).Reason is NotJudgedReason reason)
        {
            return Nominal.Unknown(clause, reason);
        }

        return steel is
        {
            Section:
            {
                PlasticModulus: double plastic,
                SectionModulus: double elastic,
                Area: double area,
                LateralInertia: double inertia,
                TorsionConstant: double torsion,
            } section,
        }
            ? steel.Shape switch
            {
                SectionShape.I shape => Aisc360OpenLateral.Of(
                    steel,
                    new LateralFigures(length, new Moduli(plastic, elastic), area, inertia, torsion),
                    shape.Depth - shape.FlangeThickness,
                    section.WarpingConstant,
                    isChannel: false),
                SectionShape.Channel shape => Aisc360OpenLateral.Of(
                    steel,
                    new LateralFigures(length, new Moduli(plastic, elastic), area, inertia, torsion),
                    shape.Depth - shape.FlangeThickness,
                    section.WarpingConstant,
                    isChannel: true),
                SectionShape.RectangularTube => Aisc360TubeLateral.Of(
                    steel, new LateralFigures(length, new Moduli(plastic, elastic), area, inertia, torsion)),
                SectionShape.Rectangle bar => Aisc360BarLateral.Of(
                    steel, new Moduli(plastic, elastic), length, BarSides.Of(bar, section.IsFlat)),
                _ => Nominal.Unknown(clause, NotJudgedReason.ShapeNotInRules),
            }
            : Nominal.Unknown(clause, NotJudgedReason.NoShape);
    }
}
