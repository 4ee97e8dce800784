namespace FieldCheck.Mechanics.Model;

/// <summary>Figures of a material that stiffness and weight need; null where one is not known.</summary>
public sealed record Material
{
    /// <summary>Modulus of elasticity [N/m²]; greater than zero.</summary>
    public double? Modulus { get; init; }

    /// <summary>Shear modulus [N/m²]; greater than zero.</summary>
    public double? ShearModulus { get; init; }

    /// <summary>Weight per volume [N/m³]; zero or greater.</summary>
    public double? UnitWeight { get; init; }

    /// <summary>Yield stress [N/m²]; greater than zero.</summary>
    public double? Yield { get; init; }
}
