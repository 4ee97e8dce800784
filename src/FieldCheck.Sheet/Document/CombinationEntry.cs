namespace FieldCheck.Sheet.Document;

/// <summary>One combination of cases.</summary>
/// <remarks>Every cell is the text as typed, or null where nothing stands.</remarks>
public sealed record CombinationEntry
{
    /// <summary>Its name.</summary>
    public string? Name { get; init; }

    /// <summary>service or factored; null is service.</summary>
    public string? Basis { get; init; }

    /// <summary>Factor of each case it counts.</summary>
    public Rows<NamedFigure> Factors { get; init; } = [];
}
