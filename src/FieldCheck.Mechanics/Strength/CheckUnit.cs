namespace FieldCheck.Mechanics.Strength;

/// <summary>What the demand and the limit of a check are.</summary>
public enum CheckUnit
{
    /// <summary>A stress or a pressure [N/m²].</summary>
    Stress,

    /// <summary>A force [N].</summary>
    Force,

    /// <summary>A moment [N·m].</summary>
    Moment,

    /// <summary>A length [m].</summary>
    Length,

    /// <summary>A second moment of area [m⁴].</summary>
    Inertia,

    /// <summary>A section modulus [m³].</summary>
    SectionModulus,

    /// <summary>An area [m²].</summary>
    Area,

    /// <summary>A plain number [–].</summary>
    Number,
}
