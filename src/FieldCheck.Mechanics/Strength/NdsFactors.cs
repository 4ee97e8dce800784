using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Strength;

/// <summary>The factors that the NDS puts on reference values, each as given, looked up or 1.</summary>
/// <param name="section">The section.</param>
/// <param name="material">The material, with strengths of the NDS.</param>
internal sealed class NdsFactors(Section section, Material material)
{
    private const double Psi = 6894.757293168361;

    /// <summary>The wet service factor leaves bending alone up to this Fb·C_F (NDS Supplement, Table 4A).</summary>
    private const double WeakEnoughWhenWet = 1150 * Psi;

    private readonly TimberOutline? _outline = TimberOutline.Of(section);
    private readonly TimberStrengths _timber = material.Timber!;

    /// <summary>Fb' without C_L: Fb C_D C_M C_t C_F C_fu C_i C_r.</summary>
    internal FactorProduct Bending => FactorProduct.Of(
        (FactorKind.Duration, Given(FactorKind.Duration)),
        (FactorKind.WetService, IsWetLumber && _timber.Bending * (Size ?? 1) > WeakEnoughWhenWet * (1 + 1e-9) ? 0.85 : 1),
        (FactorKind.Temperature, GivenOrOne(FactorKind.Temperature)),
        (FactorKind.Size, Size),
        (FactorKind.FlatUse, FlatUse),
        (FactorKind.Incising, GivenOrOne(FactorKind.Incising)),
        (FactorKind.Repetitive, GivenOrOne(FactorKind.Repetitive)));

    /// <summary>Ft': Ft C_D C_M C_t C_F C_i.</summary>
    internal FactorProduct Tension => FactorProduct.Of(
        (FactorKind.Duration, Given(FactorKind.Duration)),
        (FactorKind.WetService, 1),
        (FactorKind.Temperature, GivenOrOne(FactorKind.Temperature)),
        (FactorKind.Size, TensionSize),
        (FactorKind.Incising, GivenOrOne(FactorKind.Incising)));

    /// <summary>Fv': Fv C_D C_M C_t C_i.</summary>
    internal FactorProduct Shear => FactorProduct.Of(
        (FactorKind.Duration, Given(FactorKind.Duration)),
        (FactorKind.WetService, IsWetLumber ? 0.97 : 1),
        (FactorKind.Temperature, GivenOrOne(FactorKind.Temperature)),
        (FactorKind.Incising, GivenOrOne(FactorKind.Incising)));

    /// <summary>Fc⊥' without C_b: Fc⊥ C_M C_t C_i; no C_D, and C_i is 1 across the grain (NDS 4.3.8).</summary>
    internal FactorProduct Bearing => FactorProduct.Of(
        (FactorKind.WetService, IsWet ? 0.67 : 1),
        (FactorKind.Temperature, GivenOrOne(FactorKind.Temperature)),
        (FactorKind.Incising, 1));

    /// <summary>Emin' [N/m²]: 0.9 when wet, 0.95 when incised, and C_t of strengths, which is at most that of moduli.</summary>
    internal double? StabilityModulus => _timber.MinimumModulus * ServiceModulus.Nds(material);

    private bool IsWet => Given(FactorKind.WetService) is > 0;

    /// <summary>Bending and shear of wet timbers 5 in by 5 in and larger stay as they are (NDS Supplement, Table 4D, from memory).</summary>
    private bool IsWetLumber => IsWet
        && (_timber.TakesSizeFactor || _outline is null || !LumberTables.IsTimber(_outline.Thickness));

    /// <summary>
    /// Given, or by the table for grades that take it, or by the depth of timbers; a round stick is the square of its area.
    /// </summary>
    private double? Size => Given(FactorKind.Size) is double given ? given
        : section.Shape is SectionShape.Round round ? _timber.TakesSizeFactor ? 1 : OfTimber(PieceSizes.SideOf(round), PieceSizes.SideOf(round))
        : !_timber.TakesSizeFactor ? _outline is null ? 1 : OfTimber(_outline.Thickness, _outline.Depth)
        : _outline is null ? null
        : LumberTables.SizeFactor(_outline.Thickness, _outline.Face);

    /// <summary>Of dimension lumber that of 2 and 3 in in bending, whatever the thickness; that given where no table has it.</summary>
    private double? TensionSize => !_timber.TakesSizeFactor || section.Shape is SectionShape.Round ? 1
        : _outline is null ? Given(FactorKind.Size)
        : LumberTables.TensionSizeFactor(_outline.Thickness, _outline.Face) ?? Given(FactorKind.Size);

    private double? FlatUse => Given(FactorKind.FlatUse) is double given ? given
        : !(_outline?.IsOnItsFace ?? section.IsFlat) || section.Shape is SectionShape.Round ? 1
        : _outline is null ? null
        : LumberTables.FlatUseFactor(_outline.Thickness, _outline.Face);

    private static double OfTimber(double thickness, double depth) => LumberTables.TimberSizeFactor(thickness, depth);

    private double? Given(FactorKind kind) => material.Factors.FirstOrDefault(factor => factor.Kind == kind)?.Value;

    private double GivenOrOne(FactorKind kind) => Given(kind) ?? 1;
}
