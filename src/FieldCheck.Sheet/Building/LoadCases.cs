using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Building;

/// <summary>The load cases of one beam by name.</summary>
internal sealed class LoadCases
{
    /// <summary>The case of a load that names none.</summary>
    internal const string Default = "live";

    /// <summary>Names that a combination may give a factor although no load stands in them.</summary>
    private static readonly string[] Usual =
        ["dead", "live", "roof_live", "snow", "rain", "wind", "earthquake", "construction"];

    internal LoadCases(BeamDocument document)
    {
        Known = [.. Usual.Concat(WithLoads(document)).Distinct(StringComparer.Ordinal)];
    }

    /// <summary>Every name that a case may be called by here.</summary>
    internal ImmutableArray<string> Known { get; }

    /// <summary>What is wrong with a name that must be one of a case; null: nothing.</summary>
    internal string? Doubt(string name) =>
        Known.Contains(name, StringComparer.Ordinal) || string.IsNullOrWhiteSpace(name)
            ? null
            : ProblemText.UnknownCase(name, Known);

    /// <summary>The cases that loads, own weight or rolling loads stand in, each in the order of its first.</summary>
    internal static ImmutableArray<string> WithLoads(BeamDocument document) =>
    [
        .. new[] { document.SelfWeight?.Case }.OfType<string>()
            .Concat(document.Loads.Select(load => load.Case ?? Default))
            .Concat(document.Rolling.Select(load => load.Case ?? Default))
            .Distinct(StringComparer.Ordinal),
    ];

    /// <summary>
    /// Every case that something names: with its standing loads, or none where only a rolling load or a pattern names it.
    /// </summary>
    internal static ImmutableArray<LoadCase> Of(BeamDocument document, ImmutableArray<NamedLoad> loads) =>
    [
        .. WithLoads(document)
            .Concat(document.Patterns.Select(pattern => pattern.Case).OfType<string>())
            .Distinct(StringComparer.Ordinal)
            .Select(name => new LoadCase(
                name, [.. loads.Where(load => load.Case == name).Select(load => load.Load)])),
    ];
}
