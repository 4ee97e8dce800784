namespace FieldCheck.Sheet.Document;

/// <summary>One support.</summary>
/// <remarks>Every cell is the text as typed, or null where nothing stands.</remarks>
public sealed record SupportEntry
{
    /// <summary>pin, roller, fixed, guide or spring.</summary>
    public string? Kind { get; init; }

    /// <summary>The joint it stands at, 0 for the left end; or else <see cref="At"/>.</summary>
    public string? Joint { get; init; }

    /// <summary>The place it stands at; or else <see cref="Joint"/>.</summary>
    public string? At { get; init; }

    /// <summary>Its label; null for the default letter.</summary>
    public string? Label { get; init; }

    /// <summary>both, up or down; null where not written.</summary>
    public string? Acts { get; init; }

    /// <summary>Slope of the surface a roller bears on.</summary>
    public string? Surface { get; init; }

    /// <summary>Stiffness of a spring.</summary>
    public string? Stiffness { get; init; }

    /// <summary>Stiffness of a rotational spring beside it.</summary>
    public string? RotationalStiffness { get; init; }

    /// <summary>Imposed movement.</summary>
    public string? Settlement { get; init; }

    /// <summary>Imposed turn.</summary>
    public string? Rotation { get; init; }

    /// <summary>Length of the bearing along the beam.</summary>
    public string? Bearing { get; init; }

    /// <summary>Allowable stress of the bearing.</summary>
    public string? BearingAllowable { get; init; }

    /// <summary>Size of the pad below, as "24 in x 24 in".</summary>
    public string? Pad { get; init; }

    /// <summary>Allowable pressure under the pad.</summary>
    public string? AllowablePressure { get; init; }
}
