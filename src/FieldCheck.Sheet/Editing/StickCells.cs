using System.Collections.Immutable;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Editing;

/// <summary>The cells of sections, materials, limits, bracing and bearings: each is a key of the file.</summary>
public static class StickCells
{
    private const string LiesFlat = "flat";
    private const string OnEdge = "on edge";
    private const string True = "true";
    private const string False = "false";

    private static readonly ImmutableArray<string> WaysToLie = [LiesFlat, OnEdge];

    /// <summary>True: it is one of these blocks.</summary>
    /// <param name="block">The block.</param>
    public static bool Has(FormBlock block) => block >= FormBlock.Sections;

    /// <summary>The key that a column of these blocks is, as "flange_width"; null for a column of none of them.</summary>
    /// <param name="column">The column.</param>
    public static string? KeyOf(FormColumn column) => StickColumns.KeyOf(column);

    /// <summary>The columns that make sense in a row of these blocks.</summary>
    /// <param name="document">The beam.</param>
    /// <param name="place">A cell of the row.</param>
    public static ImmutableArray<FormColumn> ColumnsOf(BeamDocument document, FormPlace place) =>
        StickColumns.Of(document, place);

    /// <summary>What a cell of these blocks asks for; null where figures go by names.</summary>
    /// <param name="place">The cell.</param>
    public static Wanted? WantedOf(FormPlace place)
    {
        ArgumentNullException.ThrowIfNull(place);
        string? key = StickColumns.KeyOf(place.Column);
        return place.Block switch
        {
            FormBlock.Sections => Fields.Section.FirstOrDefault(field => field.Key == key)?.Wanted,
            FormBlock.Materials => Fields.Material.FirstOrDefault(field => field.Key == key)?.Wanted,
            FormBlock.Limits => Fields.Limits.FirstOrDefault(field => field.Key == key)?.Wanted,
            FormBlock.Bracing => Fields.Span.FirstOrDefault(field => field.Key == key)?.Wanted,
            _ => Fields.Support.FirstOrDefault(field => field.Key == key)?.Wanted,
        };
    }

    /// <summary>The cell of these blocks that a key stands in; null for a key of none of them.</summary>
    /// <param name="document">The beam.</param>
    /// <param name="key">The key path; a whole section or material may stand too.</param>
    public static FormPlace? PlaceOf(BeamDocument document, string key)
    {
        ArgumentNullException.ThrowIfNull(document);
        return KeyPath.Parse(key)?.Steps.ToArray() switch
        {
            [KeyStep.Into { Key: "section" }, KeyStep.Into name, .. var rest] =>
                InRow(FormBlock.Sections, StickRows.Sections(document).IndexOf(name.Key), rest),
            [KeyStep.Into { Key: "material" }, KeyStep.Into name, .. var rest] =>
                InRow(FormBlock.Materials, StickRows.Materials(document).IndexOf(name.Key), rest),
            [KeyStep.Into { Key: "limits" }, .. var rest] => InRow(FormBlock.Limits, 0, rest),
            [KeyStep.Into { Key: "span" }, KeyStep.At row, KeyStep.Into { Key: "unbraced" }] =>
                new FormPlace(FormBlock.Bracing, row.Row - 1, FormColumn.Unbraced),
            [KeyStep.Into { Key: "support" }, KeyStep.At row, KeyStep.Into into]
                when StickColumns.HasKey(FormBlock.Bearings, into.Key) =>
                InRow(FormBlock.Bearings, row.Row - 1, [into]),
            _ => null,
        };
    }

    internal static ImmutableArray<string> ChoicesOf(FormColumn column) => column switch
    {
        FormColumn.Flat => WaysToLie,
        FormColumn.Unbraced => ["braced"],
        _ => [.. ((Wanted.OneOf)Fields.Limits.First(field => field.Key == "rules").Wanted).Words],
    };

    internal static string? TextOf(BeamDocument document, FormPlace place) => place.Column switch
    {
        FormColumn.Factors => FigureText.Of(MaterialAt(document, place.Row)?.Factors),
        FormColumn.CaseLimits => FigureText.Of(document.Limits?.DeflectionCases),
        FormColumn.Lasting => FigureText.Of(document.Limits?.Lasting),
        _ => KeyOf(document, place) is not string key ? null
            : (place.Column, DocumentCells.Get(document, key)) switch
            {
                (FormColumn.Flat, True) => LiesFlat,
                (FormColumn.Flat, False) => OnEdge,
                (_, string text) => text,
                _ => null,
            },
    };

    /// <summary>The beam with a text in a cell. What does not read is kept as typed.</summary>
    internal static BeamDocument Type(BeamDocument document, FormPlace place, string? text)
    {
        if (text == TextOf(document, place) || !StickColumns.All(place.Block).Contains(place.Column))
        {
            return document;
        }

        BeamDocument typed = place.Column switch
        {
            FormColumn.Factors => StickEdits.Factors(document, StickRows.Materials(document).ElementAtOrDefault(place.Row), text),
            FormColumn.CaseLimits or FormColumn.Lasting => StickEdits.OfCases(document, place.Column, text),
            FormColumn.Shape => StickEdits.Shape(document, place.Row, text),
            _ when KeyOf(document, place) is string key => KeyEdits.Type(document, key, Written(place.Column, text)),
            _ => document,
        };
        return StickEdits.Trimmed(typed);
    }

    /// <summary>The key path of a cell; null where there is no such row.</summary>
    internal static string? KeyOf(BeamDocument document, FormPlace place)
    {
        KeyPath? row = place.Block switch
        {
            FormBlock.Sections => Named("section", StickRows.Sections(document), place.Row),
            FormBlock.Materials => Named("material", StickRows.Materials(document), place.Row),
            FormBlock.Limits => KeyPath.Top.Into("limits"),
            FormBlock.Bracing => place.Row < document.Spans.Count ? KeyPath.Top.Into("span").At(place.Row + 1) : null,
            _ => place.Row < document.Supports.Count ? KeyPath.Top.Into("support").At(place.Row + 1) : null,
        };
        return StickColumns.KeyOf(place.Column) is string key ? row?.Into(key).ToString() : null;
    }

    private static KeyPath? Named(string table, ImmutableArray<string> names, int row) =>
        names.ElementAtOrDefault(row) is string name ? KeyPath.Top.Into(table).Into(name) : null;

    private static MaterialEntry? MaterialAt(BeamDocument document, int row) => document.Materials.ElementAtOrDefault(row);

    // On edge is what a section is where nothing is said.
    private static string Written(FormColumn column, string? text) => column != FormColumn.Flat || text is null
        ? text ?? ""
        : SupportCells.Whole(text, WaysToLie) switch
        {
            LiesFlat => True,
            OnEdge => "",
            string other => other,
        };

    private static FormPlace? InRow(FormBlock block, int row, IReadOnlyList<KeyStep> rest) => row < 0 ? null
        : new FormPlace(block, row, StickColumns.ColumnOf(block, rest is [KeyStep.Into into, ..] ? into.Key : ""));
}
