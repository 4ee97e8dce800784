using System.Collections.Immutable;
using FieldCheck.Reporting.Tables;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Strength;

namespace FieldCheck.Reporting.Pages;

/// <summary>What sections, seats and deflections are held against, with the working of each check.</summary>
internal static class StrengthBlocks
{
    private const int Indent = 3;

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
                .. CheckTable.Below(calculation.Checks, beam) is { Length: > 1 } below
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
        ImmutableArray<RecordLine> lines =
        [
            .. shown.SelectMany(check => Work(check, beam, request.Width)).Concat(Sizes([.. shown], beam, request.Width)).Skip(1),
        ];
        return lines.IsEmpty ? [] : [new RecordBlock.Heading(3, heading), new RecordBlock.Lines(lines)];
    }

    /// <summary>An empty line, then the sizes that the formulas above speak of.</summary>
    private static IEnumerable<RecordLine> Sizes(BeamCheck[] shown, BuiltBeam beam, int width)
    {
        ImmutableArray<RecordLine> lines =
        [
            .. shown.Where(check => check.Figures.Span is not null && check.Figures.Terms.Any(term => term.By is not null))
                .Select(check => beam.Sticks[check.Figures.Span!.Value])
                .DistinctBy(stick => stick.SectionName)
                .Where(stick => stick.Section is not null)
                .Select(stick => (stick.SectionName, Sizes: SectionSizes.Of(stick.Section!)))
                .Where(stick => !stick.Sizes.IsEmpty)
                .SelectMany(stick => TextFlow.Wrap(
                    TypedLetters.Sentence(beam, $"{stick.SectionName}: {Said(stick.Sizes, beam)}"), width - Indent, indent: 4))
                .Select(line => new RecordLine(new string(' ', Indent) + line)),
        ];
        return lines.IsEmpty ? [] : [new(""), new("sizes of the sections in the formulas") { IsHeading = true }, .. lines];
    }

    private static string Said(ImmutableArray<(string Sign, double Metres)> sizes, BuiltBeam beam) =>
        string.Join(", ", sizes.Select(size => $"{size.Sign} = {beam.Display.Movement(size.Metres)}"));

    private static ImmutableArray<string> Row(BeamCheck check, BuiltBeam beam) =>
        [.. CheckTable.Cells(check, beam), CheckTable.Detail(check, beam)];

    /// <summary>An empty line, then the working of one check.</summary>
    private static IEnumerable<RecordLine> Work(BeamCheck check, BuiltBeam beam, int width) =>
    [
        new(""),
        .. TextFlow.Wrap($"{TypedLetters.Sentence(beam, check.What)}: {check.Verdict}", width, indent: 4)
            .Select(line => new RecordLine(line) { IsHeading = true }),
        .. CheckWork.Work(check, beam.Display)
            .SelectMany(line => TextFlow.Wrap(TypedLetters.Sentence(beam, line), width - Indent, indent: 4))
            .Select(line => new RecordLine(new string(' ', Indent) + line)),
    ];
}
