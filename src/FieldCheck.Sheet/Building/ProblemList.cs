using System.Collections.Immutable;
using System.Globalization;
using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Sheet.Building;

/// <summary>Gathers everything that is wrong with one beam, so that it can all be told together.</summary>
internal sealed class ProblemList
{
    private static readonly string[] Tables =
    [
        "title", "notes", "display", "ask", "rename", "shear_deformation", "record", "span", "support", "hinge", "load",
        "self_weight", "section", "material", "combination", "pattern", "rolling", "stated", "tolerance", "limits",
    ];

    private readonly List<Problem> _problems = [];

    internal bool IsEmpty => _problems.Count == 0;

    internal int Count => _problems.Count;

    /// <summary>Adds a problem; names that its text quotes are made safe to show here, once for all of them.</summary>
    internal void Add(string key, string text, int offset = 0) =>
        _problems.Add(new Problem(key, TextSafety.ForTerminal(text), offset));

    /// <summary>The problems by table and row; within a row in the order they were found.</summary>
    internal ImmutableArray<Problem> InOrder() =>
        [.. _problems.OrderBy(problem => TableOf(problem.Key)).ThenBy(problem => RowOf(problem.Key))];

    private static int TableOf(string key) => Array.IndexOf(Tables, key.Split('[', '.')[0]);

    private static int RowOf(string key)
    {
        int open = key.IndexOf('[', StringComparison.Ordinal);
        int close = key.IndexOf(']', StringComparison.Ordinal);
        return open >= 0 && close > open
            && int.TryParse(key.AsSpan(open + 1, close - open - 1), CultureInfo.InvariantCulture, out int row)
                ? row
                : 0;
    }
}
