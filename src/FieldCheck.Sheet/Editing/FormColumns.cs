using System.Collections.Immutable;

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

    /// <summary>The columns of a block, left to right.</summary>
    /// <param name="block">The block.</param>
    public static ImmutableArray<FormColumn> Of(FormBlock block) => block switch
    {
        FormBlock.Spans => Spans,
        FormBlock.Supports => Supports,
        FormBlock.Stated => Stated,
        _ => Loads,
    };

    /// <summary>What a column is headed, as "far end".</summary>
    /// <param name="column">The column.</param>
    public static string Heading(FormColumn column) => column switch
    {
        FormColumn.Reading => "far end",
        FormColumn.Place => "at",
        _ => column.ToString().ToLowerInvariant(),
    };

    /// <summary>What a row of a block is called, as "load".</summary>
    /// <param name="block">The block.</param>
    public static string RowName(FormBlock block) => block switch
    {
        FormBlock.Spans => "span",
        FormBlock.Supports => "support",
        FormBlock.Stated => "stated",
        _ => "load",
    };
}
