namespace FieldCheck.Sheet.Editing;

/// <summary>One cell of the form.</summary>
/// <param name="Block">The block.</param>
/// <param name="Row">
/// The row of the block, counted from 0; one more than the last is the empty row; <see cref="OwnWeightRow"/> is own
/// weight. What is stated is counted as <see cref="StatedRows"/> does.
/// </param>
/// <param name="Column">The column.</param>
public sealed record FormPlace(FormBlock Block, int Row, FormColumn Column)
{
    /// <summary>The row of own weight, above the loads.</summary>
    public const int OwnWeightRow = -1;

    /// <summary>True: it is a cell of own weight.</summary>
    public bool IsOwnWeight => Block == FormBlock.Loads && Row == OwnWeightRow;
}
