using System.Collections.Immutable;
using FieldCheck.Reporting.Pages;

namespace FieldCheck.Reporting.Paper;

/// <summary>Sets lines that are kept as they stand, in letters of one width as large as lets the longest fit.</summary>
internal sealed class PaperLines
{
    private const double Smallest = 5;
    private const double Largest = 8;

    // So that a line that fits is not cut by a last digit.
    private const double Hair = 0.01;

    private readonly PaperLetters _letters;
    private readonly PaperStyle _style;
    private readonly PaperElement _element = new(PaperElementKind.Paragraph);

    private PaperLines(PaperLetters letters, ImmutableArray<RecordLine> all)
    {
        PaperStyle em = new(PaperFace.Mono, 1);
        double longest = all.Max(line => letters.WidthOf(Shown(letters, line.Text), em));
        _letters = letters;
        _style = em with { Size = Math.Clamp(PaperSheet.BlockWidth / Math.Max(longest, 1), Smallest, Largest) };
    }

    internal static IEnumerable<PaperPiece> Of(PaperLetters letters, ImmutableArray<RecordLine> all)
    {
        PaperLines paper = new(letters, all);
        RecordLine[] lines = [.. all.SelectMany(paper.Broken)];
        PaperPiece[] pieces = [.. lines.Select(paper.Piece)];
        for (int row = 0, rows; row < lines.Length; row += Math.Max(1, rows))
        {
            rows = lines.Skip(row).TakeWhile(line => line.Head is not null && line.Head == lines[row].Head).Count();
            PaperTable.Kept(pieces[row..(row + rows)]).ToArray().CopyTo(pieces, row);
        }

        return pieces.Select((piece, i) => piece with
        {
            Above = i == 0 ? 4 : 0,
            KeepsNext = piece.KeepsNext || KeepsNext(lines, i),
        });
    }

    private static string Shown(PaperLetters letters, string text) => letters.Shown(text, PaperFace.Mono).TrimEnd();

    private IEnumerable<RecordLine> Broken(RecordLine line) => _letters
        .Chunks(Shown(_letters, line.Text), _style, PaperSheet.BlockWidth + Hair)
        .Select(part => line with { Text = part });

    private PaperPiece Piece(RecordLine line) => PaperText.Line(line.Text, _style, 0, _element) with
    {
        Head = line.Head is string head && Broken(new RecordLine(head)).ToArray() is [RecordLine whole]
            ? PaperTable.Again(PaperText.Line(whole.Text, _style, 0, null))
            : null,
    };

    /// <summary>
    /// Lines between two empty ones are a paragraph: its first and its last are not left alone; nor is a line that heads or
    /// leads to others.
    /// </summary>
    private static bool KeepsNext(RecordLine[] lines, int at)
    {
        if (at + 1 >= lines.Length)
        {
            return false;
        }

        if (lines[at].Text.Length == 0)
        {
            return at > 0 && lines[at - 1].IsHeading;
        }

        if (lines[at + 1].Text.Length == 0)
        {
            return lines[at].IsHeading;
        }

        bool isFirst = at == 0 || lines[at - 1].Text.Length == 0;
        bool isLastButOne = at + 2 >= lines.Length || lines[at + 2].Text.Length == 0;
        return isFirst || isLastButOne || Leads(lines[at], lines[at + 1]);
    }

    private static bool Leads(RecordLine line, RecordLine next) => line.Head is null
        && (line.IsHeading || line.Text.EndsWith(':') || Indent(line.Text) < Indent(next.Text) || next.Head is not null);

    private static int Indent(string line) => line.Length - line.TrimStart(' ').Length;
}
