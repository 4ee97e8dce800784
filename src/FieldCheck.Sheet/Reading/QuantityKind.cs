namespace FieldCheck.Sheet.Reading;

/// <summary>The kinds of value that a cell can ask for.</summary>
public enum QuantityKind
{
    /// <summary>A length.</summary>
    Length,

    /// <summary>A force; a mass reads as its weight.</summary>
    Force,

    /// <summary>A force per length; a mass per length reads as its weight.</summary>
    ForcePerLength,

    /// <summary>A pressure or stress.</summary>
    Pressure,

    /// <summary>A moment.</summary>
    Moment,

    /// <summary>A spring's force per movement.</summary>
    Stiffness,

    /// <summary>A rotational spring's moment per turn.</summary>
    RotationalStiffness,

    /// <summary>An area.</summary>
    Area,

    /// <summary>A section modulus.</summary>
    SectionModulus,

    /// <summary>A second moment of area.</summary>
    Inertia,

    /// <summary>Weight or mass per volume; a mass reads as its weight.</summary>
    UnitWeight,

    /// <summary>An angle.</summary>
    Angle,

    /// <summary>A bare number.</summary>
    Number,

    /// <summary>A share, "30 %".</summary>
    Share,
}
