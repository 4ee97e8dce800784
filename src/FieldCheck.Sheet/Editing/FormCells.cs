using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Editing;

/// <summary>What stands in the cells of the form, and which cell a key of the file stands in.</summary>
public static partial class FormCells
{
    internal const string On = "on";
    internal const string Off = "off";

    internal static ImmutableArray<string> OnOrOff { get; } = [On, Off];

    /// <summary>The text in a cell, as typed; null where nothing stands, and in the empty row.</summary>
    /// <param name="document">The beam.</param>
    /// <param name="place">The cell.</param>
    public static string? TextOf(BeamDocument document, FormPlace place) => place switch
    {
        { IsOwnWeight: true, Column: FormColumn.Size } => document.SelfWeight is null ? Off : On,
        { IsOwnWeight: true } => document.SelfWeight?.Case,
        { Block: FormBlock.Spans } when place.Row < document.Spans.Count =>
            SpanCells.TextOf(document.Spans[place.Row], place.Column),
        { Block: FormBlock.Supports } when place.Row < document.Supports.Count =>
            SupportCells.TextOf(document.Supports[place.Row], place.Column),
        { Block: FormBlock.Loads } when place.Row < document.Loads.Count =>
            LoadCells.TextOf(document.Loads[place.Row], place.Column),
        { Block: FormBlock.Stated } => StatedRows.Of(document).ElementAtOrDefault(place.Row)?.Entry is int entry
            ? StatedCells.TextOf(document.Stated[entry], place.Column)
            : null,
        { Block: FormBlock.Cases } => CaseEdits.TextOf(document, place.Row, place.Column),
        { Block: FormBlock.Combinations } when place.Row < document.Combinations.Count =>
            CombinationCells.TextOf(document, document.Combinations[place.Row], place.Column),
        { Block: FormBlock.Rolling } when place.Row < document.Rolling.Count =>
            RollingCells.TextOf(document.Rolling[place.Row], place.Column, document.Units),
        _ when StickCells.Has(place.Block) => StickCells.TextOf(document, place),
        _ => null,
    };

    /// <summary>The words that a cell chooses from; empty where it takes any text.</summary>
    /// <param name="place">The cell.</param>
    public static ImmutableArray<string> ChoicesOf(FormPlace place) => place switch
    {
        { IsOwnWeight: true, Column: FormColumn.Size } => OnOrOff,
        { Column: FormColumn.Kind } => SupportCells.Kinds,
        { Column: FormColumn.Acts } => SupportCells.Actions,
        { Block: FormBlock.Combinations, Column: FormColumn.Basis } => StatedCells.Bases[..2],
        { Column: FormColumn.Basis } => StatedCells.Bases,
        { Column: FormColumn.Pattern or FormColumn.OwnWeight } => CaseEdits.YesOrNo,
        { Column: FormColumn.Flat or FormColumn.Rules or FormColumn.Unbraced } => StickCells.ChoicesOf(place.Column),
        _ => [],
    };

    /// <summary>The same with those that are the beam's own: its combinations and cases.</summary>
    /// <param name="document">The beam.</param>
    /// <param name="place">The cell.</param>
    public static ImmutableArray<string> ChoicesOf(BeamDocument document, FormPlace place) =>
        place.Column == FormColumn.Under ? StatedCells.Answers(document) : ChoicesOf(place);

    /// <summary>
    /// True: the size of this load has no unit and its row has an end, so it must be asked what is meant.
    /// </summary>
    /// <param name="document">The beam.</param>
    /// <param name="row">The load, counted from 0; own weight and the empty row are never asked about.</param>
    public static bool IsAsked(BeamDocument document, int row) =>
        row >= 0 && row < document.Loads.Count && LoadCells.IsAsked(document.Loads[row]);

