using System.Collections.Immutable;
using System.Globalization;
using FieldCheck.Screen;
using FieldCheck.Screen.Combining;
using FieldCheck.Screen.FormGrid;
using FieldCheck.Screen.Overlays;
using FieldCheck.Screen.Painting;
using FieldCheck.Sheet.CombinationSets;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Editing;

namespace FieldCheck.Plain;

/// <summary>The sets of combinations of standards: listed, one of them told, its rows put in.</summary>
internal static class PlainSets
{
    private const int None = -1;

    internal static PlainStep Begin(PlainState state, string text)
    {
        ScreenState form = state.Form with { Overlay = new Overlay.SetList(null, LineText.Empty, None) };
        return (state with { Wanted = text.Trim().Length > 0 ? text.Trim() : null }).With(form.Step(new Effect.FindSets()));
    }

    /// <summary>The sets are known: the one that was named is told, or they are listed.</summary>
    /// <param name="step">The step so far.</param>
    /// <param name="list">The list.</param>
    internal static PlainStep Found(PlainStep step, Overlay.SetList list)
    {
        PlainState state = step.State with { Wanted = null };
        CombinationSearch found = list.Found!;
        PlainStep told = step.State.Wanted is string wanted
            ? Choose(state, list, wanted)
            : state.Say([.. Listed(found, found.Sets)]);
        return found.Unreadable.IsEmpty ? told : told.Then(
            $"{FormWords.Count(found.Unreadable.Length, "file")} of combinations cannot be read: {found.Unreadable[0]}");
    }

    /// <summary>What is asked: which set, or what to do with the one that was told.</summary>
    /// <param name="form">The beam.</param>
    /// <param name="list">The list.</param>
    internal static string Question(ScreenState form, Overlay.SetList list) => SetListKeys.ChosenIn(list) is null
        ? "Which set? Its number or part of its name; Enter for none: "
        : form.Document.Combinations.Count == 0
            ? "Add its rows? add, or another set, or Enter for none: "
            : $"Add its rows to the {form.Document.Combinations.Count} there are, or replace these? add, replace, or Enter for none: ";

    /// <summary>What an answer comes to.</summary>
    /// <param name="state">The conversation.</param>
    /// <param name="list">The list.</param>
    /// <param name="line">The answer.</param>
    internal static PlainStep Answer(PlainState state, Overlay.SetList list, string line)
    {
        PlainState back = state with { Form = state.Form with { Overlay = null } };
        return (line.ToLowerInvariant(), SetListKeys.ChosenIn(list)) switch
        {
            ("", _) => back.Say(),
            ("add" or "replace", CombinationSet chosen) => Put(back, chosen, replaces: line.StartsWith('r') || line.StartsWith('R')),
            ("list", _) => (state with { Form = state.Form with { Overlay = list with { Choice = None } } })
                .Say([.. Listed(list.Found!, list.Found!.Sets)]),
            _ => Choose(state, list, line),
        };
    }

    private static PlainStep Choose(PlainState state, Overlay.SetList list, string text)
    {
        ImmutableArray<CombinationSet> all = list.Found!.Sets;
        ImmutableArray<CombinationSet> meant =
            int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int number) && number >= 1 && number <= all.Length
                ? [all[number - 1]]
                : SetListKeys.ShownIn(list with { Filter = LineText.Of(text) });
        return meant switch
        {
            [CombinationSet one] => (state with { Form = state.Form with { Overlay = list with { Choice = all.IndexOf(one) } } })
                .Say([PlainWords.Sentence(one.Title), .. SetListPicture.About(state.Form, one).Select(line => PlainWords.Sentence(line.TrimEnd(':')))]),
            [_, ..] => state.Say([.. Listed(list.Found!, meant)]),
            _ when PlainCommands.Of(text) is not null =>
                PlainCommands.Run(state with { Form = state.Form with { Overlay = null } }, text),
            _ => state.Say($"No set has these words: {text}. list lists all."),
        };
    }

    private static PlainStep Put(PlainState state, CombinationSet set, bool replaces)
    {
        CombinationSetRows rows = set.For(state.Form.Document);
        if (rows.Rows.IsEmpty)
        {
            return state.Say("It has no row for the cases of this beam.");
        }

        Rows<CombinationEntry> before = state.Form.Document.Combinations;
        FormPlace first = new(FormBlock.Combinations, replaces ? 0 : before.Count, FormColumn.Name);
        PlainState put = PlainCells.Make(state, new Edit.PutCombinations(rows, replaces), first);
        int added = put.Form.Document.Combinations.Count - (replaces ? 0 : before.Count);
        string said = added == 0 ? "All of them stand already."
            : replaces && before.Count > 0
                ? $"{FormWords.Count(added, "combination")} in place of those before; undo brings them back."
                : $"{FormWords.Count(added, "combination")} added; undo takes them out.";
        return put.Say(said, PlainWords.Outcome(put.Form));
    }

    private static IEnumerable<string> Listed(CombinationSearch found, ImmutableArray<CombinationSet> some) => some.Select(set =>
        string.Create(CultureInfo.InvariantCulture, $"{found.Sets.IndexOf(set) + 1}: {set.Title}."));
}
