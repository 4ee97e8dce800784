namespace FieldCheck.Sheet.Document;

/// <summary>A case whose loads may stand or not stand bay by bay.</summary>
/// <remarks>Every cell is the text as typed, or null where nothing stands.</remarks>
public sealed record PatternEntry
{
    /// <summary>The case.</summary>
    public string? Case { get; init; }
}
