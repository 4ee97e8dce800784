using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.CombinationSets;

/// <summary>A file that holds a set of combinations, as written.</summary>
internal sealed record SetDocument
{
    /// <summary>What the set is.</summary>
    internal string? Title { get; init; }

    /// <summary>What to know before it is used.</summary>
    internal string? Notes { get; init; }

    /// <summary>Its rows.</summary>
    internal Rows<SetRowEntry> Combinations { get; init; } = [];

    /// <summary>Its variable cases; several of one case are a choice.</summary>
    internal Rows<PsiEntry> Psi { get; init; } = [];
}
