using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Presets.Toml;

/// <summary>A string, number, truth value or date.</summary>
/// <param name="span">Where it stands, quotation marks included.</param>
/// <param name="path">Its key path.</param>
/// <param name="text">What it says; a line break in a string of several lines is a line feed.</param>
/// <param name="isBare">True: it stands without quotation marks.</param>
/// <param name="textStart">
/// How far after the start of <paramref name="span"/> the text stands, character for character; null where it does not.
/// </param>
internal sealed class TomlCell(TomlSpan span, KeyPath path, string text, bool isBare, int? textStart) : TomlNode(span, path)
{
    internal string Text { get; } = text;

    internal bool IsBare { get; } = isBare;

    internal int? TextStart { get; } = textStart;
}
