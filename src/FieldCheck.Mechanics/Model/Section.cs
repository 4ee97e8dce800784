namespace FieldCheck.Mechanics.Model;

/// <summary>Figures of a cross-section about the axis that the beam bends about; null where one is not known.</summary>
/// <remarks>
/// Shear areas are those that deform in shear: 5/6 of a rectangle, 9/10 of a solid circle (its form factor is 10/9),
/// half of a pipe, of an I section or channel bent upright its web over the whole depth, of a rectangular tube its two
/// webs likewise; bent flat, 5/6 of the two flanges of an I section or channel.
/// Several plies are not joined: they bend and twist each on its own, so that laid flat they are no deeper than one.
/// </remarks>
public sealed record Section
{
    /// <summary>Area of the whole section [m²]; greater than zero.</summary>
    public double? Area { get; init; }

    /// <summary>Second moment of area about the axis of bending [m⁴]; greater than zero.</summary>
    public double? Inertia { get; init; }

    /// <summary>Section modulus, elastic, of the farther edge [m³]; greater than zero.</summary>
    public double? SectionModulus { get; init; }

    /// <summary>Depth over all, measured in the direction of the load [m]; greater than zero.</summary>
    public double? Depth { get; init; }

    /// <summary>Area that deforms in shear [m²]; greater than zero.</summary>
    public double? ShearArea { get; init; }

    /// <summary>Weight of the stick per length [N/m]; zero or greater.</summary>
    public double? WeightPerLength { get; init; }

    /// <summary>Section modulus, plastic [m³]; greater than zero.</summary>
    public double? PlasticModulus { get; init; }

    /// <summary>Shear force over the greatest shear stress, I·t/Q at the place of it [m²]; greater than zero.</summary>
    public double? PeakShearArea { get; init; }

    /// <summary>Second moment of area about the other axis, in which it bends sideways [m⁴]; greater than zero.</summary>
    public double? LateralInertia { get; init; }

    /// <summary>Torsion constant J [m⁴]; greater than zero.</summary>
    public double? TorsionConstant { get; init; }

    /// <summary>Warping constant [m⁶]; zero or greater.</summary>
    public double? WarpingConstant { get; init; }

    /// <summary>Its plates; null where it is given by figures alone.</summary>
    public SectionShape? Shape { get; init; }

    /// <summary>True: bent about its weak axis, as laid flat.</summary>
    public bool IsFlat { get; init; }

    /// <summary>Works out all its figures; its weight is left open.</summary>
    /// <param name="shape">Its plates.</param>
    /// <param name="flat">True: bent about its weak axis, as laid flat.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is not what <see cref="SectionShape"/> asks for.</exception>
    public static Section Of(SectionShape shape, bool flat = false)
    {
        ArgumentNullException.ThrowIfNull(shape);
        SectionFigures.Check(shape);
        return SectionFigures.Of(shape, flat) with { Shape = shape, IsFlat = flat };
    }
}
