using System.Collections.Immutable;
using FieldCheck.Screen.FormGrid;
using FieldCheck.Screen.Overlays;
using FieldCheck.Screen.Painting;
using FieldCheck.Sheet.CombinationSets;

namespace FieldCheck.Screen.Combining;

/// <summary>Draws the list of sets of combinations over the whole of a view, with what the chosen one comes to here.</summary>
internal static class SetListPicture
{
    /// <summary>The picture.</summary>
    /// <param name="state">The state.</param>
    /// <param name="list">The list.</param>
    /// <param name="width">Columns; 1 or more.</param>
    /// <param name="height">Lines; 1 or more.</param>
    internal static Picture Of(ScreenState state, Overlay.SetList list, int width, int height)
    {
        ImmutableArray<CombinationSet> shown = SetListKeys.ShownIn(list);
        ImmutableArray<string> lines = shown.IsEmpty
            ? [list.Found is null ? "looking..." : "No set has these words."]
            : [.. shown.Select(set => set.Title)];
        int room = Math.Max(height / 2 - 1, height - lines.Length - 3);
        ImmutableArray<string> below = SetListKeys.ChosenIn(list) is CombinationSet chosen
            ? [.. About(state, chosen).SelectMany(line => TextColumns.Wrap(line, width)).Take(Math.Max(room, 0))]
            : [];
        return ListPicture.Of(
            $"Combinations   type to search: {list.Filter.Text}",
            lines,
            list.Choice,
            ($"Combinations   type to search: {list.Filter.Before}", ""),
            below,
            width,
            height);
    }

    /// <summary>What the message line says.</summary>
    /// <param name="state">The state.</param>
    /// <param name="list">The list.</param>
    internal static Notice Message(ScreenState state, Overlay.SetList list)
    {
        int standing = state.Document.Combinations.Count;
        int unreadable = list.Found?.Unreadable.Length ?? 0;
        return unreadable > 0
            ? new Notice($"{FormWords.Count(unreadable, "file")} of combinations cannot be read: {list.Found!.Unreadable[0]}", Role.Warn)
            : new Notice(standing == 0
                ? "Enter puts its rows in: they are then yours to change."
                : $"Enter adds its rows to the {standing} there are; Tab replaces those by them.");
    }

    /// <summary>What a set comes to for the beam: its rows, what stands in none of them, and where they come from.</summary>
    internal static IEnumerable<string> About(ScreenState state, CombinationSet set)
    {
        CombinationSetRows rows = set.For(state.Document);
        yield return rows.Rows.IsEmpty
            ? "It has no row for the cases of this beam."
            : $"{FormWords.Count(rows.Rows.Length, "row")} for the cases of this beam:";
        foreach (CombinationSetRow row in rows.Rows)
        {
            yield return $"{row.Entry.Basis ?? "service"}: {row.Entry.Name}";
        }

        if (!rows.LeftOut.IsEmpty)
        {
            yield return $"In none of them: {string.Join(", ", rows.LeftOut)}.";
        }

        foreach (string source in rows.Sources)
        {
            yield return $"Source: {source}";
        }

        if (set.Notes.Length > 0)
        {
            yield return set.Notes;
        }
    }
}
