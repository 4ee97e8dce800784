namespace FieldCheck.Sheet.Document;

/// <summary>One span, left to right.</summary>
/// <remarks>Every cell is the text as typed, or null where nothing stands.</remarks>
public sealed record SpanEntry
{
    /// <summary>Its length; or else <see cref="To"/>.</summary>
    public string? Length { get; init; }

    /// <summary>Tape reading of its far end from the left end of the beam; or else <see cref="Length"/>.</summary>
    public string? To { get; init; }

    /// <summary>Name of its section.</summary>
    public string? Section { get; init; }

    /// <summary>Name of its material.</summary>
    public string? Material { get; init; }

    /// <summary>Length between lateral supports of its compression side, or "braced".</summary>
    public string? Unbraced { get; init; }
}
