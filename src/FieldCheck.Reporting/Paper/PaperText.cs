using System.Collections.Immutable;

namespace FieldCheck.Reporting.Paper;

/// <summary>Sets running text: headings, paragraphs, lists.</summary>
internal sealed class PaperText(PaperLetters letters)
{
    private const double Bullet = 9;

    internal IEnumerable<PaperPiece> Title(string text) =>
        Lines(letters.Lines(text, PaperStyle.Title, PaperSheet.BlockWidth), PaperStyle.Title, 0, new(PaperElementKind.Title));

    internal IEnumerable<PaperPiece> Heading(int level, string text)
    {
        PaperStyle style = level == 2 ? PaperStyle.Section : PaperStyle.Part;
        PaperElement element = new(level == 2 ? PaperElementKind.Section : PaperElementKind.Part);
        ImmutableArray<PaperPiece> lines = Lines(letters.Lines(text, style, PaperSheet.BlockWidth), style, 0, element);
        return lines.Select((piece, i) => piece with
        {
            Above = i == 0 ? style.Size : 0,
            KeepsNext = true,
            Bookmark = i == 0 ? new PaperBookmark(level, letters.Shown(text, style.Face)) : null,
        });
    }

    internal IEnumerable<PaperPiece> Paragraph(string text, PaperStyle style, double above) => Spaced(
        Lines(letters.Lines(text, style, PaperSheet.BlockWidth), style, 0, new(PaperElementKind.Paragraph)), above);

    /// <summary>Sentences, each with a dot before it.</summary>
    internal IEnumerable<PaperPiece> Sentences(ImmutableArray<string> all)
    {
        PaperElement list = new(PaperElementKind.List);
        return all.SelectMany((text, i) => Sentence(text.TrimStart('-', ' '), list, i == 0 ? 3 : 1.5));
    }

    internal static PaperPiece Line(string text, PaperStyle style, double x, PaperElement? element) => new(
        style.Line, text.Length == 0 ? [] : [new PaperMark.Words(x, style.Base, element, text, style)]);

    /// <summary>Lines of one text; neither its first nor its last stands alone on a page.</summary>
    private static ImmutableArray<PaperPiece> Lines(
        ImmutableArray<string> lines, PaperStyle style, double x, PaperElement element) =>
    [
        .. lines.Select((line, i) => Line(line, style, x, element) with
        {
            KeepsNext = i + 1 < lines.Length && (i == 0 || i + 2 == lines.Length),
        }),
    ];

    private IEnumerable<PaperPiece> Sentence(string text, PaperElement list, double above)
    {
        PaperStyle style = PaperStyle.Body;
        PaperElement item = new(PaperElementKind.Item, list);
        ImmutableArray<PaperPiece> lines = Lines(
            letters.Lines(text, style, PaperSheet.BlockWidth - Bullet), style, Bullet, new(PaperElementKind.ItemBody, item));
        return Spaced(lines, above).Select((piece, i) => i > 0
            ? piece
            : piece with { Marks = [new PaperMark.Words(1, style.Base, null, "\u2022", style), .. piece.Marks] });
    }

    private static IEnumerable<PaperPiece> Spaced(ImmutableArray<PaperPiece> pieces, double above) =>
        pieces.Select((piece, i) => i == 0 ? piece with { Above = above } : piece);
}
