namespace FieldCheck.Sheet.Document;

/// <summary>One axle of a rolling load.</summary>
/// <remarks>Every cell is the text as typed, or null where nothing stands.</remarks>
public sealed record AxleEntry
{
    /// <summary>Distance behind the first axle.</summary>
    public string? Offset { get; init; }

    /// <summary>Its force.</summary>
    public string? Force { get; init; }
}
