using System.Collections.Immutable;
using System.Globalization;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Editing;

namespace FieldCheck.Screen.FormGrid;

/// <summary>What rows and cells of the form are called.</summary>
internal static class FormWords
{
    /// <summary>What stands at the left of a row: its number, a support's letter, "+" for the empty row.</summary>
    /// <remarks>Of what is stated, the letter of its support, and "?" where the file names none.</remarks>
    /// <param name="sheet">The beam.</param>
    /// <param name="block">The block.</param>
    /// <param name="row">The row.</param>
    internal static string Head(FormSheet sheet, FormBlock block, int row) =>
        row == FormPlace.OwnWeightRow ? ""
        : block == FormBlock.Stated ? StatedRows.Of(sheet.Document).ElementAtOrDefault(row)?.Label ?? "?"
        : block is FormBlock.Cases or FormBlock.Limits ? ""
        : block == FormBlock.Sections ? StickRows.Sections(sheet.Document).ElementAtOrDefault(row) ?? ""
        : block == FormBlock.Materials ? StickRows.Materials(sheet.Document).ElementAtOrDefault(row) ?? ""
        : row >= sheet.RowsOf(block) ? "+"
        : block is FormBlock.Supports or FormBlock.Bearings ? Label(sheet.Document, row)
        : Number(row);

    /// <summary>A row in words, as "load 3" or "support B".</summary>
    /// <param name="sheet">The beam.</param>
    /// <param name="block">The block.</param>
    /// <param name="row">The row.</param>
    internal static string Row(FormSheet sheet, FormBlock block, int row) =>
        row == FormPlace.OwnWeightRow ? "own weight"
        : block == FormBlock.Stated ? $"stated {Head(sheet, block, row)}{Turn(sheet, row)}"
        : block == FormBlock.Cases ? $"case {CaseRows.Of(sheet.Document).ElementAtOrDefault(row)?.Name}"
        : block == FormBlock.Limits ? "limits"
        : block is FormBlock.Sections or FormBlock.Materials ? Stick(sheet, block, row)
        : row >= sheet.RowsOf(block) ? $"new {FormColumns.RowName(block)}"
        : $"{FormColumns.RowName(block)} {Head(sheet, block, row)}";

    /// <summary>A cell in words, as "load 3 size".</summary>
    /// <param name="sheet">The beam.</param>
    /// <param name="place">The cell.</param>
    internal static string Cell(FormSheet sheet, FormPlace place) =>
        place.IsOwnWeight && place.Column == FormColumn.Size
        ? "own weight"
        : place is { Block: FormBlock.Cases, Column: FormColumn.Case } ? Row(sheet, place.Block, place.Row)
        : FormColumns.CaseOf(place.Column) is not null
        ? $"{Row(sheet, place.Block, place.Row)} factor of {FormColumns.Heading(sheet.Document, place.Column)}"
        : $"{Row(sheet, place.Block, place.Row)} {Column(place.Column)}";

    /// <summary>What an empty row says while the person is elsewhere.</summary>
    /// <param name="sheet">The beam.</param>
    /// <param name="block">The block.</param>
    internal static string OfEmptyRow(FormSheet sheet, FormBlock block) => block switch
    {
        FormBlock.Stated => "nothing stated yet",
        FormBlock.Combinations when sheet.RowsOf(block) == 0 =>
            "all loads, service, factors 1: type here for others",
        FormBlock.Bracing or FormBlock.Bearings => $"no {FormColumns.RowName(block)} yet",
        _ => $"type here to add a {FormColumns.RowName(block)}",
    };

    /// <summary>What a block is headed, as "Loads".</summary>
    /// <param name="block">The block.</param>
    internal static string Block(FormBlock block) => block switch
    {
        FormBlock.Rolling => "Rolling loads",
        FormBlock.Sections => "Section",
        FormBlock.Materials => "Material",
        FormBlock.Bracing => "Spans",
        _ => block.ToString(),
    };

    /// <summary>So many of something, as "1 load" and "2 loads".</summary>
    /// <param name="count">How many.</param>
    /// <param name="what">Of what.</param>
    internal static string Count(int count, string what) =>
        string.Create(CultureInfo.InvariantCulture, $"{count} {what}{(count == 1 ? "" : "s")}");

    private static string Column(FormColumn column) => column switch
    {
        FormColumn.Place => "place",
        _ => FormColumns.Heading(column),
    };

    // Of several, which spans it is of.
    private static string Stick(FormSheet sheet, FormBlock block, int row)
    {
        string name = $"{FormColumns.RowName(block)} {Head(sheet, block, row)}";
        return sheet.RowsOf(block) > 1
            ? $"{name} ({StickRows.UsedBy(sheet.Document, new FormPlace(block, row, default))})"
            : name;
    }

    private static string Label(BeamDocument document, int row)
    {
        ImmutableArray<string?> labels = FormLabels.Of(document);
        return labels[row] ?? Number(row);
    }

    // Of several rows of one support, which.
    private static string Turn(FormSheet sheet, int row)
    {
        string label = Head(sheet, FormBlock.Stated, row);
        int before = Enumerable.Range(0, row).Count(other => Head(sheet, FormBlock.Stated, other) == label);
        return before == 0 ? "" : " " + Number(before);
    }

    private static string Number(int row) => string.Create(
        CultureInfo.InvariantCulture, $"{row + 1}");
}
