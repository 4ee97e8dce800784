using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Presets.Toml;

/// <summary>Finds where in a file something stands that a key path names.</summary>
internal static class TomlPlace
{
    /// <summary>A problem at its place: the cell, or else the nearest table around it.</summary>
    internal static TomlProblem Of(TomlFile file, Problem problem)
    {
        TomlSpan span = CellOf(file, problem) is TomlCell cell ? Inside(cell, problem.Offset)
            : KeyPath.Parse(problem.Key) is KeyPath path ? Nearest(file.Root, path).Span
            : TomlSpan.Top;
        return TomlProblem.At(span, problem.Key, problem.Text);
    }

    /// <summary>The cell that a problem names; null where none stands under its keys.</summary>
    internal static TomlCell? CellOf(TomlFile file, Problem problem) =>
        KeyPath.Parse(problem.Key) is KeyPath path && Nearest(file.Root, path) is TomlCell cell && cell.Path == path ? cell : null;

    private static TomlNode Nearest(TomlNode node, KeyPath path)
    {
        foreach (KeyStep step in path.Steps)
        {
            TomlNode? below = (step, node) switch
            {
                (KeyStep.Into(string key), TomlTable table) => table[key]?.Node,
                (KeyStep.At(int row), TomlList list) => list.Items.ElementAtOrDefault(row - 1),
                _ => null,
            };
            if (below is null)
            {
                return node;
            }

            node = below;
        }

        return node;
    }

    private static TomlSpan Inside(TomlCell cell, int offset)
    {
        if (cell.TextStart is not int start)
        {
            return cell.Span;
        }

        string before = cell.Text[..Math.Clamp(offset, 0, cell.Text.Length)];
        return cell.Span with { Column = cell.Span.Column + start + before.EnumerateRunes().Count() };
    }
}
