using System.Collections.Immutable;
using FieldCheck.Reporting.Drawing;
using FieldCheck.Reporting.Pictures;
using FieldCheck.Reporting.Tables;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Catalogue;

namespace FieldCheck.Reporting.Pages;

/// <summary>The beam as typed and as read: drawn, row by row, and what it is made of.</summary>
internal static class InputBlocks
{
    internal static IEnumerable<RecordBlock> Of(
        Calculation calculation, BuiltBeam beam, SectionCatalogue catalogue, RecordRequest request)
    {
        ImmutableArray<string> rows = InputLines.AsTyped(calculation);
        return
        [
            new RecordBlock.Heading(2, "The beam as idealised"),
            new RecordBlock.Figure(
                "Supports, lengths and loads as typed",
                BeamPicture.Of(beam, null),
                BeamSketch.Draw(beam, null, request.Width, new SketchStyle()),
                $"A beam in side view, {rows[0]}. {Counted(beam)} Each stands with its figures in the list that follows."),
            .. RecordBuilder.Sentences("Input as typed, and as read", rows),
            .. RecordBuilder.Sentences("Sections and materials", StickLines.Of(calculation.Document, beam, catalogue)),
        ];
    }

    private static string Counted(BuiltBeam beam) =>
        $"Supports from the left: {string.Join(", ", beam.Supports.Select(support => $"{support.Label}, {support.Kind}"))}. "
        + $"Loads: {beam.Loads.Length}.";
}
