using System.Collections.Immutable;
using FieldCheck.Screen.FormGrid;
using FieldCheck.Screen.Keyboard;
using FieldCheck.Screen.Overlays;
using FieldCheck.Screen.Painting;
using FieldCheck.Sheet.CombinationSets;
using FieldCheck.Sheet.Editing;

namespace FieldCheck.Screen.Combining;

/// <summary>Keys pressed in the list of sets of combinations.</summary>
internal static class SetListKeys
{
    /// <summary>The sets that have the words typed, in the order in which they were found.</summary>
    /// <param name="list">The list.</param>
    internal static ImmutableArray<CombinationSet> ShownIn(Overlay.SetList list)
    {
        string[] words = list.Filter.Text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return list.Found is not CombinationSearch found ? [] :
        [
            .. found.Sets.Where(set => words.All(word =>
                $"{set.Title} {set.Name}".Contains(word, StringComparison.OrdinalIgnoreCase))),
        ];
    }

    /// <summary>The set that Enter takes; null where none is shown.</summary>
    /// <param name="list">The list.</param>
    internal static CombinationSet? ChosenIn(Overlay.SetList list) => ShownIn(list).ElementAtOrDefault(list.Choice);

    internal static ScreenStep Found(ScreenState state, ScreenEvent.SetsFound found) => (state with
    {
        Overlay = state.Overlay is Overlay.SetList list ? list with { Found = found.Found } : state.Overlay,
    }).Step();

    internal static ScreenStep Press(ScreenState state, Overlay.SetList list, KeyStroke stroke) => (stroke switch
    {
        KeyStroke.Named { Key: KeyName.Enter } => Put(state, list, replaces: false),
        KeyStroke.Named { Key: KeyName.Tab } => Put(state, list, replaces: true),
        KeyStroke.Named { Key: KeyName.Up or KeyName.Down or KeyName.PageUp or KeyName.PageDown } => state with
        {
            Overlay = list with { Choice = OverlayKeys.Moved(list.Choice, ShownIn(list).Length, stroke) },
        },
        _ => OverlayKeys.Typed(list.Filter, stroke) is LineText filter
            ? state with { Overlay = list with { Filter = filter, Choice = 0 } }
            : state,
    }).Step();

    private static ScreenState Put(ScreenState state, Overlay.SetList list, bool replaces)
    {
        if (ChosenIn(list) is not CombinationSet set)
        {
            return state;
        }

        CombinationSetRows rows = set.For(state.Document);
        if (rows.Rows.IsEmpty)
        {
            return state with { Notice = new Notice("It has no row for the cases of this beam.", Role.Warn) };
        }

        FormPlace first = new(FormBlock.Combinations, replaces ? 0 : state.Document.Combinations.Count, FormColumn.Name);
        ScreenState put = FormEdits.Make(state with { Overlay = null }, new Edit.PutCombinations(rows, replaces), first);
        int added = put.Document.Combinations.Count - (replaces ? 0 : state.Document.Combinations.Count);
        return put with { Focus = first, TabStart = null, Notice = NoticeOf(put, set, rows, added, replaces) };
    }

    private static Notice NoticeOf(
        ScreenState state, CombinationSet set, CombinationSetRows rows, int added, bool replaces)
    {
        string left = rows.LeftOut.IsEmpty ? "" : $" In none of them: {string.Join(", ", rows.LeftOut)}.";
        string undo = state.Table.KeyOf(CommandName.Undo);
        string what = added == 0 ? "All of them stand already."
            : replaces ? $"{FormWords.Count(added, "combination")} in place of those before; {undo} brings them back."
            : $"{FormWords.Count(added, "combination")} added; {undo} takes them out.";
        return new Notice($"{set.Title}: {what}{left}", rows.LeftOut.IsEmpty ? Role.Text : Role.Warn);
    }
}
