using System.Collections.Immutable;
using FieldCheck.Screen.Files;
using FieldCheck.Screen.Overlays;
using FieldCheck.Screen.Painting;
using FieldCheck.Screen.Plotting;

namespace FieldCheck.Screen;

/// <summary>Draws what is told, asked or typed above the keys.</summary>
internal static class MessagePicture
{
    private const string More = " ...";

    /// <summary>The lines, the lowest last; one at least.</summary>
    /// <param name="state">The state.</param>
    /// <param name="width">Columns; 1 or more.</param>
    /// <param name="most">How many lines there may be; 1 or more.</param>
    /// <returns>The lines, and the column of the cursor in the lowest; null: it stands elsewhere.</returns>
    internal static (ImmutableArray<PictureLine> Lines, int? Caret) Of(ScreenState state, int width, int most)
    {
        (string Ask, LineText Line)? typing = state.Overlay switch
        {
            Overlay.NameLine name => ("Save as: ", name.Name),
            Overlay.PaperName { Kind: PaperKind.Record } name => ("Record (.pdf, .html, .md or .txt): ", name.Name),
            Overlay.PaperName name => ("Save as: ", name.Name),
            Overlay.Answers { Draft: LineText draft } => ("Stiffness of the prop: ", draft),
            Overlay.PlaceLine { Use: PlaceUse.ReadOff } place => ("Read off at: ", place.Text),
            Overlay.PlaceLine { Use: PlaceUse.Influence } place => ("Influence line of: ", place.Text),
            Overlay.PlaceLine place => ("Moments about: ", place.Text),
            _ => null,
        };
        if (typing is (string ask, LineText line) && (state.Notice is null || most > 1))
        {
            int room = Math.Max(width - ask.Length - 1, 1);
            (string seen, int column) = CaretWindow.Of(line.Text, line.Caret, room);
            PictureLine typed = new LineWriter(width).Add(ask, Role.Accent).Add(seen).End();
            ImmutableArray<PictureLine> told = state.Notice is Notice said ? Lines(said, width, most - 1) : [];
            return ([.. told, typed], Math.Min(ask.Length + column, width - 1));
        }

        if (state.Overlay is Overlay overlay && QuestionKeys.Words(state, overlay) is (string question, _))
        {
            ImmutableArray<PictureLine> asked = Lines(new Notice(question, Role.Warn), width, most);
            return (asked, Math.Min(TextColumns.Of(asked[^1].ToString().TrimEnd()) + 1, width - 1));
        }

        return (Lines(MessageLine.Of(state), width, most), null);
    }

    private static ImmutableArray<PictureLine> Lines(Notice notice, int width, int most)
    {
        List<string> lines = [.. Broken(notice.Text, width)];
        if (lines.Count > most)
        {
            int room = Math.Max(width - More.Length, 0);
            string rest = string.Join(' ', lines.Skip(most - 1));
            lines = [.. lines.Take(most - 1), width > 2 * More.Length ? TextColumns.Cut(rest, room).TrimEnd() + More : rest];
        }

        return [.. lines.Select(line => LineWriter.Line(line, width, notice.Role))];
    }

    // At blanks; those that part items stay where they stand inside a line.
    private static IEnumerable<string> Broken(string text, int width)
    {
        string rest = text;
        while (TextColumns.Of(rest) > width)
        {
            string fits = TextColumns.Cut(rest, width);
            int blank = rest.Length > fits.Length && rest[fits.Length] == ' ' ? fits.Length : fits.LastIndexOf(' ');
            int end = blank > 0 ? blank : Math.Max(fits.Length, 1);
            yield return rest[..end].TrimEnd();
            rest = rest[end..].TrimStart();
        }

        yield return rest;
    }
}
