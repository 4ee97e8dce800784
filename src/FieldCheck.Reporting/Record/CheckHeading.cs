using System.Collections.Immutable;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Reporting.Tables;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Reporting.Record;

/// <summary>What a check is of, and whether the beam stands.</summary>
internal static class CheckHeading
{
    internal static ImmutableArray<string> Lines(Calculation calculation, CheckRequest request)
    {
        BeamDocument document = calculation.Document;
        RecordEntry record = document.Record;
        return
        [
            document.Title is null ? "Check of a beam" : $"Check of a beam: {PlainAscii.Of(document.Title)}",
            .. Entry("file", request.File.Length == 0 ? null : request.File),
            .. Entry("job", record.Job),
            .. Entry("location", record.Location),
            .. Entry("prepared by", record.PreparedBy),
            .. Entry("prepared for", record.PreparedFor),
            .. Entry("checked by", record.CheckedBy),
            .. Entry("date", record.Date),
            .. Entry("category", record.Category),
            .. Entry("notes", document.Notes),
            .. Entry("result", Word(calculation.Outcome)),
        ];
    }

    private static string? Word(BeamOutcome? outcome) =>
        outcome is null ? null : MotionWords.Verdict(outcome) ?? "STANDS";

    private static IEnumerable<string> Entry(string name, string? text) =>
        text is null ? [] : [$"{name}: {PlainAscii.Of(text)}"];
}
