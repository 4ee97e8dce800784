namespace FieldCheck.Sheet.Document;

/// <summary>Weight of the sections as a load.</summary>
/// <remarks>Every cell is the text as typed, or null where nothing stands.</remarks>
public sealed record SelfWeightEntry
{
    /// <summary>The load case it belongs to.</summary>
    public string? Case { get; init; }
}
