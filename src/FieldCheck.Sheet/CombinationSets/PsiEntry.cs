namespace FieldCheck.Sheet.CombinationSets;

/// <summary>How much of a variable case goes with others, as written; a case with such a row is a variable one.</summary>
/// <remarks>Every cell is the text as written, or null where nothing stands.</remarks>
internal sealed record PsiEntry
{
    /// <summary>The case.</summary>
    internal string? Case { get; init; }

    /// <summary>What kind of use the values are for.</summary>
    internal string? Category { get; init; }

    /// <summary>Share that goes with a leading load; null counts 1.</summary>
    internal string? Psi0 { get; init; }

    /// <summary>Share that is there often; null counts 1.</summary>
    internal string? Psi1 { get; init; }

    /// <summary>Share that is there most of the time; null counts 1.</summary>
    internal string? Psi2 { get; init; }

    /// <summary>Where the values come from.</summary>
    internal string? Source { get; init; }

    /// <summary>Whether they were read there.</summary>
    internal string? Status { get; init; }
}
