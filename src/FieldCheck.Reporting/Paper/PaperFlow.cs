using System.Collections.Immutable;

namespace FieldCheck.Reporting.Paper;

/// <summary>Fills pages with pieces.</summary>
internal sealed class PaperFlow
{
    private readonly List<PaperPage> _pages = [];
    private readonly ImmutableArray<PaperMark>.Builder _marks = ImmutableArray.CreateBuilder<PaperMark>();
    private readonly ImmutableArray<PaperBookmark>.Builder _bookmarks = ImmutableArray.CreateBuilder<PaperBookmark>();
    private double _taken;

    private PaperFlow()
    {
    }

    /// <summary>Pages that hold the pieces, in order.</summary>
    internal static ImmutableArray<PaperPage> Of(IEnumerable<PaperPiece> pieces)
    {
        PaperFlow flow = new();
        foreach (ImmutableArray<PaperPiece> group in Groups(pieces))
        {
            flow.Put(group);
        }

        flow.EndPage();
        return [.. flow._pages];
    }

    /// <summary>Pieces that belong on one page.</summary>
    private static IEnumerable<ImmutableArray<PaperPiece>> Groups(IEnumerable<PaperPiece> pieces)
    {
        ImmutableArray<PaperPiece>.Builder group = ImmutableArray.CreateBuilder<PaperPiece>();
        foreach (PaperPiece piece in pieces)
        {
            group.Add(piece);
            if (!piece.KeepsNext)
            {
                yield return group.ToImmutable();
                group.Clear();
            }
        }

        if (group.Count > 0)
        {
            yield return group.ToImmutable();
        }
    }

    private void Put(ImmutableArray<PaperPiece> group)
    {
        double height = group.Sum(piece => piece.Above + piece.Height);
        if (_taken + height > PaperSheet.BodyHeight && _taken > 0)
        {
            EndPage();
        }

        foreach (PaperPiece piece in group)
        {
            Put(piece);
        }
    }

    private void Put(PaperPiece piece)
    {
        if (_taken + piece.Above + piece.Height > PaperSheet.BodyHeight && _taken > 0)
        {
            EndPage();
        }

        if (_taken > 0)
        {
            _taken += piece.Above;
        }
        else if (piece.Head is PaperPiece head)
        {
            Place(head);
        }

        Place(piece);
    }

    private void Place(PaperPiece piece)
    {
        double top = PaperSheet.BodyTop + _taken;
        _marks.AddRange(piece.Marks.Select(mark => mark with { X = PaperSheet.Left + mark.X, Y = top + mark.Y }));
        if (piece.Bookmark is PaperBookmark bookmark)
        {
            _bookmarks.Add(bookmark with { Y = top });
        }

        _taken += piece.Height;
    }

    private void EndPage()
    {
        _pages.Add(new PaperPage(_marks.ToImmutable(), _bookmarks.ToImmutable()));
        _marks.Clear();
        _bookmarks.Clear();
        _taken = 0;
    }
}
