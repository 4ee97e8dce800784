using System.Collections.Immutable;
using FieldCheck.Reporting.Pages;

namespace FieldCheck.Reporting.Paper;

/// <summary>What stands at the head and the foot of every page, so that a single page tells what it is a page of.</summary>
internal sealed class PaperFrame(PaperLetters letters, CheckRecord record)
{
    private const int Digits = 12;
    private const double Gap = 16;
    private const double Line = 0.5;
    private const double RuleFromText = 5;

    private static PaperStyle Style => PaperStyle.Frame;

    /// <summary>The pages with their frames.</summary>
    internal ImmutableArray<PaperPage> Around(ImmutableArray<PaperPage> pages) =>
    [
        .. pages.Select((page, i) => page with
        {
            Marks = [.. Marks($"page {i + 1} of {pages.Length}"), .. page.Marks],
        }),
    ];

    private IEnumerable<PaperMark> Marks(string count)
    {
        const double Bottom = PaperSheet.Top + PaperSheet.BlockHeight;
        double foot = Bottom - Style.Line + Style.Base;
        double right = letters.WidthOf(count, Style);

        // Rules first: the library sets a page up before what is drawn first, and ends a run of text to do so, which would cut
        // through the marks around the words (PdfElements).
        return
        [
            Rule(PaperSheet.Top + Style.Line + RuleFromText - 3),
            Rule(Bottom - Style.Line - RuleFromText),
            Words(0, PaperSheet.Top + Style.Base, letters.Cut(record.Title, Style, PaperSheet.BlockWidth)),
            Words(0, foot, letters.Cut(Source(), Style, PaperSheet.BlockWidth - right - Gap)),
            Words(PaperSheet.BlockWidth - right, foot, count),
        ];
    }

    // The digits first: however long the name of the file is, they are not cut.
    private string Source() =>
        string.Join("   ", new[] { Digest(), record.Fact("file") }.Where(part => part.Length > 0));

    private string Digest() => record.Fact("SHA-256") is { Length: >= Digits } digest ? $"SHA-256 {digest[..Digits]}" : "";

    private static PaperMark.Words Words(double x, double y, string text) => new(PaperSheet.Left + x, y, null, text, Style);

    private static PaperMark.Rule Rule(double y) => new(PaperSheet.Left, y, PaperSheet.BlockWidth, Line);
}
