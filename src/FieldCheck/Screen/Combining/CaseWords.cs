using System.Collections.Immutable;
using FieldCheck.Screen.FormGrid;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Editing;
using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Screen.Combining;

/// <summary>What is said of the cells of cases, combinations and rolling loads.</summary>
internal static class CaseWords
{
    /// <summary>What an empty cell says because of other cells.</summary>
    /// <param name="document">The beam.</param>
    /// <param name="place">The cell.</param>
    internal static string? Following(BeamDocument document, FormPlace place) => place switch
    {
        { Block: FormBlock.Cases, Column: FormColumn.Holds } => Holds(CaseRows.Of(document)[place.Row]),
        { Block: FormBlock.Cases } => "-",
        { Block: FormBlock.Combinations } when document.Combinations.Count == 0 => OfAllLoads(place.Column),
        { Block: FormBlock.Combinations } when place.Row < document.Combinations.Count => place.Column switch
        {
            FormColumn.Basis => "service",
            FormColumn.Name => null,
            _ => "-",
        },
        { Block: FormBlock.Rolling } when place.Row < document.Rolling.Count => place.Column switch
        {
            FormColumn.Case => "live",
            FormColumn.Impact => "-",
            _ => null,
        },
        _ => null,
    };

    /// <summary>What can be typed, with examples.</summary>
    /// <param name="place">The cell.</param>
    internal static string Hint(FormPlace place) => (place.Block, place.Column) switch
    {
        (FormBlock.Cases, FormColumn.Case) => "type another name: it is changed wherever it is used",
        (FormBlock.Cases, FormColumn.Pattern) => "Space: its loads may stand in some bays and not in others",
        (FormBlock.Cases, _) => "Space: own weight belongs to this case, or is not counted",
        (FormBlock.Combinations, FormColumn.Name) => "its name; 1.2 dead + 1.6 live types its factors too",
        (FormBlock.Combinations, FormColumn.Basis) => "Space: service (no load factors) or factored",
        (FormBlock.Combinations, _) => "how often it counts: 1.35, -1; empty: not at all",
        (_, FormColumn.Label) => "what it is called: hand truck",
        (_, FormColumn.Case) => "the case it belongs to: live, construction, other",
        (_, FormColumn.Impact) => "share added for impact: 30 %",
        _ => "12 kN, 12 kN at 1.2 m: distances from the first",
    };

    /// <summary>A cell read back; null where there is nothing to say.</summary>
    /// <param name="document">The beam.</param>
    /// <param name="place">The cell.</param>
    /// <param name="text">What stands in it.</param>
    /// <param name="units">The units that results are shown in.</param>
    internal static string? ReadBack(BeamDocument document, FormPlace place, string text, DisplayUnits units) =>
        (place.Block, place.Column) switch
        {
            (FormBlock.Cases, FormColumn.Pattern) => "its loads may stand in some bays and not in others",
            (FormBlock.Cases, FormColumn.OwnWeight) => "own weight belongs to this case",
            (FormBlock.Combinations, FormColumn.Name) => Sum(document.Combinations[place.Row]),
            (FormBlock.Combinations, FormColumn.Basis) => text == "factored"
                ? "factored: with load factors, held against design strengths"
                : "service: without load factors",
            (FormBlock.Rolling, FormColumn.Axles) => Axles(document.Rolling[place.Row], units),
            (FormBlock.Rolling, FormColumn.Impact) =>
                ShareReader.Read(text) is Reading<double>.Accepted read
                    ? $"forces times {units.Number(1 + read.Value, QuantityKind.Number)}"
                    : null,
            _ => null,
        };

    /// <summary>What is said of a text that a cell cannot take, not even to be mended; null where it can.</summary>
    /// <param name="place">The cell.</param>
    /// <param name="text">What was typed.</param>
    internal static string? NotTaken(FormPlace place, string text)
    {
        string typed = text.Trim();
        return place switch
        {
            { Block: FormBlock.Cases, Column: FormColumn.Case } when typed.Length == 0 =>
                "A case needs a name: it keeps the one it has.",
            { Block: FormBlock.Cases, Column: FormColumn.Pattern or FormColumn.OwnWeight }
                or { IsOwnWeight: true, Column: FormColumn.Size } when typed.Length > 0 && !IsAChoice(place, typed) =>
                $"Space, or type {string.Join(" or ", FormCells.ChoicesOf(place))}.",
            _ => null,
        };
    }

    private static bool IsAChoice(FormPlace place, string text) =>
        FormCells.ChoicesOf(place).Count(word => word.StartsWith(text, StringComparison.OrdinalIgnoreCase)) == 1;

    private static string Holds(CaseRow row)
    {
        string[] held =
        [
            .. row.Loads > 0 ? new[] { FormWords.Count(row.Loads, "load") } : [],
            .. row.Rolling > 0 ? new[] { FormWords.Count(row.Rolling, "rolling load") } : [],
        ];
        return held.Length > 0 ? string.Join(", ", held) : row.HasOwnWeight ? "" : "no loads yet";
    }

    private static string OfAllLoads(FormColumn column) => column switch
    {
        FormColumn.Name => "all loads",
        FormColumn.Basis => "service",
        _ => "1",
    };

    private static string? Sum(CombinationEntry row) => row.Factors.Count == 0 ? null
        : string.Concat(row.Factors.Select((factor, index) => Term(factor, index == 0)));

    private static string Term(NamedFigure factor, bool isFirst) => isFirst ? $"{factor.Text} {factor.Name}"
        : factor.Text is ['-' or '−', .. string size] ? $" - {size.TrimStart()} {factor.Name}"
        : $" + {factor.Text} {factor.Name}";

    private static string? Axles(RollingEntry row, DisplayUnits units)
    {
        ImmutableArray<(double Offset, double Force)?> read = [.. row.Axles.Select(Read)];
        if (read.IsEmpty || read.Any(axle => axle is null))
        {
            return null;
        }

        (double Offset, double Force)[] axles = [.. read.OfType<(double Offset, double Force)>()];
        string each = string.Join(", ", axles.Select(axle => axle.Offset == 0
            ? units.Say(axle.Force, QuantityKind.Force)
            : $"{units.Say(axle.Force, QuantityKind.Force)} {units.Say(axle.Offset, QuantityKind.Length)} behind the first"));
        return axles.Length == 1
            ? $"1 axle of {each}"
            : $"{axles.Length} axles, {units.Say(axles.Sum(axle => axle.Force), QuantityKind.Force)} in all: {each}";
    }

    private static (double Offset, double Force)? Read(AxleEntry axle) =>
        axle.Offset is string offset
        && QuantityReader.Read(offset, QuantityKind.Length) is Reading<Quantity>.Accepted place
        && axle.Force is string force
        && QuantityReader.Read(force, QuantityKind.Force) is Reading<Quantity>.Accepted size
            ? (place.Value.Value, size.Value.Value)
            : null;
}
