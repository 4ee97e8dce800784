namespace FieldCheck.Sheet.Document;

/// <summary>Loads that move together over the beam.</summary>
/// <remarks>Every cell is the text as typed, or null where nothing stands.</remarks>
public sealed record RollingEntry
{
    /// <summary>Free text.</summary>
    public string? Label { get; init; }

    /// <summary>Its load case; null is live.</summary>
    public string? Case { get; init; }

    /// <summary>Its axles.</summary>
    public Rows<AxleEntry> Axles { get; init; } = [];

    /// <summary>Share added for impact.</summary>
    public string? Impact { get; init; }
}
