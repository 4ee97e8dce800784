using System.Diagnostics;
using FieldCheck.Reporting.Pages;

namespace FieldCheck.Reporting.Paper;

/// <summary>Sets the blocks of a record in pieces that a page is filled with.</summary>
internal sealed class PaperBlocks(PaperLetters letters)
{
    private const int FewLines = 4;
    private const int LastWords = 3;
    private const double AboveParagraph = 6;
    private const double AboveCaption = 8;

    private readonly PaperText _text = new(letters);
    private readonly PaperForm _form = new(letters);

    /// <summary>The pieces of a record, in order.</summary>
    internal IEnumerable<PaperPiece> Of(CheckRecord record) =>
    [
        .. _text.Title(record.Title),
        .. record.Blocks.SelectMany((block, i) => Of(block, record.IsLead(i), record.IsBeforeSigning(i))),
    ];

    /// <summary>
    /// The pieces of a block; a few words that lead to what follows them stand on the same page, and so do the last words
    /// before the room to sign: nobody signs a page with nothing on it.
    /// </summary>
    private IEnumerable<PaperPiece> Of(RecordBlock block, bool isLead, bool isBeforeSigning)
    {
        PaperPiece[] pieces = [.. Of(block)];
        int kept = isLead && pieces.Length <= FewLines ? pieces.Length : isBeforeSigning ? LastWords : 0;
        return pieces.Select((piece, i) => i >= pieces.Length - kept ? piece with { KeepsNext = true } : piece);
    }

    private IEnumerable<PaperPiece> Of(RecordBlock block) => block switch
    {
        RecordBlock.Heading heading => _text.Heading(heading.Level, heading.Text),
        RecordBlock.Facts facts => _form.Facts(facts.All),
        RecordBlock.Paragraph paragraph =>
            _text.Paragraph(paragraph.Text, paragraph.IsWarning ? PaperStyle.Strong : PaperStyle.Body, AboveParagraph),
        RecordBlock.Sentences sentences => _text.Sentences(sentences.All),
        RecordBlock.Table table => [.. Caption(table.Caption), .. PaperTable.Of(letters, table)],
        RecordBlock.Figure figure => [.. Caption(figure.Caption), Figure(figure, letters)],
        RecordBlock.Lines lines => PaperLines.Of(letters, lines.All),
        RecordBlock.Signatures signatures => _form.Signatures(signatures.All),
        _ => throw new UnreachableException(),
    };

    private IEnumerable<PaperPiece> Caption(string text) =>
        _text.Paragraph(text, PaperStyle.Caption, AboveCaption).Select(piece => piece with { KeepsNext = true });

    /// <summary>A drawing at its own size, made smaller where the page does not hold it with its caption.</summary>
    private static PaperPiece Figure(RecordBlock.Figure figure, PaperLetters letters)
    {
        const double MostHeight = PaperSheet.BodyHeight - 60;
        double scale = Math.Min(
            1, Math.Min(PaperSheet.BlockWidth / figure.Drawing.Width, MostHeight / figure.Drawing.Height));
        PaperElement element = new(
            PaperElementKind.Figure, description: letters.Shown(figure.Description, PaperFace.Regular));
        double left = (PaperSheet.BlockWidth - scale * figure.Drawing.Width) / 2;
        return new PaperPiece(
            scale * figure.Drawing.Height, [new PaperMark.Drawing(left, 0, element, figure.Drawing, scale)])
        { Above = 3 };
    }
}
