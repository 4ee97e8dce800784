using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Reporting.Drawing;
using FieldCheck.Reporting.Pictures;
using FieldCheck.Reporting.Record;
using FieldCheck.Reporting.Tables;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Reporting.Pages;

/// <summary>What came of every combination: reactions with their proof, peaks, and the curves.</summary>
internal static class AnswerBlocks
{
    private const int SketchRows = 9;

    internal static IEnumerable<RecordBlock> Of(
        Calculation calculation, BuiltBeam beam, BeamOutcome outcome, RecordRequest request) =>
    [
        .. RecordBuilder.Sentences("Statics", [DeterminacyWords.Of(outcome), .. MotionWords.Of(beam, outcome)]),
        .. outcome is BeamOutcome.Stands stands
            ? stands.Combinations.SelectMany((answer, index) => Of(
                beam, answer, request, CheckText.IsDrawn(calculation, beam, index)))
            : [],
    ];

    /// <summary>The curves of one answer, and what they lie between where an envelope is given.</summary>
    internal static IEnumerable<RecordBlock> Curves(
        BuiltBeam beam, CombinationResponse answer, Envelope? envelope, RecordRequest request) =>
        PeakTable.Curves(beam)
            .Select(curve => PlotCurve.Of(beam, answer.Response, curve) with
            {
                Band = envelope is null ? null : PlotBand.Of(envelope, curve),
            })
            .Zip(PeakTable.Curves(beam))
            .Where(pair => pair.Second != Curve.Axial || !IsNothing(pair.First))
            .Select(pair => Figure(pair.First, request));

    private static IEnumerable<RecordBlock> Of(
        BuiltBeam beam, CombinationResponse answer, RecordRequest request, bool isDrawn)
    {
        string basis = BasisWords.Of(answer.Combination.Basis);
        string name = TypedLetters.Name(beam, answer.Combination.Name);
        ImmutableArray<ImmutableArray<string>> peaks = Peaks(beam, answer.Response);
        return
        [
            new RecordBlock.Heading(2, $"Combination {name} ({basis} figures)"),
            new RecordBlock.Paragraph($"These are {Cautions.Basis(basis)}."),
            .. VariedWords.Warning(beam, answer.Combination).Select(line => new RecordBlock.Paragraph(line, IsWarning: true)),
            .. isDrawn ? [Beam(beam, answer, name, request)] : Array.Empty<RecordBlock>(),
            Reactions(beam, answer.Response, name),
            new RecordBlock.Sentences(
                [.. ProofLines.Of(new BeamWords(beam), answer.Response.Proof).Select(line => $"Proof: {line}")]),
            .. peaks.IsEmpty
                ? Array.Empty<RecordBlock>()
                : [new RecordBlock.Table($"Peaks, {name}", [new("quantity"), new("greatest in size"), new("greatest the other way")], peaks)],
            .. isDrawn
                ? Curves(beam, answer, null, request)
                : [new RecordBlock.Paragraph("Not drawn: it governs nothing over all, see the envelope.")],
        ];
    }

    private static RecordBlock.Figure Beam(
        BuiltBeam beam, CombinationResponse answer, string name, RecordRequest request) => new(
        $"Loads and reactions, {name}",
        BeamPicture.Of(beam, answer),
        BeamSketch.Draw(beam, answer, request.Width, new SketchStyle()),
        "The beam with its loads above it, each times its factor, and what each support gives below it; "
            + "the figures stand in the table that follows.");

    private static RecordBlock.Table Reactions(BuiltBeam beam, BeamResponse response, string name)
    {
        BeamWords words = new(beam);
        return new(
            $"Reactions, {name}",
            [new("support"), new("at", IsNumber: true), new("it gives"), new("remarks")],
            [
                .. beam.Supports.Select((support, i) => (ImmutableArray<string>)
                [
                    support.Label,
                    words.Say(support.Support.Position, QuantityKind.Length),
                    string.Join(", ", words.Parts(support.Support, response.Reactions[i])),
                    string.Join(" ", ReactionTable.Remarks(words, support, response.Reactions[i])),
                ]),
            ]);
    }

    private static ImmutableArray<ImmutableArray<string>> Peaks(BuiltBeam beam, BeamResponse response) =>
    [
        .. PeakTable.Curves(beam)
            .Select(curve => PeakRow.Of(beam, response, curve))
            .Where(row => !row.IsNothing)
            .Select(row => (ImmutableArray<string>)[row.Name, row.Items[0], row.Items.Length > 1 ? row.Items[1] : ""]),
    ];

    private static RecordBlock.Figure Figure(PlotCurve curve, RecordRequest request) => new(
        char.ToUpperInvariant(curve.Heading[0]) + curve.Heading[1..],
        DiagramPicture.Of(curve),
        DiagramPlot.Draw(curve, request.Width, SketchRows, new PlotStyle()),
        $"A curve along the beam. {string.Join("; ", PeakWords.Items(curve))}.");

    private static bool IsNothing(PlotCurve curve) =>
        curve.Peaks.All(peak => Math.Abs(peak.Value) <= curve.Negligible)
        && (curve.Band is not PlotBand band
            || (Math.Abs(band.Max.Value) <= curve.Negligible && Math.Abs(band.Min.Value) <= curve.Negligible));
}
