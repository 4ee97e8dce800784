using FieldCheck.Sheet.Editing;

namespace FieldCheck.Plain;

/// <summary>What the next line is an answer to. Closed set: the cases are the nested records.</summary>
internal abstract record PlainAsk
{
    private PlainAsk()
    {
    }

    /// <summary>What goes into a cell of the form.</summary>
    /// <param name="Place">The cell.</param>
    /// <param name="Walk">What is asked after it.</param>
    internal sealed record Cell(FormPlace Place, PlainWalk Walk) : PlainAsk;

    /// <summary>Whether the size of a load is the whole or on each length.</summary>
    /// <param name="Place">The cell that was answered before.</param>
    /// <param name="Walk">What is asked after it.</param>
    internal sealed record Size(FormPlace Place, PlainWalk Walk) : PlainAsk;

    /// <summary>What goes under a key without a column.</summary>
    /// <param name="Path">The key path.</param>
    /// <param name="Walk">What is asked after it.</param>
    internal sealed record Key(string Path, PlainWalk Walk) : PlainAsk;
}
