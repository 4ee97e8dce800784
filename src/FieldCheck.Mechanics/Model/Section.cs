namespace FieldCheck.Mechanics.Model;

/// <summary>Figures of a cross-section about the axis that the beam bends about; null where one is not known.</summary>
/// <remarks>
/// Shear areas are those that deform in shear: 5/6 of a rectangle, 9/10 of a solid circle (its form factor is 10/9),
/// half of a thin pipe, and of an I section bent upright its web over the whole depth.
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

    /// <summary>A solid rectangle.</summary>
    /// <param name="width">Across the load [m]; greater than zero.</param>
    /// <param name="depth">In the direction of the load [m]; greater than zero.</param>
    public static Section Rectangle(double width, double depth)
    {
        double area = Require.Positive(width) * Require.Positive(depth);
        return Symmetric(area, area * depth * depth / 12, depth, area * 5 / 6);
    }

    /// <summary>A solid circle.</summary>
    /// <param name="diameter">Its diameter [m]; greater than zero.</param>
    public static Section Circle(double diameter)
    {
        double area = Math.PI / 4 * Require.Positive(diameter) * diameter;
        return Symmetric(area, area * diameter * diameter / 16, diameter, area * 9 / 10);
    }

    /// <summary>A round pipe.</summary>
    /// <param name="diameter">Outer diameter [m]; greater than zero.</param>
    /// <param name="wall">Thickness of its wall [m]; greater than zero, less than half the diameter.</param>
    public static Section Pipe(double diameter, double wall)
    {
        double bore = Require.Positive(diameter - 2 * Require.Positive(wall));
        double area = Math.PI * wall * (diameter - wall);
        return Symmetric(area, area * (diameter * diameter + bore * bore) / 16, diameter, area / 2);
    }

    /// <summary>An I section of two equal flanges and a web, without fillets, bent upright.</summary>
    /// <param name="flangeWidth">Width of each flange [m]; greater than zero.</param>
    /// <param name="flangeThickness">Thickness of each flange [m]; greater than zero.</param>
    /// <param name="webThickness">Thickness of the web [m]; greater than zero, at most the flange's width.</param>
    /// <param name="depth">Depth over all [m]; greater than the two flanges.</param>
    public static Section UprightI(double flangeWidth, double flangeThickness, double webThickness, double depth)
    {
        double clear = Require.Positive(depth - 2 * Require.Positive(flangeThickness));
        double area = 2 * flangeWidth * flangeThickness + clear * Require.Positive(webThickness);
        double inertia = (flangeWidth * Math.Pow(depth, 3) - (flangeWidth - webThickness) * Math.Pow(clear, 3)) / 12;
        return Symmetric(area, inertia, depth, depth * webThickness);
    }

    /// <summary>The same I section bent about its weak axis; its flanges take the shear, each as a rectangle.</summary>
    /// <param name="flangeWidth">Width of each flange [m]; greater than zero.</param>
    /// <param name="flangeThickness">Thickness of each flange [m]; greater than zero.</param>
    /// <param name="webThickness">Thickness of the web [m]; greater than zero, at most the flange's width.</param>
    /// <param name="depth">Depth over all [m]; greater than the two flanges.</param>
    public static Section FlatI(double flangeWidth, double flangeThickness, double webThickness, double depth)
    {
        double clear = Require.Positive(depth - 2 * Require.Positive(flangeThickness));
        double flanges = 2 * Require.Positive(flangeWidth) * flangeThickness;
        double web = clear * Require.Positive(webThickness);
        double inertia = (flanges * flangeWidth * flangeWidth + web * webThickness * webThickness) / 12;
        return Symmetric(flanges + web, inertia, flangeWidth, flanges * 5 / 6);
    }

    private static Section Symmetric(double area, double inertia, double depth, double shearArea) => new()
    {
        Area = area,
        Inertia = inertia,
        SectionModulus = inertia / (depth / 2),
        Depth = depth,
        ShearArea = shearArea,
    };
}
