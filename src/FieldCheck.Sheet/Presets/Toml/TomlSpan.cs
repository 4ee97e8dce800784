using Tomlyn.Syntax;

namespace FieldCheck.Sheet.Presets.Toml;

/// <summary>A stretch of a file's text.</summary>
/// <param name="Start">Offset of its first character.</param>
/// <param name="End">Offset after its last character.</param>
/// <param name="Line">Line of its first character, counted from 1.</param>
/// <param name="Column">Column of its first character, counted from 1 in characters, not in UTF-16 units.</param>
internal readonly record struct TomlSpan(int Start, int End, int Line, int Column)
{
    /// <summary>The start of a file.</summary>
    internal static TomlSpan Top => new(0, 0, 1, 1);

    internal static TomlSpan Of(SyntaxNodeBase node)
    {
        SourceSpan span = node.Span;
        return new TomlSpan(span.Offset, span.Offset + span.Length, span.Start.Line + 1, span.Start.Column + 1);
    }

    /// <summary>What stands here.</summary>
    internal string In(string text) => text[Start..End];
}
