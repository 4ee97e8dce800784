namespace FieldCheck.Sheet.Document;

/// <summary>One load.</summary>
/// <remarks>Every cell is the text as typed, or null where nothing stands.</remarks>
public sealed record LoadEntry
{
    /// <summary>point, distributed or couple.</summary>
    public string? Kind { get; init; }

    /// <summary>Free text.</summary>
    public string? Label { get; init; }

    /// <summary>Its load case; null is live.</summary>
    public string? Case { get; init; }

    /// <summary>Place of a point load or couple.</summary>
    public string? At { get; init; }

    /// <summary>Size of a point load.</summary>
    public string? Force { get; init; }

    /// <summary>How a point load leans from straight down, positive pushing toward the right end.</summary>
    public string? Angle { get; init; }

    /// <summary>Left end of a distributed load; null is the left end of the beam.</summary>
    public string? From { get; init; }

    /// <summary>Right end of a distributed load; null is the right end of the beam.</summary>
    public string? To { get; init; }

    /// <summary>Force per length of a distributed load.</summary>
    public string? Intensity { get; init; }

    /// <summary>Force per length at its right end, where it varies.</summary>
    public string? IntensityEnd { get; init; }

    /// <summary>Pressure on the tributary width.</summary>
    public string? Pressure { get; init; }

    /// <summary>Pressure at its right end, where it varies.</summary>
    public string? PressureEnd { get; init; }

    /// <summary>Tributary width.</summary>
    public string? Width { get; init; }

    /// <summary>Total force, spread evenly.</summary>
    public string? Total { get; init; }

    /// <summary>true: it acts along the beam.</summary>
    public string? Axial { get; init; }

    /// <summary>Size of a couple.</summary>
    public string? Moment { get; init; }

    /// <summary>left or right: the part a couple at a hinge turns.</summary>
    public string? Side { get; init; }
}
