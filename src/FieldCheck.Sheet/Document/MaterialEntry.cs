namespace FieldCheck.Sheet.Document;

/// <summary>One named material, by grade or by its figures.</summary>
/// <remarks>Every cell is the text as typed, or null where nothing stands.</remarks>
public sealed record MaterialEntry
{
    /// <summary>Its name.</summary>
    public required string Name { get; init; }

    /// <summary>Name of a catalogue grade.</summary>
    public string? Grade { get; init; }

    /// <summary>Modulus of elasticity.</summary>
    public string? Modulus { get; init; }

    /// <summary>Shear modulus.</summary>
    public string? ShearModulus { get; init; }

    /// <summary>Mass or weight per volume.</summary>
    public string? Density { get; init; }

    /// <summary>Allowable bending stress, all safety inside.</summary>
    public string? AllowableBending { get; init; }

    /// <summary>Allowable shear stress, all safety inside.</summary>
    public string? AllowableShear { get; init; }

    /// <summary>Allowable bearing stress, all safety inside.</summary>
    public string? AllowableBearing { get; init; }

    /// <summary>Design bending strength, after all factors.</summary>
    public string? DesignBending { get; init; }

    /// <summary>Design shear strength, after all factors.</summary>
    public string? DesignShear { get; init; }

    /// <summary>Design bearing strength, after all factors.</summary>
    public string? DesignBearing { get; init; }

    /// <summary>Yield stress.</summary>
    public string? Yield { get; init; }

    /// <summary>Factors by name.</summary>
    public Rows<NamedFigure> Factors { get; init; } = [];

    /// <summary>Creep factor of lasting deflection.</summary>
    public string? Creep { get; init; }
}
