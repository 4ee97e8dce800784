using System.Collections.Immutable;
using FieldCheck.Reporting.Tables;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Strength;

namespace FieldCheck.Reporting.Pages;

/// <summary>What sections, seats and deflections are held against, with the working of each check.</summary>
internal static class StrengthBlocks
{
    internal static IEnumerable<RecordBlock> Of(Calculation calculation, BuiltBeam beam, RecordRequest request)
    {
        ImmutableArray<BeamCheck> checks = calculation.Checks.All;
        return checks.IsEmpty
            ? []
            :
            [
                new RecordBlock.Heading(2, "Checks"),
                new RecordBlock.Table(
                    "Each check: what there is, what is allowed, how much of it is used",
                    [
                        new("check"), new("have", IsNumber: true), new("allowed", IsNumber: true),
                        new("used", IsNumber: true), new("verdict"), new("where, under what, by what"),
                    ],
                    [.. checks.Select(check => Row(check, beam))]),
                .. CheckTable.Below(calculation.Checks) is { Length: > 1 } below
                    ? [new RecordBlock.Paragraph(below[0])]
                    : Array.Empty<RecordBlock>(),
                .. Works(calculation.Checks, beam, request),
            ];
    }

    /// <summary>The working of every check; in short, of the one that is used up most.</summary>
    private static IEnumerable<RecordBlock> Works(BeamChecks checks, BuiltBeam beam, RecordRequest request)
    {
        IEnumerable<BeamCheck> shown = !request.IsWorkingShort ? checks.All
            : checks.Governing is BeamCheck most ? [most]
            : [];
        string heading = request.IsWorkingShort ? "Working of the check that is used up most" : "Working of the checks";
        return shown.SelectMany(check => Work(check, beam)).ToImmutableArray() is { IsEmpty: false } works
            ? [new RecordBlock.Heading(3, heading), .. works]
            : [];
    }

    private static ImmutableArray<string> Row(BeamCheck check, BuiltBeam beam) =>
    [
        PlainAscii.Of(check.What),
        PlainAscii.Of(check.Have(beam.Display)),
        PlainAscii.Of(check.Allow(beam.Display)),
        check.Used.Length == 0 ? "--" : check.Used,
        check.Verdict,
        CheckTable.Detail(check),
    ];

    private static IEnumerable<RecordBlock> Work(BeamCheck check, BuiltBeam beam) =>
    [
        new RecordBlock.Paragraph($"{PlainAscii.Of(check.What)}: {check.Verdict}"),
        new RecordBlock.Sentences([.. CheckWork.Work(check, beam.Display).Select(line => PlainAscii.Of(line))]),
    ];
}
