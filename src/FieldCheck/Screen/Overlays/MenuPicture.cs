using System.Collections.Immutable;
using FieldCheck.Screen.Painting;

namespace FieldCheck.Screen.Overlays;

/// <summary>Draws the menu over the lower right of the view.</summary>
internal static class MenuPicture
{
    private const int WidestWords = 44;
    private const int Edges = 4;

    /// <summary>The view with the menu over it; the cursor stands on the chosen entry.</summary>
    /// <param name="state">The state.</param>
    /// <param name="menu">The menu.</param>
    /// <param name="below">The view.</param>
    /// <param name="width">Columns; 1 or more.</param>
    internal static Picture Over(ScreenState state, Overlay.Menu menu, Picture below, int width)
    {
        ImmutableArray<MenuEntry> entries = MenuKeys.EntriesOf(state, menu.Page);
        int words = entries.Max(entry => Math.Min(TextColumns.Of(entry.Words), WidestWords));
        int keys = entries.Max(entry => entry.Keys.Length);
        int box = Math.Min(words + keys + 8 + Edges, width);
        int room = Math.Max(below.Lines.Length - 2, 1);
        int first = Math.Clamp(menu.Choice - room / 2, 0, Math.Max(entries.Length - room, 0));
        ImmutableArray<MenuEntry> seen = [.. entries.Skip(first).Take(room)];
        string title = menu.Page == MenuPage.Views ? "Views" : "What can be done here";
        string more = seen.Length < entries.Length ? $" {first + 1}-{first + seen.Length} of {entries.Length} " : "";
        ImmutableArray<PictureLine> lines =
        [
            Edge($" {title} ", box),
            .. seen.Select((entry, index) => Entry(entry, first + index - menu.Choice, words, box)),
            Edge(more, box),
        ];
        int top = Math.Max(below.Lines.Length - lines.Length, 0);
        IEnumerable<PictureLine> all = below.Lines.Select((under, y) => y < top || y - top >= lines.Length
            ? under
            : Beside(under, lines[y - top], width, box));
        int line = Math.Min(top + 1 + menu.Choice - first, below.Lines.Length - 1);
        return new Picture([.. all], (Math.Min(width - box + 2, width - 1), line));
    }

    private static PictureLine Edge(string title, int box) =>
        LineWriter.Line("+-" + title + new string('-', Math.Max(box - 3 - title.Length, 0)) + "+", box);

    private static PictureLine Entry(MenuEntry entry, int away, int words, int box) => new LineWriter(box)
        .Add("|")
        .Add(
            TextColumns.Fit(
                $"{(away == 0 ? ">" : " ")}{entry.Letter}  {TextColumns.FitWithMark(entry.Words, words)}  {entry.Keys}",
                Math.Max(box - 2, 0)),
            away == 0 ? Role.Focus : Role.Text,
            new LinkTarget.Line(away))
        .Add("|")
        .End();

    // Of the line below, what is left of the menu stays as it was.
    private static PictureLine Beside(PictureLine line, PictureLine menu, int width, int box)
    {
        LineWriter left = new(width - box);
        return width == box ? menu : new LineWriter(width).Add(left.Add(line).End()).Add(menu).End();
    }
}
