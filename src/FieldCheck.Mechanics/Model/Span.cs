namespace FieldCheck.Mechanics.Model;

/// <summary>One stretch of the beam between two neighbouring joints: straight and of one section.</summary>
/// <param name="Length">Distance between the two joints [m]; greater than zero.</param>
/// <param name="FlexuralRigidity">E·I about the axis of bending [N·m²]; greater than zero.</param>
/// <param name="AxialRigidity">E·A [N]; greater than zero.</param>
/// <param name="ShearRigidity">
/// G·A over the shear area [N]; greater than zero, or null: shear does not deform the beam.
/// </param>
/// <exception cref="ArgumentOutOfRangeException">A value is not finite, or breaks the bound given above.</exception>
public sealed record Span(double Length, double FlexuralRigidity, double AxialRigidity, double? ShearRigidity = null)
{
    /// <summary>Distance between the two joints [m].</summary>
    public double Length { get; } = Require.Positive(Length);

    /// <summary>E·I about the axis of bending [N·m²].</summary>
    public double FlexuralRigidity { get; } = Require.Positive(FlexuralRigidity);

    /// <summary>E·A [N].</summary>
    public double AxialRigidity { get; } = Require.Positive(AxialRigidity);

    /// <summary>G·A over the shear area [N], or null: shear does not deform the beam.</summary>
    public double? ShearRigidity { get; } = ShearRigidity is double given ? Require.Positive(given) : null;
}
