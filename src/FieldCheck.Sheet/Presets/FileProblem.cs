using System.Collections.Immutable;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Presets;

/// <summary>A problem and where it stands in its file.</summary>
/// <param name="File">The file, as it was named.</param>
/// <param name="Line">The line, counted from 1; 0: it is of the file as a whole.</param>
/// <param name="Column">The column, counted from 1.</param>
/// <param name="Key">The key path with rows counted from 1; empty for the whole file.</param>
/// <param name="Text">What is wrong and what was expected.</param>
public sealed record FileProblem(string File, int Line, int Column, string Key, string Text)
{
    /// <summary>How many problems of one file are told at most.</summary>
    public const int Most = 20;

    private const int LongestKey = 200;

    /// <summary>A problem of a file as a whole: it cannot be had, or holds no text.</summary>
    /// <param name="file">The file, as it was named.</param>
    /// <param name="text">What is wrong.</param>
    public static FileProblem OfWhole(string file, string text) => new(file, 0, 0, "", text);

    /// <summary>The problems of one file as they are told: in order of line and column, and no more than <see cref="Most"/>.</summary>
    /// <param name="problems">The problems, in any order.</param>
    public static ImmutableArray<FileProblem> InOrder(IEnumerable<FileProblem> problems) =>
        [.. problems.Distinct().OrderBy(problem => problem.Line).ThenBy(problem => problem.Column).Take(Most)];

    /// <inheritdoc/>
    public override string ToString() =>
        $"{File}:{(Line > 0 ? $"{Line}:{Column}:" : "")} {(Key.Length > 0 ? Shown(Key) + ": " : "")}{Text}";

    /// <summary>A key path as it is shown: a name in a hostile file may be as long as the file.</summary>
    internal static string Shown(string key) => key.Length <= LongestKey ? key : Found.Cut(key, LongestKey) + "...";
}
