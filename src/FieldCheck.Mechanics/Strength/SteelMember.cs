using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Strength;

/// <summary>A member of steel with its plates, of which the rules for steel can speak.</summary>
/// <param name="Section">Its section.</param>
/// <param name="Shape">The outline of that as it stands upright.</param>
/// <param name="Yield">Yield stress [N/m²].</param>
/// <param name="Modulus">Modulus of elasticity [N/m²].</param>
/// <param name="ShearModulus">Shear modulus [N/m²].</param>
/// <param name="Lateral">How its compression side is held; null: not given.</param>
internal sealed record SteelMember(
    Section Section,
    SectionShape Shape,
    double Yield,
    double Modulus,
    double ShearModulus,
    LateralSupport? Lateral)
{
    /// <summary>Both standards are for a modulus near 200 kN/mm²: other metals buckle sooner and have rules of their own.</summary>
    private const double Softest = 190e9;

    private const double Stiffest = 220e9;

    /// <summary>Poisson's ratio of steel, 0.3 in EN 1993-1-1 3.2.6.</summary>
    private const double Poisson = 0.3;

    internal bool MayBuckleSideways => LateralBuckling.IsPossible(Shape, Section.IsFlat);

    /// <summary>Distance between lateral supports [m]; null where it is held all along, or where that is not given.</summary>
    internal double? UnbracedLength => (Lateral as LateralSupport.Unbraced)?.Length;

    /// <summary>Root of E over the yield stress.</summary>
    internal double StiffnessRoot => Math.Sqrt(Modulus / Yield);

    /// <summary>Why nothing can be said of a member; null where it can.</summary>
    internal static NotJudgedReason? Missing(Member member) => member switch
    {
        { Section: null } => NotJudgedReason.NoSection,
        { Material: null } => NotJudgedReason.NoMaterial,
        { Material.Yield: null } => NotJudgedReason.NoYield,
        { Material.Modulus: null } => NotJudgedReason.NoModulus,
        { Material.Modulus: < Softest or > Stiffest } => NotJudgedReason.MaterialNotInRules,
        { Section.Shape: null } => NotJudgedReason.NoShape,
        _ => null,
    };

    /// <returns>Null where <see cref="Missing"/> names a reason.</returns>
    internal static SteelMember? Of(Member member) =>
        Missing(member) is null
            && member is
            {
                Section: { Shape: SectionShape shape } section,
                Material: { Yield: double yield, Modulus: double modulus } material,
            }
            ? new SteelMember(
                section,
                shape,
                yield,
                modulus,
                material.ShearModulus ?? modulus / (2 * (1 + Poisson)),
                member.Lateral)
            : null;
}
