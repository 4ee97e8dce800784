namespace FieldCheck.Sheet.Presets.Toml;

/// <summary>A header and what stands under it, while it is being changed.</summary>
/// <param name="gap">The lines above it that belong to no statement: empty lines, and comments that stand by themselves.</param>
/// <param name="key">The key of the top that its header begins with; null for the top of the file itself.</param>
internal sealed class BlockDraft(string gap, string? key)
{
    internal string Gap { get; set; } = gap;

    internal string? Key { get; } = key;

    internal List<PieceDraft> Pieces { get; } = [];

    /// <summary>True: it goes; comments of its gap stay.</summary>
    internal bool IsRemoved { get; set; }

    internal string Text => string.Concat(Pieces.Select(piece => piece.Lead + piece.Text));

    /// <summary>Adds lines that belong to no statement.</summary>
    internal void Add(List<string> lines)
    {
        if (lines.Count > 0)
        {
            Pieces.Add(new PieceDraft("", string.Concat(lines), null, null));
        }
    }

    /// <summary>Changes the lines of a statement.</summary>
    internal void Replace(int statement, Func<PieceDraft, PieceDraft> change)
    {
        int index = Pieces.FindIndex(piece => piece.Statement == statement);
        Pieces[index] = change(Pieces[index]);
    }

    /// <summary>Takes a statement out, with its own comments.</summary>
    internal void Remove(int statement) => Pieces.RemoveAll(piece => piece.Statement == statement);
}
