namespace FieldCheck.Sheet.Presets.Toml;

/// <summary>What is wrong with a text, and where.</summary>
/// <param name="Line">The line, counted from 1.</param>
/// <param name="Column">The column, counted from 1.</param>
/// <param name="Key">The key path; empty for the whole file.</param>
/// <param name="Text">What is wrong and what was expected.</param>
internal sealed record TomlProblem(int Line, int Column, string Key, string Text)
{
    internal static TomlProblem At(TomlSpan span, string key, string text) => new(span.Line, span.Column, key, text);

    /// <summary>The problem in a file of this name.</summary>
    internal FileProblem In(string name) => new(name, Line, Column, Key, Text);
}
