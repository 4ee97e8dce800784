using System.Collections.Immutable;
using FieldCheck.Sheet.CombinationSets;

namespace FieldCheck.Sheet.Editing;

/// <summary>One change of a beam by the form. Closed set: the cases are the nested records.</summary>
public abstract record Edit
{
    private Edit()
    {
    }

    /// <summary>A text was typed in a cell; in the empty row it makes a row.</summary>
    /// <param name="Place">The cell.</param>
    /// <param name="Text">As typed; empty clears the cell.</param>
    public sealed record TypeCell(FormPlace Place, string Text) : Edit;

    /// <summary>
    /// Texts were pasted, a line a row downward, to the right in a line; below the last row they make rows.
    /// </summary>
    /// <param name="Place">The upper left cell.</param>
    /// <param name="Lines">The texts; what finds no column is left out.</param>
    public sealed record PasteCells(FormPlace Place, ImmutableArray<ImmutableArray<string>> Lines) : Edit;

    /// <summary>A text was typed for a key that has no column.</summary>
    /// <param name="Key">The key path with rows counted from 1, as "support[2].bearing".</param>
    /// <param name="Text">As typed; empty takes the key away.</param>
    public sealed record TypeKey(string Key, string Text) : Edit;

    /// <summary>A shape of the catalogue is taken for a section, in place of whatever form it had.</summary>
    /// <param name="Row">The section, as <see cref="StickRows.Sections"/> lists it, counted from 0.</param>
    /// <param name="Name">Name of the shape.</param>
    public sealed record TakeShape(int Row, string Name) : Edit;

    /// <summary>A row is put in.</summary>
    /// <param name="Row">Where it will stand, counted from 0.</param>
    /// <param name="Content">What stands in it; a span brings a roller at its far joint.</param>
    public sealed record PutRow(int Row, FormRow Content) : Edit;

    /// <summary>A row is copied; the copy stands below it.</summary>
    /// <param name="Block">The block.</param>
    /// <param name="Row">The row, counted from 0.</param>
    public sealed record CopyRow(FormBlock Block, int Row) : Edit;

    /// <summary>A row is taken away; a span takes the support at its far joint with it.</summary>
    /// <param name="Block">The block.</param>
    /// <param name="Row">The row, counted from 0.</param>
    public sealed record DeleteRow(FormBlock Block, int Row) : Edit;

    /// <summary>A row changes places with the one below it.</summary>
    /// <param name="Block">The block.</param>
    /// <param name="Row">The upper of the two, counted from 0.</param>
    public sealed record SwapRows(FormBlock Block, int Row) : Edit;

    /// <summary>
    /// A load without unit, of which it was not clear whether it is the whole or on each length, is told.
    /// </summary>
    /// <param name="Row">The load, counted from 0.</param>
    /// <param name="InAll">True: the number is the whole load; false: it is the load on each length.</param>
    public sealed record AnswerSize(int Row, bool InAll) : Edit;

    /// <summary>The rows of a set of combinations are put in.</summary>
    /// <param name="Rows">The rows.</param>
    /// <param name="Replaces">True: in place of those that stand; false: after them.</param>
    public sealed record PutCombinations(CombinationSetRows Rows, bool Replaces) : Edit;

    /// <summary>Results are shown in other units.</summary>
    /// <param name="Display">us or si.</param>
    public sealed record ShowUnits(string Display) : Edit;
}
