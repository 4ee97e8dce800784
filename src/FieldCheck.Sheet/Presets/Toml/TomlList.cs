using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Presets.Toml;

/// <summary>Things one after the other: in brackets, or tables under headers <c>[[ … ]]</c>.</summary>
internal sealed class TomlList(TomlSpan span, KeyPath path, bool underHeaders) : TomlNode(span, path)
{
    internal bool UnderHeaders { get; } = underHeaders;

    internal List<TomlNode> Items { get; } = [];
}
