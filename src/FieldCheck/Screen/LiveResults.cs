using FieldCheck.Screen.FormGrid;
using FieldCheck.Screen.Workings;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Editing;

namespace FieldCheck.Screen;

/// <summary>Keeps the results with the beam: calculated anew whenever what would be calculated is another.</summary>
internal static class LiveResults
{
    /// <summary>The state with the results of its beam, and of its beam with what is being typed.</summary>
    /// <param name="before">The state whose results are known.</param>
    /// <param name="after">The state whose results are to be.</param>
    internal static ScreenState Follow(ScreenState before, ScreenState after)
    {
        Calculation settled = Known(before, after.Document) ?? after.Calculate(after.Document);
        ScreenState next = after with
        {
            Settled = settled,
            Tried = after.Draft is CellDraft draft ? Try(before, after, settled, draft) : null,
        };
        return next with { Worked = ShownWorking.Of(after.Worked, next) };
    }

    private static Calculation Try(ScreenState before, ScreenState after, Calculation settled, CellDraft draft)
    {
        BeamDocument tried = Editor.Apply(after.Sheet, new Edit.TypeCell(draft.Place, draft.Line.Text)).Document;
        return settled.Document == tried ? settled : Known(before, tried) ?? after.Calculate(tried);
    }

    private static Calculation? Known(ScreenState before, BeamDocument document) =>
        before.Settled.Document == document ? before.Settled
        : before.Tried?.Document == document ? before.Tried
        : null;
}
