using System.Collections.Immutable;

namespace FieldCheck.Reporting.Paper;

/// <summary>What is never parted by the end of a page. Its marks are placed from its own top, at the left of the block.</summary>
/// <param name="Height">Its height [pt]; no more than a page holds.</param>
/// <param name="Marks">What it is made of.</param>
internal sealed record PaperPiece(double Height, ImmutableArray<PaperMark> Marks)
{
    /// <summary>Kept free above it, but at the top of a page [pt].</summary>
    internal double Above { get; init; }

    /// <summary>True: the next piece stands on the same page, as long as a page holds both.</summary>
    internal bool KeepsNext { get; init; }

    /// <summary>What is repeated above it at the top of a page: the head of its table.</summary>
    internal PaperPiece? Head { get; init; }

    /// <summary>The heading that it is, for the list of contents beside the pages; null: it is none.</summary>
    internal PaperBookmark? Bookmark { get; init; }
}
