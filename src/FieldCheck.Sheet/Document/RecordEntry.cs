namespace FieldCheck.Sheet.Document;

/// <summary>Free text for the check record.</summary>
/// <remarks>Every cell is the text as typed, or null where nothing stands.</remarks>
public sealed record RecordEntry
{
    /// <summary>The job.</summary>
    public string? Job { get; init; }

    /// <summary>Where it is.</summary>
    public string? Location { get; init; }

    /// <summary>Who prepared the check.</summary>
    public string? PreparedBy { get; init; }

    /// <summary>Whom it is for.</summary>
    public string? PreparedFor { get; init; }

    /// <summary>Who checked it.</summary>
    public string? CheckedBy { get; init; }

    /// <summary>Its date.</summary>
    public string? Date { get; init; }

    /// <summary>Its check category.</summary>
    public string? Category { get; init; }
}
