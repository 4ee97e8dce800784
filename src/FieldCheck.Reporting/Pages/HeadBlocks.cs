using System.Collections.Immutable;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Mechanics.Strength;
using FieldCheck.Reporting.Tables;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Reporting.Pages;

/// <summary>What stands at the head of a record: whose it is, of what, and what it comes to.</summary>
internal static class HeadBlocks
{
    private const int MostTold = 3;

    internal static IEnumerable<RecordBlock> Of(Calculation calculation, RecordRequest request) =>
    [
        new RecordBlock.Facts(Facts(calculation.Document, request)),
        .. Notes(calculation.Document),
        .. RecordBuilder.Sentences("What it comes to", Results(calculation)),
    ];

    private static ImmutableArray<RecordFact> Facts(BeamDocument document, RecordRequest request)
    {
        RecordEntry record = document.Record;
        return
        [
            Fact("job", record.Job),
            Fact("place", record.Location),
            Fact("date", request.Date ?? record.Date),
            Fact("prepared by", record.PreparedBy),
            .. record.PreparedFor is null ? [] : new[] { Fact("prepared for", record.PreparedFor) },
            Fact("checked by", record.CheckedBy),
            Fact("category", CategoryWords.Of(record.Category)),
            Fact("units", document.Units == UnitSystem.Us ? "US customary" : "SI"),
            Fact("file", request.File.Length == 0 ? "none: not saved" : request.File),
            Fact("SHA-256", request.Digest),
            Fact("made by", $"fieldcheck {request.Version}"),
        ];
    }

    private static RecordFact Fact(string name, string? text) => new(name, TextSafety.ForTerminal(text ?? ""));

    private static IEnumerable<RecordBlock> Notes(BeamDocument document) => string.IsNullOrWhiteSpace(document.Notes)
        ? []
        : [new RecordBlock.Paragraph($"Notes: {string.Join(' ', document.Notes.Split('\n').Select(TextSafety.ForTerminal))}")];

    private static ImmutableArray<string> Results(Calculation calculation) => calculation switch
    {
        { Beam: BuiltBeam beam, Outcome: BeamOutcome.Stands stands } =>
        [
            $"{MotionWords.Standing(calculation, behind: ": the figures are without that")}.",
            .. EnvelopeTable.Telling(calculation, beam).Select(envelope => VariedWords.Worst(new BeamWords(beam), envelope)),
            .. stands.Combinations.Take(MostTold).Select(answer => Reactions(beam, answer)),
            .. stands.Combinations.Length > MostTold
                ? new[] { $"The figures under all {stands.Combinations.Length} combinations stand below." }
                : [],
            .. MessageLines.InOrder(calculation).Where(IsGrave).Select(message => TypedLetters.Sentence(beam, message.Text)),
            .. Stated(calculation),
            .. Checks(calculation),
            .. Amiss(calculation),
        ],
        { Beam: BuiltBeam beam, Outcome: BeamOutcome outcome } =>
        [
            $"{MotionWords.Verdict(outcome)}: no reaction can be told.",
            .. MotionWords.Of(beam, outcome),
            .. calculation.Stated.IsEmpty && calculation.Checks.All.IsEmpty
                ? Array.Empty<string>()
                : ["Stated figures and limits are NOT JUDGED."],
        ],
        _ => ["The beam could not be read: there are no figures."],
    };

    private static string Reactions(BuiltBeam beam, CombinationResponse answer)
    {
        BeamWords words = new(beam);
        IEnumerable<string> supports = beam.Supports.Select((support, i) => string.Join(
            " ",
            [
                support.Label,
                string.Join(" and ", words.Parts(support.Support, answer.Response.Reactions[i])),
                .. ReactionTable.Remarks(words, support, answer.Response.Reactions[i]),
            ]));
        string leftOut = VariedWords.LeftOut(beam, answer.Combination) is string what ? $", NOT THE WORST, {what}" : "";
        return $"Reactions, {TypedLetters.Name(beam, answer.Combination.Name)}{leftOut}: {string.Join("; ", supports)}.";
    }

    private static bool IsGrave(Message message) =>
        message is { Severity: Severity.Fault } or { Code: MessageCodes.Uplift or MessageCodes.LiftsOff }
        || MessageLines.IsWithin(message);

    private static IEnumerable<string> Stated(Calculation calculation) => calculation.Stated.IsEmpty
        ? []
        : [$"Stated figures: {StatedWords.InShort(calculation.Stated, calculation.Unstated)}."];

    private static IEnumerable<string> Checks(Calculation calculation) => calculation.Checks.All.IsEmpty
        ? ["Sections, seats and deflections: nothing to hold them against was given, and none was checked."]
        : [.. CheckTable.Below(calculation.Checks, calculation.Beam)[..^1], .. NotJudged(calculation)];

    private static IEnumerable<string> NotJudged(Calculation calculation)
    {
        string[] names =
        [
            .. calculation.Checks.All
                .Where(check => check.Figures.Verdict == CheckVerdict.NotJudged)
                .Select(check => TypedLetters.Sentence(calculation.Beam, check.What)),
        ];
        return names.Length == 0 ? [] : [$"NOT JUDGED: {VariedWords.Listed(names)}."];
    }

    private static IEnumerable<string> Amiss(Calculation calculation) => calculation.Status == CheckStatus.Holds
        ? ["All that was asked for holds."]
        : ["NOT ALL THAT WAS ASKED FOR HOLDS: see the remarks, the stated figures and the checks below."];
}
