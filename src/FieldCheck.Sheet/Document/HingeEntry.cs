namespace FieldCheck.Sheet.Document;

/// <summary>One internal moment release.</summary>
/// <remarks>Every cell is the text as typed, or null where nothing stands.</remarks>
public sealed record HingeEntry
{
    /// <summary>The joint it stands at; or else <see cref="At"/>.</summary>
    public string? Joint { get; init; }

    /// <summary>The place it stands at; or else <see cref="Joint"/>.</summary>
    public string? At { get; init; }
}
