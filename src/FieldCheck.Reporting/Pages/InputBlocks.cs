using System.Collections.Immutable;
using FieldCheck.Reporting.Drawing;
using FieldCheck.Reporting.Pictures;
using FieldCheck.Reporting.Tables;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Reporting.Pages;

/// <summary>The beam as typed and as read: drawn, row by row, and what it is made of.</summary>
internal static class InputBlocks
{
    private const int SketchLabelRows = 6;

    internal static IEnumerable<RecordBlock> Of(
        Calculation calculation, BuiltBeam beam, SectionCatalogue catalogue, RecordRequest request)
    {
        ImmutableArray<string> rows = InputLines.AsTyped(calculation);
        return
        [
            new RecordBlock.Heading(2, "The beam as idealised"),
            Drawing(calculation, beam, rows[0], request),
            .. RecordBuilder.Sentences("Input as typed, and as read", rows),
            .. RecordBuilder.Sentences("Sections and materials", StickLines.Of(calculation.Document, beam, catalogue)),
        ];
    }

    private static RecordBlock.Figure Drawing(
        Calculation calculation, BuiltBeam beam, string length, RecordRequest request)
    {
        TypedBeam typed = new(calculation.Document, beam, TextSafety.ForTerminal);
        return new(
            "Supports, lengths and loads as typed",
            BeamPicture.Of(typed),
            BeamSketch.Draw(typed with { Letters = PlainAscii.Of }, request.Width, new SketchStyle(LabelRows: SketchLabelRows)),
            $"A beam in side view, {length}. {Counted(beam)} Each stands with its figures in the list that follows.");
    }

    private static string Counted(BuiltBeam beam)
    {
        IEnumerable<string> supports = beam.Supports.Select(support => $"{support.Label}, {support.Kind}");
        int typed = beam.Loads.Count(load => load.Row is not null);
        string rolling = beam.Rolling.IsEmpty ? "" : $"; rolling loads, not drawn: {beam.Rolling.Length}";
        string weight = typed == beam.Loads.Length ? "" : "; own weight in";
        return $"Supports from the left: {string.Join(", ", supports)}. Loads: {typed}{rolling}{weight}.";
    }
}
