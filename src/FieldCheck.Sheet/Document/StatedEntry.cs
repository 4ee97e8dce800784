namespace FieldCheck.Sheet.Document;

/// <summary>What a supplier or drawing states of one support.</summary>
/// <remarks>Every cell is the text as typed, or null where nothing stands.</remarks>
public sealed record StatedEntry
{
    /// <summary>Label of the support.</summary>
    public string? Support { get; init; }

    /// <summary>Stated vertical reaction.</summary>
    public string? Vertical { get; init; }

    /// <summary>Stated horizontal reaction.</summary>
    public string? Horizontal { get; init; }

    /// <summary>Stated moment.</summary>
    public string? Moment { get; init; }

    /// <summary>Combination it is stated for.</summary>
    public string? Combination { get; init; }

    /// <summary>Case it is stated for.</summary>
    public string? Case { get; init; }

    /// <summary>max or min of the envelope.</summary>
    public string? Extreme { get; init; }

    /// <summary>service, factored or unknown.</summary>
    public string? Basis { get; init; }

    /// <summary>Share or force by which it may differ.</summary>
    public string? Tolerance { get; init; }

    /// <summary>Where it is stated.</summary>
    public string? Source { get; init; }
}
