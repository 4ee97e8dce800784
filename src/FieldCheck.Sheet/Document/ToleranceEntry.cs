namespace FieldCheck.Sheet.Document;

/// <summary>How well places and loads are known.</summary>
/// <remarks>Every cell is the text as typed, or null where nothing stands.</remarks>
public sealed record ToleranceEntry
{
    /// <summary>Every measured place and length, plus or minus.</summary>
    public string? Position { get; init; }

    /// <summary>Every load's size, as share or force, plus or minus.</summary>
    public string? Load { get; init; }
}
