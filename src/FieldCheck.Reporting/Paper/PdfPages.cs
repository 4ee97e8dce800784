using System.Collections.Immutable;
using System.Diagnostics;
using FieldCheck.Reporting.Pages;
using PdfSharp;
using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace FieldCheck.Reporting.Paper;

/// <summary>Writes pages as a PDF file.</summary>
internal sealed class PdfPages : IDisposable
{
    private readonly PaperLetters _letters;
    private readonly PdfDocument _document = new();
    private readonly PdfElements _elements;
    private readonly Dictionary<PaperStyle, XFont> _fonts = [];
    private PdfOutline? _section;

    private PdfPages(PaperLetters letters)
    {
        _letters = letters;
        _elements = new PdfElements(_document);
    }

    /// <summary>The bytes of the file.</summary>
    /// <param name="record">The record, for what the document tells of itself.</param>
    /// <param name="pages">Its pages.</param>
    /// <param name="letters">What they were set with.</param>
    internal static byte[] Of(CheckRecord record, ImmutableArray<PaperPage> pages, PaperLetters letters)
    {
        using PdfPages pdf = new(letters);
        pdf.Describe(record);
        foreach (PaperPage page in pages)
        {
            pdf.Draw(page);
        }

        pdf._elements.End();
        return pdf.Bytes(PaperDigest.Of(pages));
    }

    public void Dispose() => _document.Dispose();

    private void Describe(CheckRecord record)
    {
        _document.Language = "en";
        _document.Info.Elements.Remove("/CreationDate");
        _document.Info.Title = _letters.Shown(record.Title, PaperFace.Regular);
        if (record.Fact("prepared by") is { Length: > 0 } author)
        {
            _document.Info.Author = _letters.Shown(author, PaperFace.Regular);
        }

        if (record.Fact("made by") is { Length: > 0 } program)
        {
            _document.Info.Creator = program;
        }

        _document.Options.NoCompression = true;
        _document.Options.CompressContentStreams = false;
    }

    private void Draw(PaperPage page)
    {
        PdfPage sheet = _document.AddPage();
        sheet.Size = PageSize.A4;
        using (XGraphics graphics = XGraphics.FromPdfPage(sheet))
        {
            for (int i = 0; i < page.Marks.Length;)
            {
                PaperMark first = page.Marks[i];
                PaperMark[] run = [.. page.Marks.Skip(i).TakeWhile(mark => IsAlike(first, mark))];
                _elements.Draw(first.Element, first is PaperMark.Words, Bounds(first), () => Draw(graphics, run));
                i += run.Length;
            }
        }

        foreach (PaperBookmark bookmark in page.Bookmarks)
        {
            Add(bookmark, sheet);
        }
    }

    private static bool IsAlike(PaperMark one, PaperMark other) =>
        one.Element == other.Element && one is PaperMark.Words == other is PaperMark.Words;

    // With a blank after each line but the last, for whoever has the lines read aloud or copies them.
    private void Draw(XGraphics graphics, PaperMark[] marks)
    {
        for (int i = 0; i < marks.Length; i++)
        {
            Draw(graphics, marks[i], i + 1 < marks.Length ? " " : "");
        }
    }

    private void Draw(XGraphics graphics, PaperMark mark, string after)
    {
        switch (mark)
        {
            case PaperMark.Words words:
                graphics.DrawString(words.Text + after, Font(words.Style), XBrushes.Black, words.X, words.Y);
                break;
            case PaperMark.Rule rule:
                graphics.DrawLine(new XPen(XColors.Black, rule.Thickness), rule.X, rule.Y, rule.X + rule.Width, rule.Y);
                break;
            case PaperMark.Drawing drawing:
                new PdfPicture(_letters, graphics, drawing).Draw();
                break;
            default:
                throw new UnreachableException();
        }
    }

    private XFont Font(PaperStyle style)
    {
        if (!_fonts.TryGetValue(style, out XFont? font))
        {
            font = PaperLetters.Font(style.Face, style.Size);
            _fonts.Add(style, font);
        }

        return font;
    }

    // The file counts y upwards from the foot of the page.
    private static XRect Bounds(PaperMark mark) => mark is PaperMark.Drawing drawing
        ? new XRect(
            drawing.X,
            PaperSheet.Height - drawing.Y - drawing.Scale * drawing.Picture.Height,
            drawing.Scale * drawing.Picture.Width,
            drawing.Scale * drawing.Picture.Height)
        : default;

    private void Add(PaperBookmark bookmark, PdfPage sheet)
    {
        PdfOutline entry = new(bookmark.Text, sheet, opened: true)
        {
            PageDestinationType = PdfPageDestinationType.Xyz,
            Left = 0,
            Top = PaperSheet.Height - bookmark.Y,
        };
        (bookmark.Level > 2 && _section is not null ? _section.Outlines : _document.Outlines).Add(entry);
        _section = bookmark.Level == 2 ? entry : _section;
    }

    private byte[] Bytes(UInt128 digest)
    {
        string id = string.Concat(Enumerable.Range(0, 16).Select(i => (char)(byte)(digest >> (8 * i))));
        _document.Internals.FirstDocumentID = id;
        _document.Internals.SecondDocumentID = id;
        using PdfStamp bytes = new(_document, PaperDigest.Letters(digest));
        _document.Save(bytes, closeStream: false);
        return bytes.ToArray();
    }
}
