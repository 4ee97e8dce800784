namespace FieldCheck.Sheet.Document;

/// <summary>One named section, in exactly one of its forms.</summary>
/// <remarks>Every cell is the text as typed, or null where nothing stands.</remarks>
public sealed record SectionEntry
{
    /// <summary>Its name.</summary>
    public required string Name { get; init; }

    /// <summary>Name of a catalogue shape.</summary>
    public string? Shape { get; init; }

    /// <summary>Width of a rectangle, one ply's.</summary>
    public string? Width { get; init; }

    /// <summary>Depth over all.</summary>
    public string? Depth { get; init; }

    /// <summary>How many plies stand side by side.</summary>
    public string? Plies { get; init; }

    /// <summary>Diameter of a round section.</summary>
    public string? Diameter { get; init; }

    /// <summary>Wall of a pipe; null is solid.</summary>
    public string? Wall { get; init; }

    /// <summary>Width of the flanges.</summary>
    public string? FlangeWidth { get; init; }

    /// <summary>Thickness of the flanges.</summary>
    public string? FlangeThickness { get; init; }

    /// <summary>Thickness of the web.</summary>
    public string? WebThickness { get; init; }

    /// <summary>Second moment of area.</summary>
    public string? Inertia { get; init; }

    /// <summary>Area.</summary>
    public string? Area { get; init; }

    /// <summary>Section modulus.</summary>
    public string? SectionModulus { get; init; }

    /// <summary>Shear area.</summary>
    public string? ShearArea { get; init; }

    /// <summary>Weight per length.</summary>
    public string? Weight { get; init; }

    /// <summary>true: bent about its weak axis.</summary>
    public string? Flat { get; init; }
}
