using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Strength;

/// <summary>The factors that EN 1995-1-1 puts on characteristic values, each as given, worked out or 1.</summary>
/// <param name="section">The section.</param>
/// <param name="material">The material, with characteristic strengths.</param>
internal sealed class En1995Factors(Section section, Material material)
{
    private const double SolidDepth = 0.150;
    private const double GlulamDepth = 0.600;

    /// <summary>fm,d without k_crit: k_mod k_h k_sys fm,k / γ_M.</summary>
    internal FactorProduct Bending => FactorProduct.Of(
        (FactorKind.Modification, Given(FactorKind.Modification)),
        (FactorKind.PartialFactor, Given(FactorKind.PartialFactor)),
        (FactorKind.Depth, Given(FactorKind.Depth) ?? DepthFactor),
        (FactorKind.System, Given(FactorKind.System) ?? 1));

    /// <summary>ft,0,d: k_mod k_h k_sys ft,0,k / γ_M, with k_h of the greater size.</summary>
    internal FactorProduct Tension => FactorProduct.Of(
        (FactorKind.Modification, Given(FactorKind.Modification)),
        (FactorKind.PartialFactor, Given(FactorKind.PartialFactor)),
        (FactorKind.Depth, TimberOutline.Of(section) is TimberOutline outline ? DepthFactorOf(outline.Face) : 1),
        (FactorKind.System, Given(FactorKind.System) ?? 1));

    /// <summary>fv,d: k_mod k_sys fv,k / γ_M.</summary>
    internal FactorProduct Shear => FactorProduct.Of(
        (FactorKind.Modification, Given(FactorKind.Modification)),
        (FactorKind.PartialFactor, Given(FactorKind.PartialFactor)),
        (FactorKind.System, Given(FactorKind.System) ?? 1));

    /// <summary>k_c,90 fc,90,d: k_mod k_sys k_c,90 fc,90,k / γ_M.</summary>
    internal FactorProduct Bearing => FactorProduct.Of(
        (FactorKind.Modification, Given(FactorKind.Modification)),
        (FactorKind.PartialFactor, Given(FactorKind.PartialFactor)),
        (FactorKind.System, Given(FactorKind.System) ?? 1),
        (FactorKind.CrossGrain, Given(FactorKind.CrossGrain) ?? 1));

    /// <summary>Share of the width that cracks leave in shear, k_cr: given, or the recommended value [–].</summary>
    internal static double CrackShare(Material? material) =>
        material?.Factors.FirstOrDefault(factor => factor.Kind == FactorKind.Cracks)?.Value ?? 0.67;

    /// <summary>k_h of 3.2 and 3.3 [–] for rectangles; 1, which is safe, where the depth is not known.</summary>
    internal double DepthFactor =>
        section.Shape is SectionShape.Round ? 1
        : (TimberOutline.Of(section)?.Depth ?? section.Depth) is double depth ? DepthFactorOf(depth)
        : 1;

    private double DepthFactorOf(double size) => material.Timber!.IsGlulam
        ? Math.Clamp(Math.Pow(GlulamDepth / size, 0.1), 1, 1.1)
        : Math.Clamp(Math.Pow(SolidDepth / size, 0.2), 1, 1.3);

    private double? Given(FactorKind kind) => material.Factors.FirstOrDefault(factor => factor.Kind == kind)?.Value;
}
