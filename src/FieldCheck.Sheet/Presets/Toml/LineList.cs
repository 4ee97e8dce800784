using System.Text;

namespace FieldCheck.Sheet.Presets.Toml;

/// <summary>A list in brackets that is written over several lines, with the comments that belong to its items.</summary>
internal sealed class LineList
{
    private readonly Dictionary<TomlSpan, string> _above = [];
    private readonly Dictionary<TomlSpan, string> _behind = [];
    private string _opening = "";
    private string _indent = "  ";
    private string _closing = "";

    private LineList()
    {
    }

    /// <summary>Takes a list apart.</summary>
    /// <param name="text">The file.</param>
    /// <param name="whole">The list, brackets included.</param>
    /// <param name="items">Its items; one or more.</param>
    /// <returns>The list, or null where it stands on one line.</returns>
    internal static LineList? Of(string text, TomlSpan whole, TomlSpan[] items)
    {
        LineList list = new();
        string between = text[(whole.Start + 1)..items[0].Start];
        if (!between.Contains('\n') && !text[items[^1].End..whole.End].Contains('\n'))
        {
            return null;
        }

        (list._opening, string above) = Split(between);
        for (int i = 0; i < items.Length; i++)
        {
            list._above[items[i]] = Comments(above);
            list._indent = i == 0 && above.Length > 0 ? above[(above.LastIndexOf('\n') + 1)..] : list._indent;
            between = text[items[i].End..(i + 1 < items.Length ? items[i + 1].Start : whole.End - 1)];
            (list._behind[items[i]], above) = Split(WithoutComma(between));
        }

        list._closing = above;
        return list;
    }

    /// <summary>The list with other items, each on a line of its own.</summary>
    internal string With(List<(TomlSpan? Old, string Text)> items, string lineEnd)
    {
        StringBuilder text = new StringBuilder("[").Append(_opening).Append(lineEnd);
        foreach ((TomlSpan? old, string item) in items)
        {
            text.Append(old is null ? "" : _above[old.Value]).Append(_indent).Append(item).Append(',')
                .Append(old is null ? "" : _behind[old.Value]).Append(lineEnd);
        }

        return text.Append(_closing).Append(']').ToString();
    }

    /// <summary>What stands behind an item on its line, and the lines after it.</summary>
    private static (string Behind, string Below) Split(string between)
    {
        int end = between.IndexOf('\n', StringComparison.Ordinal);
        return end < 0 ? ("", "") : (between[..end].TrimEnd(), between[(end + 1)..]);
    }

    private static string Comments(string above) =>
        string.Concat(TomlLayout.Lines(above).Where(TomlLayout.IsComment));

    private static string WithoutComma(string between)
    {
        // A comment may hold commas too; the one that parts the items stands before it, or on a line of its own.
        string[] lines = between.Split('\n');
        for (int i = 0; i < lines.Length; i++)
        {
            int comma = lines[i].IndexOf(',', StringComparison.Ordinal);
            int comment = lines[i].IndexOf('#', StringComparison.Ordinal);
            if (comma >= 0 && (comment < 0 || comma < comment))
            {
                lines[i] = lines[i].Remove(comma, 1);
                break;
            }
        }

        return string.Join('\n', lines);
    }
}
