using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.CombinationSets;

/// <summary>One row of a set of combinations, as written.</summary>
/// <remarks>Every cell is the text as written, or null where nothing stands.</remarks>
internal sealed record SetRowEntry
{
    /// <summary>How its standard writes it.</summary>
    internal string? Expression { get; init; }

    /// <summary>service or factored; null is service.</summary>
    internal string? Basis { get; init; }

    /// <summary>What the row takes, each with its factor; see <see cref="SetTerm"/>.</summary>
    internal Rows<NamedFigure> Factors { get; init; } = [];

    /// <summary>Cases that must have loads, as "live" or "snow or rain": one of each entry.</summary>
    internal Rows<string> Needs { get; init; } = [];

    /// <summary>Where the row comes from.</summary>
    internal string? Source { get; init; }

    /// <summary>Whether it was read there.</summary>
    internal string? Status { get; init; }
}
