using System.Collections.Immutable;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Editing;

/// <summary>
/// The cases of a beam, each where the file names it first: own weight's, those of the loads, of the rolling loads, of
/// the patterns and, without loads, of the combinations. Never none: a beam without loads has the case of a load to come.
/// </summary>
/// <remarks>Called by another name everywhere, a case keeps its row.</remarks>
public static class CaseRows
{
    /// <summary>The rows.</summary>
    /// <param name="document">The beam.</param>
    public static ImmutableArray<CaseRow> Of(BeamDocument document)
    {
        ArgumentNullException.ThrowIfNull(document);
        string[] loads = [.. document.Loads.Select(load => load.Case ?? LoadCases.Default)];
        string[] rolling = [.. document.Rolling.Select(load => load.Case ?? LoadCases.Default)];
        string[] patterns = [.. document.Patterns.Select(pattern => pattern.Case).OfType<string>()];
        string? ownWeight = document.SelfWeight?.Case;
        string[] names =
        [
            .. new[] { ownWeight }.OfType<string>()
                .Concat(loads)
                .Concat(rolling)
                .Concat(patterns)
                .Concat(document.Combinations.SelectMany(row => row.Factors).Select(factor => factor.Name))
                .Where(name => !string.IsNullOrWhiteSpace(name))
                .Distinct(StringComparer.Ordinal)
                .DefaultIfEmpty(LoadCases.Default),
        ];
        return
        [
            .. names.Select(name => new CaseRow(
                name,
                loads.Count(other => other == name),
                rolling.Count(other => other == name),
                ownWeight == name,
                patterns.Contains(name))),
        ];
    }

    /// <summary>Where a case stands among them; null where there is no such case.</summary>
    /// <param name="document">The beam.</param>
    /// <param name="name">Its name.</param>
    public static int? IndexOf(BeamDocument document, string? name)
    {
        int index = Of(document).ToList().FindIndex(row => row.Name == name);
        return index < 0 ? null : index;
    }
}
