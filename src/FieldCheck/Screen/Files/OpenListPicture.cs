using System.Collections.Immutable;
using System.Globalization;
using FieldCheck.Screen.FormGrid;
using FieldCheck.Screen.Overlays;
using FieldCheck.Screen.Painting;
using FieldCheck.Screen.Plotting;

namespace FieldCheck.Screen.Files;

/// <summary>Draws the beams to open, and below them what the chosen one is.</summary>
internal static class OpenListPicture
{
    private const int LengthColumn = 11;
    private const int FromColumn = 16;
    private const int UsedColumn = 11;
    private const int WidestName = 44;
    private const int SketchHeight = 4;
    private const int Mark = 2;

    /// <summary>The picture.</summary>
    /// <param name="list">The list.</param>
    /// <param name="width">Columns; 1 or more.</param>
    /// <param name="height">Lines; 1 or more.</param>
    internal static Picture Of(Overlay.OpenList list, int width, int height)
    {
        ImmutableArray<BeamChoice> shown = OpenListKeys.ShownIn(list);
        const string open = "Open   type to search: ";
        int room = Math.Max(width - open.Length - 1, 1);
        (string typed, int caret) = CaretWindow.Of(list.Filter.Text, list.Filter.Caret, room);
        ImmutableArray<string> lines = shown.IsEmpty
            ? [None(list)]
            : [.. shown.Select(choice => Row(choice, list.Found!.Today, width - Mark))];
        return ListPicture.Of(
            $"{open}{typed}   {Count(list, shown.Length)}",
            lines,
            shown.TakeWhile(choice => !OpenListKeys.IsChosen(list, choice)).Count(),
            (new string(' ', open.Length + caret), ""),
            Below(list, shown.Length, width, height),
            width,
            height,
            shown.IsEmpty ? null : new string(' ', Mark) + Columns("Name", "Length", "From", "Last used", width - Mark));
    }

    private static string Count(Overlay.OpenList list, int shown)
    {
        if (list.Found is not FoundBeams found)
        {
            return "looking...";
        }

        int all = found.Choices.Length;
        string count = list.Filter.Text.Length > 0
            ? string.Create(CultureInfo.InvariantCulture, $"{shown} of {all} shown")
            : FormWords.Count(all, "beam");
        return found.LeftOut == 0 ? count : $"{count}, {FormWords.Count(found.LeftOut, "older file")} left out";
    }

    private static string None(Overlay.OpenList list) => list switch
    {
        { Found: null } => "",
        { Filter.Text: var typed } when string.IsNullOrWhiteSpace(typed) => "There is no beam to open here.",
        _ when OpenListKeys.PathIn(list) is string path => $"Enter opens the file {path}",
        _ => "No name has these words. To open a file by its path, end it in .toml",
    };

    private static string Row(BeamChoice choice, DateOnly today, int width) => Columns(
        choice.Name, OpenListWords.Length(choice), OpenListWords.From(choice), OpenListWords.LastUsed(choice, today), width);

    // In a narrow window the place goes first, then the length: by name and by when it was used a beam is known again.
    private static string Columns(string name, string length, string from, string used, int width)
    {
        bool hasFrom = width >= 54;
        bool hasLength = width >= 36;
        bool hasUsed = width >= 24;
        int rest = (hasLength ? LengthColumn + 1 : 0) + (hasFrom ? FromColumn + 1 : 0) + (hasUsed ? UsedColumn + 1 : 0);
        return TextColumns.FitWithMark(name, Math.Min(width - rest, WidestName))
            + (hasLength ? " " + TextColumns.FitWithMark(length, LengthColumn) : "")
            + (hasFrom ? " " + TextColumns.FitWithMark(from, FromColumn) : "")
            + (hasUsed ? " " + used : "");
    }

    // Half of the window is left to the list if it needs that much; where the rest is little the sketch goes first.
    private static ImmutableArray<string> Below(Overlay.OpenList list, int shown, int width, int height)
    {
        ImmutableArray<string> words =
            [.. OpenListWords.Preview(list).SelectMany(line => TextColumns.Wrap(line, width))];
        int room = Math.Max(height / 2 - 1, height - shown - 3);
        ImmutableArray<string> sketch = list.Preview is { Beam: not null } preview && words.Length + SketchHeight <= room
            ? PlotPicture.OfBeam(preview, width, SketchHeight)
            : [];
        return [.. words.Take(Math.Max(room, 0)), .. sketch];
    }
}
