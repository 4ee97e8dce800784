using System.Collections.Immutable;
using FieldCheck.Reporting.Paper;

namespace FieldCheck.Reporting.Pages;

/// <summary>Writes a record as PDF: A4, black on white, with its own fonts, bookmarks and structure.</summary>
public static class PdfRecord
{
    /// <summary>Writes a record; the same record gives the same bytes.</summary>
    /// <param name="record">The record.</param>
    public static byte[] Of(CheckRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        PaperLetters letters = new();
        return PdfPages.Of(record, Pages(record, letters), letters);
    }

    /// <summary>The pages of a record, each with its frame.</summary>
    internal static ImmutableArray<PaperPage> Pages(CheckRecord record, PaperLetters letters) =>
        new PaperFrame(letters, record).Around(PaperFlow.Of(new PaperBlocks(letters).Of(record)));
}
