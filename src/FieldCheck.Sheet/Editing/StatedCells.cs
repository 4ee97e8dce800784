using System.Collections.Immutable;
using System.Diagnostics;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Sheet.Editing;

/// <summary>The cells of a row of what is stated.</summary>
internal static class StatedCells
{
    private static readonly ImmutableArray<string> Extremes = ["max", "min"];

    internal static ImmutableArray<string> Bases { get; } = ["service", "factored", "unknown"];

    /// <summary>What a figure may be stated for: each combination, each case with a load, the extremes of several.</summary>
    internal static ImmutableArray<string> Answers(BeamDocument document)
    {
        ImmutableArray<string> combinations = Combinations(document);
        IEnumerable<string> cases = document.Loads.Select(load => load.Case ?? LoadCases.Default)
            .Concat(document.SelfWeight?.Case is string own ? [own] : []);
        return
        [
            .. combinations.Concat(cases).Concat(combinations.Length > 1 ? Extremes : [])
                .Where(name => name.Length > 0)
                .Distinct(StringComparer.Ordinal),
        ];
    }

    internal static string? TextOf(StatedEntry stated, FormColumn column) => column switch
    {
        FormColumn.Vertical => stated.Vertical,
        FormColumn.Horizontal => stated.Horizontal,
        FormColumn.Moment => stated.Moment,
        FormColumn.Under => Under(stated),
        FormColumn.Basis => stated.Basis,
        FormColumn.Allow => stated.Tolerance,
        FormColumn.Source => stated.Source,
        FormColumn.Support => stated.Support,
        _ => throw new UnreachableException(),
    };

    internal static StatedEntry Type(StatedEntry stated, FormColumn column, string? text, BeamDocument document)
    {
        UnitSystem system = document.Units;
        string? Figure(QuantityKind kind) => text is null ? null : CellShorthand.Expand(text, kind, system);
        return column switch
        {
            FormColumn.Vertical => stated with { Vertical = Figure(QuantityKind.Force) },
            FormColumn.Horizontal => stated with { Horizontal = Figure(QuantityKind.Force) },
            FormColumn.Moment => stated with { Moment = Figure(QuantityKind.Moment) },
            FormColumn.Under => TypeUnder(stated, text, document),
            FormColumn.Basis => stated with { Basis = text is null ? null : SupportCells.Whole(text, Bases) },
            FormColumn.Allow => stated with { Tolerance = Figure(QuantityKind.Share) },
            FormColumn.Source => stated with { Source = text },
            FormColumn.Support => stated with { Support = text },
            _ => throw new UnreachableException(),
        };
    }

    internal static FormColumn ColumnOf(string key) => key switch
    {
        "horizontal" => FormColumn.Horizontal,
        "moment" => FormColumn.Moment,
        "combination" or "case" or "extreme" => FormColumn.Under,
        "basis" => FormColumn.Basis,
        "tolerance" => FormColumn.Allow,
        "source" => FormColumn.Source,
        "support" => FormColumn.Support,
        _ => FormColumn.Vertical,
    };

    private static string? Under(StatedEntry stated)
    {
        string[] set = [.. new[] { stated.Combination, stated.Case, stated.Extreme }.OfType<string>()];
        return set.Length == 0 ? null : string.Join(", ", set);
    }

    /// <summary>
    /// Tells what the text names: an extreme, a combination, a case; the beginning of only one of them will do. What names
    /// none is taken for a combination, to be mended.
    /// </summary>
    private static StatedEntry TypeUnder(StatedEntry stated, string? text, BeamDocument document)
    {
        // A file may set several: accepted again, they stay.
        if (text is not null && text == Under(stated))
        {
            return stated;
        }

        StatedEntry without = stated with { Combination = null, Case = null, Extreme = null };
        if (text is null)
        {
            return without;
        }

        ImmutableArray<string> combinations = Combinations(document);
        ImmutableArray<string> cases = new LoadCases(document).Known;
        string named = Named(text, [.. Extremes.Concat(combinations).Concat(cases).Distinct(StringComparer.Ordinal)]);
        return Extremes.Contains(named) ? without with { Extreme = named }
            : !combinations.Contains(named) && cases.Contains(named) ? without with { Case = named }
            : without with { Combination = named };
    }

    private static ImmutableArray<string> Combinations(BeamDocument document) => document.Combinations.Count == 0
        ? [CombinationRows.AllLoads]
        : [.. document.Combinations.Select(row => row.Name).OfType<string>()];

    // The whole name goes before the beginning of a longer one.
    private static string Named(string text, ImmutableArray<string> names) =>
        names.FirstOrDefault(name => name.Equals(text, StringComparison.Ordinal))
        ?? names.FirstOrDefault(name => name.Equals(text, StringComparison.OrdinalIgnoreCase))
        ?? SupportCells.Whole(text, names);
}
