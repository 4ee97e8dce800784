namespace FieldCheck.Sheet.Presets;

/// <summary>A problem and where it stands in its file.</summary>
/// <param name="File">The file, as it was named.</param>
/// <param name="Line">The line, counted from 1.</param>
/// <param name="Column">The column, counted from 1.</param>
/// <param name="Key">The key path with rows counted from 1; empty for the whole file.</param>
/// <param name="Text">What is wrong and what was expected.</param>
public sealed record FileProblem(string File, int Line, int Column, string Key, string Text)
{
    /// <inheritdoc/>
    public override string ToString() => $"{File}:{Line}:{Column}: {(Key.Length > 0 ? Key + ": " : "")}{Text}";
}
