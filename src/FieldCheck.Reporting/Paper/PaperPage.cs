using System.Collections.Immutable;

namespace FieldCheck.Reporting.Paper;

/// <summary>A page.</summary>
/// <param name="Marks">What stands on it, in the order in which it is read.</param>
/// <param name="Bookmarks">The headings on it.</param>
internal sealed record PaperPage(ImmutableArray<PaperMark> Marks, ImmutableArray<PaperBookmark> Bookmarks);
