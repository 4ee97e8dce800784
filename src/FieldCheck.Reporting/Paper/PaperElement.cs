namespace FieldCheck.Reporting.Paper;

/// <summary>
/// What a part of a page is, for whoever has it read aloud. Two are the same only if they are the same object: a paragraph
/// that runs over two pages is one.
/// </summary>
internal sealed class PaperElement(PaperElementKind kind, PaperElement? within = null, string description = "")
{
    /// <summary>What it is.</summary>
    internal PaperElementKind Kind { get; } = kind;

    /// <summary>What it is a part of; null: of the record itself.</summary>
    internal PaperElement? Within { get; } = within;

    /// <summary>Of a figure, what is to be seen in it.</summary>
    internal string Description { get; } = description;

    /// <summary>All that it is a part of, from the outermost down to itself.</summary>
    internal IEnumerable<PaperElement> Path => [.. Within?.Path ?? [], this];
}
