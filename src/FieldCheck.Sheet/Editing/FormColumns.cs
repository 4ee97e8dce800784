using System.Collections.Immutable;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Editing;

/// <summary>Which columns each block has, and what they are headed.</summary>
public static class FormColumns
{
    private static readonly ImmutableArray<FormColumn> Spans =
        [FormColumn.Length, FormColumn.Reading, FormColumn.Section, FormColumn.Material];

    private static readonly ImmutableArray<FormColumn> Supports =
        [FormColumn.Place, FormColumn.Kind, FormColumn.Settles, FormColumn.Acts, FormColumn.Label];

    private static readonly ImmutableArray<FormColumn> Loads =
        [FormColumn.Size, FormColumn.From, FormColumn.To, FormColumn.Case, FormColumn.Note];

    private static readonly ImmutableArray<FormColumn> Stated =
    [
        FormColumn.Vertical, FormColumn.Horizontal, FormColumn.Moment, FormColumn.Under, FormColumn.Basis,
        FormColumn.Allow, FormColumn.Source, FormColumn.Support,
    ];

    private static readonly ImmutableArray<FormColumn> Cases =
        [FormColumn.Case, FormColumn.Pattern, FormColumn.OwnWeight, FormColumn.Holds];

    private static readonly ImmutableArray<FormColumn> Combinations = [FormColumn.Name, FormColumn.Basis];

    private static readonly ImmutableArray<FormColumn> Rolling =
        [FormColumn.Label, FormColumn.Axles, FormColumn.Case, FormColumn.Impact];

    /// <summary>The columns that a block has whatever the beam, left to right.</summary>
    /// <param name="block">The block.</param>
    public static ImmutableArray<FormColumn> Of(FormBlock block) => block switch
    {
        FormBlock.Spans => Spans,
        FormBlock.Supports => Supports,
        FormBlock.Stated => Stated,
        FormBlock.Cases => Cases,
        FormBlock.Combinations => Combinations,
        FormBlock.Rolling => Rolling,
        _ when StickCells.Has(block) => StickColumns.All(block),
        _ => Loads,
    };

    /// <summary>All columns of a block, left to right: the combinations of a beam have one for each of its cases.</summary>
    /// <param name="document">The beam.</param>
    /// <param name="block">The block.</param>
    public static ImmutableArray<FormColumn> Of(BeamDocument document, FormBlock block) =>
        block == FormBlock.Combinations
            ? [.. Combinations, .. Enumerable.Range(0, CaseRows.Of(document).Length).Select(OfCase)]
            : StickCells.Has(block) ? StickColumns.Of(document, block)
            : Of(block);

    /// <summary>The column of the factor of a case.</summary>
    /// <param name="row">The row of the case in <see cref="CaseRows"/>, counted from 0.</param>
    public static FormColumn OfCase(int row) => FormColumn.Factor + row;

    /// <summary>The row of the case whose factors stand in a column; null for any other column.</summary>
    /// <param name="column">The column.</param>
    public static int? CaseOf(FormColumn column) =>
        column >= FormColumn.Factor ? column - FormColumn.Factor : null;

    /// <summary>What a column is headed, as "far end"; a factor's by the name of its case.</summary>
    /// <param name="document">The beam.</param>
    /// <param name="column">The column.</param>
    public static string Heading(BeamDocument document, FormColumn column) =>
        CaseOf(column) is int row ? CaseRows.Of(document).ElementAtOrDefault(row)?.Name ?? "factor" : Heading(column);

    /// <summary>What a column is headed whatever the beam, as "far end".</summary>
    /// <param name="column">The column.</param>
    public static string Heading(FormColumn column) => column switch
    {
        FormColumn.Reading => "far end",
        FormColumn.Place => "at",
        FormColumn.Pattern => "bay by bay",
        FormColumn.OwnWeight => "own weight",
        _ when StickColumns.Heading(column) is string heading => heading,
        _ => column.ToString().ToLowerInvariant(),
    };

    /// <summary>What a row of a block is called, as "load".</summary>
    /// <param name="block">The block.</param>
    public static string RowName(FormBlock block) => block switch
    {
        FormBlock.Spans => "span",
        FormBlock.Supports => "support",
        FormBlock.Stated => "stated",
        FormBlock.Cases => "case",
        FormBlock.Combinations => "combination",
        FormBlock.Rolling => "rolling load",
        FormBlock.Sections => "section",
        FormBlock.Materials => "material",
        FormBlock.Limits => "limits",
        FormBlock.Bracing => "span",
        FormBlock.Bearings => "support",
        _ => "load",
    };

    /// <summary>The table of the file that the rows of a block are, as "load".</summary>
    /// <param name="block">The block.</param>
    internal static string Table(FormBlock block) => block == FormBlock.Rolling ? "rolling" : RowName(block);
}
