namespace FieldCheck.Sheet.Editing;

/// <summary>A changed beam, and where each support's row has gone.</summary>
/// <param name="Sheet">The beam after the change.</param>
/// <param name="SupportRow">The new row of a support, counted from 0, or null when it is gone.</param>
internal sealed record SheetChange(FormSheet Sheet, Func<int, int?> SupportRow)
{
    internal SheetChange(FormSheet sheet)
        : this(sheet, row => row)
    {
    }
}
