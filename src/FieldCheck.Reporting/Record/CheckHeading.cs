using System.Collections.Immutable;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Reporting.Tables;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Reporting.Record;

/// <summary>What a check is of, and whether the beam stands.</summary>
internal static class CheckHeading
{
    /// <summary>In the letters that were typed: a name of a file that is spelled otherwise names no file.</summary>
    internal static ImmutableArray<string> Lines(Calculation calculation, CheckRequest request) =>
        Lines(calculation, request, text => TextSafety.ForTerminal(text.ReplaceLineEndings(" ").Replace('\t', ' ')));

    /// <summary>In plain ASCII.</summary>
    internal static ImmutableArray<string> InAscii(Calculation calculation, CheckRequest request) =>
        Lines(calculation, request, PlainAscii.Of);

    private static ImmutableArray<string> Lines(Calculation calculation, CheckRequest request, Func<string, string> letters)
    {
        BeamDocument document = calculation.Document;
        RecordEntry record = document.Record;
        return
        [
            document.Title is null ? "Check of a beam" : $"Check of a beam: {letters(document.Title)}",
            .. Entry("file", request.File.Length == 0 ? null : request.File),
            .. Entry("job", record.Job),
            .. Entry("location", record.Location),
            .. Entry("prepared by", record.PreparedBy),
            .. Entry("prepared for", record.PreparedFor),
            .. Entry("checked by", record.CheckedBy),
            .. Entry("date", record.Date),
            .. Entry("category", record.Category),
            .. Entry("notes", document.Notes),
            .. Entry("result", Word(calculation)),
        ];

        IEnumerable<string> Entry(string name, string? text) => text is null ? [] : [$"{name}: {letters(text)}"];
    }

    private static string? Word(Calculation calculation) => calculation.Outcome is not BeamOutcome outcome
        ? null
        : MotionWords.Verdict(outcome) ?? MotionWords.Standing(calculation);
}
