using System.Collections.Immutable;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Editing;

/// <summary>Every state of a beam since it was opened, for undo and redo.</summary>
/// <remarks>
/// Whole states are kept, not their differences: a beam is a few kilobytes and its rows are shared.
/// Limitations: the last <see cref="Limit"/> steps are kept; a change after an undo forgets what was undone; edits of
/// one cell that follow each other are one step; where the cursor stood, which view was shown and what was saved are no
/// part of it.
/// </remarks>
/// <param name="Steps">The states, oldest first; the first is what undo ends at.</param>
/// <param name="Index">Which of them is now.</param>
public sealed record History(ImmutableArray<HistoryStep> Steps, int Index)
{
    /// <summary>How many changes can be undone.</summary>
    public const int Limit = 200;

    /// <summary>The beam now.</summary>
    public FormSheet Sheet => Steps[Index].Sheet;

    /// <summary>The change that undo would take back; null when there is none.</summary>
    public HistoryStep? ToUndo => Index > 0 ? Steps[Index] : null;

    /// <summary>The change that redo would make again; null when there is none.</summary>
    public HistoryStep? ToRedo => Index < Steps.Length - 1 ? Steps[Index + 1] : null;

    /// <summary>A history that begins with a beam.</summary>
    /// <param name="sheet">The beam.</param>
    public static History Start(FormSheet sheet) => new([new HistoryStep(sheet, "", null, Merges: false)], 0);

    /// <summary>The history with one more change. A change that changes nothing is no step.</summary>
    /// <param name="step">The change.</param>
    public History With(HistoryStep step)
    {
        if (step.Sheet == Sheet)
        {
            return this;
        }

        bool merges = step.Merges && ToUndo is { Merges: true } last && last.Place == step.Place && ToRedo is null;
        ImmutableArray<HistoryStep> kept = Steps[..(merges ? Index : Index + 1)];
        if (merges && kept[^1].Sheet == step.Sheet)
        {
            return new History(kept, kept.Length - 1);
        }

        int forgotten = kept.Length > Limit ? kept.Length - Limit : 0;
        return new History([.. kept[forgotten..], step], kept.Length - forgotten);
    }

    /// <summary>One step back; the same where there is none.</summary>
    public History Undo() => this with { Index = Math.Max(Index - 1, 0) };

    /// <summary>One step forward again; the same where there is none.</summary>
    public History Redo() => this with { Index = Math.Min(Index + 1, Steps.Length - 1) };

    /// <summary>True: the beam now is typed the same as another.</summary>
    /// <param name="document">The other.</param>
    public bool Holds(BeamDocument document) => Sheet.Document == document;
}
