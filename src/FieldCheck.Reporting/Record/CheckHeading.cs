using System.Collections.Immutable;
using FieldCheck.Mechanics.Solving;
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

    /// <summary>The word for what came of it; null while it is not known.</summary>
    internal static string? Word(BeamOutcome? outcome) => outcome switch
    {
        BeamOutcome.Stands => "STANDS",
        BeamOutcome.CanMove or BeamOutcome.Tips => "CAN MOVE",
        _ => null,
    };

    private static IEnumerable<string> Entry(string name, string? text) =>
        text is null ? [] : [$"{name}: {PlainAscii.Of(text)}"];
}
