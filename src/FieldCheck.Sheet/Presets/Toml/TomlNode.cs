using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Presets.Toml;

/// <summary>Something that stands in a file, with its place. The kinds are cell, table and list.</summary>
/// <param name="span">Where its value stands; of a table under a header, the header; of an implied one, the key that implies it.</param>
/// <param name="path">Its key path.</param>
internal abstract class TomlNode(TomlSpan span, KeyPath path)
{
    internal TomlSpan Span { get; set; } = span;

    internal KeyPath Path { get; } = path;

    /// <summary>
    /// The statements that write it, by their number in the file: keys that lead to or through it, and headers that do.
    /// What stands under such a header is not listed again; nor is anything inside a value.
    /// </summary>
    internal List<int> Statements { get; } = [];
}
