using System.Text;

namespace FieldCheck.Sheet.Presets.Toml;

/// <summary>A file as blocks of whole lines, while it is being changed.</summary>
/// <param name="lineEnd">How its lines end.</param>
internal sealed class FileDraft(string lineEnd)
{
    /// <summary>How its lines end.</summary>
    internal string LineEnd { get; } = lineEnd;

    /// <summary>Its blocks; the first is the top of the file, without header.</summary>
    internal List<BlockDraft> Blocks { get; } = [];

    /// <summary>The lines after the last block.</summary>
    internal string Tail { get; set; } = "";

    /// <summary>A text with line feeds, with the line ends of this file.</summary>
    internal string WithLineEnds(string text) => text.Replace("\n", LineEnd, StringComparison.Ordinal);

    /// <summary>The empty lines above a new block: as many as above the last block there is, one at least by itself.</summary>
    internal string NewGap()
    {
        List<BlockDraft> headed = Blocks.FindAll(block => block is { Key: not null, IsRemoved: false });
        int lines = headed.Count < 2
            ? 1
            : TomlLayout.Lines(headed[^1].Gap).AsEnumerable().Reverse().TakeWhile(line => !TomlLayout.IsComment(line)).Count();
        return string.Concat(Enumerable.Repeat(LineEnd, lines));
    }

    /// <summary>A new block, with empty lines above it as the other blocks have them.</summary>
    internal BlockDraft NewBlock(string key, string text)
    {
        BlockDraft block = new(NewGap(), key);
        block.Pieces.Add(new PieceDraft("", WithLineEnds(text), null, null));
        return block;
    }

    /// <summary>Takes a block from its place to stand at another; what stood above it and is not its own stays.</summary>
    /// <param name="block">The block.</param>
    /// <param name="index">Where it shall stand, counted before it is taken away.</param>
    internal void Move(BlockDraft block, int index)
    {
        int from = Blocks.IndexOf(block);
        Blocks[from] = new BlockDraft(block.Gap, block.Key) { IsRemoved = true };
        block.Gap = NewGap();
        Blocks.Insert(index, block);
    }

    /// <summary>The whole text; its last line has its end.</summary>
    internal string Text()
    {
        StringBuilder text = new();
        string above = "";
        foreach (BlockDraft block in Blocks)
        {
            above = Joined(above, block.Gap);
            if (!block.IsRemoved)
            {
                text.Append(above).Append(block.Text);
            }

            above = block.IsRemoved && TomlLayout.Lines(above).Exists(TomlLayout.IsComment) ? above : "";
        }

        return text.Append(Joined(above, Tail)).ToString();
    }

    /// <summary>What stood above a block that went, and what stands above the next one: empty lines are not doubled.</summary>
    private string Joined(string above, string gap) =>
        above.EndsWith(LineEnd + LineEnd, StringComparison.Ordinal) && gap.StartsWith(LineEnd, StringComparison.Ordinal)
            ? above + gap[LineEnd.Length..]
            : above + gap;
}