    /// <summary>The cell that shows a key of the file; null for a key without one.</summary>
    /// <param name="document">The beam.</param>
    /// <param name="key">
    /// The key path with rows counted from 1, as "load[2].at"; a whole row may stand too, "load[2]".
    /// </param>
    public static FormPlace? PlaceOf(BeamDocument document, string key)
    {
        Match row = KeyOfRow().Match(key);
        if (!row.Success)
        {
            return OfCases(document, key) ?? OutsideRows(document, key);
        }

        if (!int.TryParse(row.Groups["row"].Value, NumberStyles.None, CultureInfo.InvariantCulture, out int number))
        {
            return null;
        }

        string last = row.Groups["key"].Value;
        return row.Groups["table"].Value switch
        {
            "span" => new FormPlace(FormBlock.Spans, number - 1, SpanCells.ColumnOf(last)),
            "support" => new FormPlace(FormBlock.Supports, number - 1, SupportCells.ColumnOf(last)),
            "stated" => StatedRows.IndexOf(document, number - 1) is int index
                ? new FormPlace(FormBlock.Stated, index, StatedCells.ColumnOf(last))
                : null,
            _ => new FormPlace(FormBlock.Loads, number - 1, LoadCells.ColumnOf(last)),
        };
    }

    private static FormPlace? OfCases(BeamDocument document, string key) => KeyPath.Parse(key)?.Steps switch
    {
        [KeyStep.Into { Key: "combination" }, KeyStep.At row, ..] steps =>
            new FormPlace(FormBlock.Combinations, row.Row - 1, CombinationCells.ColumnOf(document, steps)),
        [KeyStep.Into { Key: "rolling" }, KeyStep.At row, KeyStep.Into into, ..] =>
            new FormPlace(FormBlock.Rolling, row.Row - 1, RollingCells.ColumnOf(into.Key)),
        [KeyStep.Into { Key: "rename" }, KeyStep.Into name] when CaseRows.IndexOf(document, name.Key) is int index =>
            new FormPlace(FormBlock.Cases, index, FormColumn.Case),
        [KeyStep.Into { Key: "pattern" }, KeyStep.At row, ..] when row.Row <= document.Patterns.Count
            && CaseRows.IndexOf(document, document.Patterns[row.Row - 1].Case) is int index =>
            new FormPlace(FormBlock.Cases, index, FormColumn.Pattern),
        _ => null,
    };

    private static FormPlace? OutsideRows(BeamDocument document, string key)
    {
        string table = key.Split('.', '[')[0];
        return table switch
        {
            "span" => new FormPlace(FormBlock.Spans, 0, FormColumn.Length),
            "support" => new FormPlace(FormBlock.Supports, 0, FormColumn.Place),
            "load" => new FormPlace(FormBlock.Loads, 0, FormColumn.Size),
            "stated" => new FormPlace(FormBlock.Stated, 0, FormColumn.Vertical),
            "self_weight" => new FormPlace(
                FormBlock.Loads,
                FormPlace.OwnWeightRow,
                document.SelfWeight is null ? FormColumn.Size : FormColumn.Case),
            "section" => SpanOf(document, key, FormColumn.Section),
            "material" => SpanOf(document, key, FormColumn.Material),
            _ => null,
        };
    }

    // A section's or material's own cells stand in "more of this row" of the spans that use it.
    private static FormPlace SpanOf(BeamDocument document, string key, FormColumn column)
    {
        string table = key.Split('.')[0];
        int row = document.Spans.ToList().FindIndex(span =>
            SpanCells.TextOf(span, column) is string name
            && key.StartsWith(KeyPath.Top.Into(table).Into(name).ToString(), StringComparison.Ordinal));
        return new FormPlace(FormBlock.Spans, Math.Max(row, 0), column);
    }

    [GeneratedRegex(
        @"^(?<table>span|support|load|stated)\[(?<row>[0-9]+)\](\.(?<key>[a-z_]+))?$", RegexOptions.CultureInvariant)]
    private static partial Regex KeyOfRow();
}
