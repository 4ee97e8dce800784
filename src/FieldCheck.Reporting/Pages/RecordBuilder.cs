using System.Collections.Immutable;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Reporting.Record;
using FieldCheck.Reporting.Tables;
using FieldCheck.Reporting.Working;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Reporting.Pages;

/// <summary>Makes the record of a check.</summary>
public static class RecordBuilder
{
    /// <summary>The record of a check.</summary>
    /// <param name="calculation">What came of the beam.</param>
    /// <param name="catalogue">The catalogue that it was read with, for the sources of sections and materials.</param>
    /// <param name="request">How it is wanted.</param>
    /// <returns>The record; of a beam that cannot be read, what is to be mended, and no figure.</returns>
    public static CheckRecord Of(Calculation calculation, SectionCatalogue catalogue, RecordRequest request)
    {
        ArgumentNullException.ThrowIfNull(calculation);
        ArgumentNullException.ThrowIfNull(catalogue);
        ArgumentNullException.ThrowIfNull(request);
        calculation = InLetters(calculation.InFull, request);
        string? title = calculation.Document.Title;
        return new CheckRecord(
            title is null ? "Check of a beam" : $"Check of a beam: {TextSafety.ForTerminal(title)}",
            [
                .. HeadBlocks.Of(calculation, request),
                .. calculation is { Beam: BuiltBeam beam, Outcome: BeamOutcome outcome }
                    ? Answered(calculation, beam, outcome, catalogue, request)
                    : Sentences("To mend before there is an answer", ProblemLines.Of(calculation)),
                .. Sentences("Before you use these figures", Cautions.Beside(calculation)),
                .. SignatureBlocks.Of(calculation.Document.Record),
            ]);
    }

    private static Calculation InLetters(Calculation calculation, RecordRequest request) =>
        calculation.Beam is BuiltBeam beam && !request.IsPlain
            ? calculation with { Beam = beam with { KeepsLetters = true } }
            : calculation;

    /// <summary>A section of sentences; nothing where there are none.</summary>
    internal static IEnumerable<RecordBlock> Sentences(string heading, ImmutableArray<string> lines, int level = 2) =>
        lines.IsEmpty ? [] : [new RecordBlock.Heading(level, heading), new RecordBlock.Sentences(lines)];

    private static IEnumerable<RecordBlock> Answered(
        Calculation calculation, BuiltBeam beam, BeamOutcome outcome, SectionCatalogue catalogue, RecordRequest request) =>
    [
        .. InputBlocks.Of(calculation, beam, catalogue, request),
        .. AnswerBlocks.Of(calculation, beam, outcome, request),
        .. EnvelopeBlocks.Of(calculation, beam, request),
        .. Sentences("How well it is known", BandWords.Of(calculation)),
        .. StatedBlocks.Of(calculation, beam),
        .. StrengthBlocks.Of(calculation, beam, request),
        .. Sentences("Remarks", MessageLines.Of(calculation)),
        .. Sentences("Methods and rules", MethodLines.Of(calculation, beam, outcome)),
        .. Sentences("Taken for granted", AssumptionLines.Of(calculation, beam, outcome)),
        .. Sentences("Not checked", [Cautions.NotCheckedIn(calculation)]),
        .. Working(calculation, request),
    ];

    private static IEnumerable<RecordBlock> Working(Calculation calculation, RecordRequest request) =>
    [
        new RecordBlock.Heading(2, request.IsWorkingShort ? "Working by hand, in short" : "Working by hand"),
        new RecordBlock.Lines(
        [
            .. PrintedWorking.Pages(
                calculation, null, new WorkingRequest(request.Width) { IsShort = request.IsWorkingShort })
                .SkipWhile(line => line.Text.Length == 0)
                .Select(line => new RecordLine(line.Text) { Head = line.Head, IsHeading = line.Kind == WorkingLineKind.Step }),
        ]),
    ];
}
