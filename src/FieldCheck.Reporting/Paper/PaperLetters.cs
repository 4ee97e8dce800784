using System.Collections.Immutable;
using System.Text;
using FieldCheck.Sheet.Units;
using PdfSharp.Drawing;
using PdfSharp.Fonts;
using PdfSharp.Pdf;

namespace FieldCheck.Reporting.Paper;

/// <summary>Measures words and breaks them into lines; knows which letters the fonts have.</summary>
internal sealed class PaperLetters
{
    private const double Em = 1000;
    private static readonly Rune Substitute = new(0x25A1);

    private readonly XGraphics _ruler =
        XGraphics.CreateMeasureContext(new XSize(Em, Em), XGraphicsUnit.Point, XPageDirection.Downwards);

    private readonly Dictionary<PaperFace, XFont> _fonts = [];
    private readonly Dictionary<(PaperFace Face, Rune Rune), double> _widths = [];

    internal PaperLetters() => GlobalFontSettings.FontResolver = PaperFonts.Instance;

    /// <summary>A font for drawing.</summary>
    internal static XFont Font(PaperFace face, double size) => new(
        face == PaperFace.Mono ? PaperFonts.Mono : PaperFonts.Sans,
        size,
        face == PaperFace.Bold ? XFontStyleEx.Bold : XFontStyleEx.Regular,
        new XPdfFontOptions(PdfFontEncoding.Unicode));

    /// <summary>A text as it is drawn: with a visible substitute for every control character and for what the font lacks.</summary>
    internal string Shown(string text, PaperFace face)
    {
        StringBuilder shown = new(text.Length);
        foreach (Rune rune in TextSafety.ForTerminal(text).EnumerateRunes())
        {
            _ = GlyphHelper.GlyphIndexFromCodePoint(rune.Value, Em1(face)) == 0
                ? shown.Append(Substitute)
                : shown.Append(rune);
        }

        return shown.ToString();
    }

    /// <summary>Width of a text [pt].</summary>
    internal double WidthOf(string text, PaperStyle style)
    {
        double width = 0;
        foreach (Rune rune in text.EnumerateRunes())
        {
            width += WidthOf(rune, style.Face);
        }

        return width / Em * style.Size;
    }

    /// <summary>Breaks a text at its blanks, never a number from its unit; too long a word at its hyphens, and else anywhere.</summary>
    /// <param name="text">The text.</param>
    /// <param name="style">Its letters.</param>
    /// <param name="width">How long a line may be [pt].</param>
    /// <returns>The lines, as they are drawn; none for a text without words.</returns>
    internal ImmutableArray<string> Lines(string text, PaperStyle style, double width)
    {
        ImmutableArray<string>.Builder lines = ImmutableArray.CreateBuilder<string>();
        string line = "";
        foreach ((string word, bool isRest) in TextFlow.Words(Shown(text, style.Face))
            .SelectMany(word => Parts(word, style, width).Select((part, i) => (part, i > 0))))
        {
            string longer = line.Length == 0 ? word : $"{line} {word}";
            if (line.Length > 0 && (isRest || WidthOf(longer, style) > width))
            {
                lines.Add(line);
                longer = word;
            }

            line = longer;
        }

        return line.Length == 0 ? lines.ToImmutable() : [.. lines, line];
    }

    /// <summary>A text on one line, with an ellipsis in the place of what does not fit.</summary>
    internal string Cut(string text, PaperStyle style, double width)
    {
        string shown = Shown(text, style.Face);
        if (WidthOf(shown, style) <= width)
        {
            return shown;
        }

        const string Ellipsis = "\u2026";
        return Chunks(shown, style, width - WidthOf(Ellipsis, style)).First().TrimEnd() + Ellipsis;
    }

    /// <summary>Cuts a text, blanks or not, into parts that fit; one at least, a letter at least in each.</summary>
    internal IEnumerable<string> Chunks(string word, PaperStyle style, double width)
    {
        StringBuilder part = new();
        double taken = 0;
        foreach (Rune rune in word.EnumerateRunes())
        {
            double letter = WidthOf(rune, style.Face) / Em * style.Size;
            if (part.Length > 0 && taken + letter > width)
            {
                yield return part.ToString();
                part.Clear();
                taken = 0;
            }

            part.Append(rune);
            taken += letter;
        }

        yield return part.ToString();
    }

    private IEnumerable<string> Parts(string word, PaperStyle style, double width) =>
        WidthOf(word, style) <= width ? [word]
        : word.Contains(' ', StringComparison.Ordinal) ? word.Split(' ').SelectMany(part => Parts(part, style, width))
        : Broken(word, style, width);

    private IEnumerable<string> Broken(string word, PaperStyle style, double width)
    {
        string piece = "";
        foreach (string part in TextFlow.Parts(word).SelectMany(part => WidthOf(part, style) <= width ? [part] : Chunks(part, style, width)))
        {
            if (piece.Length > 0 && WidthOf(piece + part, style) > width)
            {
                yield return piece;
                piece = "";
            }

            piece += part;
        }

        yield return piece;
    }

    private double WidthOf(Rune rune, PaperFace face)
    {
        if (!_widths.TryGetValue((face, rune), out double width))
        {
            width = _ruler.MeasureString(rune.ToString(), Em1(face)).Width;
            _widths.Add((face, rune), width);
        }

        return width;
    }

    private XFont Em1(PaperFace face)
    {
        if (!_fonts.TryGetValue(face, out XFont? font))
        {
            font = Font(face, Em);
            _fonts.Add(face, font);
        }

        return font;
    }
}
