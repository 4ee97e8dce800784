using FieldCheck.Sheet.Editing;

namespace FieldCheck.Plain;

/// <summary>What a name leads to. Closed set: the cases are the nested records.</summary>
internal abstract record PlainTarget
{
    private PlainTarget()
    {
    }

    /// <summary>A cell of the form.</summary>
    /// <param name="Place">Which.</param>
    internal sealed record Cell(FormPlace Place) : PlainTarget;

    /// <summary>A key without a column.</summary>
    /// <param name="Path">The key path.</param>
    internal sealed record Key(string Path) : PlainTarget;
}
