using System.Collections.Immutable;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Reporting.Tables;
using FieldCheck.Sheet;

namespace FieldCheck.Reporting.Working;

/// <summary>The working by hand as a page: of which beam, and every combination asked for. Plain ASCII.</summary>
public static class PrintedWorking
{
    private static readonly WorkingLine Empty = new("", WorkingLineKind.Words);

    /// <summary>The page.</summary>
    /// <param name="calculation">The beam and what follows from it.</param>
    /// <param name="file">The file's name; empty when there is none.</param>
    /// <param name="combination">Which combination, counted from 0; null for all, one after the other.</param>
    /// <param name="request">How it is wanted.</param>
    /// <returns>Lines, none longer than the width asked for.</returns>
    public static ImmutableArray<string> Lines(
        Calculation calculation, string file, int? combination, WorkingRequest request)
    {
        ArgumentNullException.ThrowIfNull(calculation);
        ArgumentNullException.ThrowIfNull(request);
        return
        [
            .. Heading(calculation, file).SelectMany(line => TextFlow.Wrap(line, request.Width, indent: 2)),
            .. Pages(calculation, combination, request).Select(line => line.Text),
        ];
    }

    /// <summary>The page without its heading.</summary>
    internal static IEnumerable<WorkingLine> Pages(Calculation calculation, int? combination, WorkingRequest request)
    {
        int count = calculation.Outcome is BeamOutcome.Stands stands ? stands.Combinations.Length : 1;
        IEnumerable<int> asked = combination is int one ? [one] : Enumerable.Range(0, count);
        return asked.SelectMany(index => Of(calculation, index, request));
    }

    private static IEnumerable<string> Heading(Calculation calculation, string file)
    {
        string? title = calculation.Document.Title;
        yield return title is null ? "Working by hand of a beam" : $"Working by hand: {PlainAscii.Of(title)}";
        if (file.Length > 0)
        {
            yield return $"file: {PlainAscii.Of(file)}";
        }
    }

    private static IEnumerable<WorkingLine> Of(Calculation calculation, int index, WorkingRequest request)
    {
        string? under = calculation.Outcome is BeamOutcome.Stands { Combinations: { Length: > 1 } answers }
            ? $"UNDER {TypedLetters.Name(calculation.Beam, answers[index].Combination.Name)} "
                + $"({BasisWords.Of(answers[index].Combination.Basis)}, combination {index + 1} of {answers.Length})"
                + (VariedWords.LeftOut(calculation.Beam!, answers[index].Combination) is null ? "" : $", {VariedWords.NotTheWorst}")
            : null;
        return
        [
            Empty,
            .. under is null ? [] : (WorkingLine[])
            [
                .. TextFlow.Wrap(under, request.Width, indent: 2).Select(line => new WorkingLine(line, WorkingLineKind.Step)), Empty,
            ],
            .. WorkingText.Lines(calculation, index, request),
        ];
    }
}
