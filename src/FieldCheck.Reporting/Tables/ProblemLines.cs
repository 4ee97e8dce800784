using System.Collections.Immutable;
using FieldCheck.Sheet;

namespace FieldCheck.Reporting.Tables;

/// <summary>The cells that must be mended before there are figures.</summary>
internal static class ProblemLines
{
    internal static ImmutableArray<string> Of(Calculation calculation) =>
    [
        .. calculation.Problems.Select(problem => problem.Key.Length == 0
            ? PlainAscii.Of(problem.Text)
            : PlainAscii.Of($"{problem.Key}: {problem.Text}")),
    ];
}
