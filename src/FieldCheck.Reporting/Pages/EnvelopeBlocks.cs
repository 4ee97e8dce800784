using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Reporting.Record;
using FieldCheck.Reporting.Tables;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;

namespace FieldCheck.Reporting.Pages;

/// <summary>The greatest and least over all that may happen, with what governs each.</summary>
internal static class EnvelopeBlocks
{
    private static readonly ImmutableArray<RecordColumn> Columns =
        [new("what"), new("end"), new("value"), new("governed by")];

    internal static IEnumerable<RecordBlock> Of(Calculation calculation, BuiltBeam beam, RecordRequest request) =>
        calculation.Outcome is BeamOutcome.Stands stands
            ? EnvelopeTable.Telling(calculation, beam).SelectMany(envelope => Of(beam, stands, envelope, request))
            : [];

    private static IEnumerable<RecordBlock> Of(
        BuiltBeam beam, BeamOutcome.Stands stands, Envelope envelope, RecordRequest request)
    {
        BeamWords words = new(beam);
        EnvelopeRows rows = new(words, envelope);
        string basis = BasisWords.Of(envelope.Basis);
        int drawn = stands.Combinations.Select((answer, index) => (answer, index))
            .First(pair => pair.answer.Combination.Basis == envelope.Basis).index;
        ImmutableArray<ImmutableArray<string>> peaks = [.. rows.Peaks().Select(Row)];
        return
        [
            new RecordBlock.Heading(2, $"Envelope of the {basis} figures"),
            new RecordBlock.Sentences(
            [
                $"These are {Cautions.Basis(basis)}.",
                .. new EnvelopeTable(words).Over(envelope),
            ]),
            new RecordBlock.Table(
                $"Reactions over all, {basis}",
                Columns,
                [.. Enumerable.Range(0, beam.Supports.Length).SelectMany(rows.Reactions).Select(Row)]),
            .. peaks.IsEmpty
                ? Array.Empty<RecordBlock>()
                : [new RecordBlock.Table($"Peaks over all, {basis}", Columns, peaks)],
            new RecordBlock.Paragraph(Legend(beam, stands.Combinations[drawn], basis)),
            .. AnswerBlocks.Curves(beam, stands.Combinations[drawn], envelope, request),
        ];
    }

    private static string Legend(BuiltBeam beam, CombinationResponse answer, string basis) =>
        $"Drawn below: the curve is that of {TypedLetters.Name(beam, answer.Combination.Name)}; the dashed lines, in a sketch the stars, "
            + $"are the greatest and least of all {basis} figures at each place, and in a drawing the figures are theirs.";

    private static ImmutableArray<string> Row(EnvelopeRow row) =>
        [row.Name, row.End, row.Items[0], string.Join("; ", row.Items.Skip(1))];
}
