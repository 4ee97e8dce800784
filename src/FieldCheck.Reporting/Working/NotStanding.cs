using System.Collections.Immutable;
using FieldCheck.Mechanics.HandMethods;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Reporting.Tables;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;

namespace FieldCheck.Reporting.Working;

/// <summary>Of a beam that cannot be worked: as far as it goes, and why no further.</summary>
internal static class NotStanding
{
    /// <summary>A beam that can move, or of which no answer can be given.</summary>
    internal static ImmutableArray<WorkingLine> Lines(
        Calculation calculation, BuiltBeam beam, BeamOutcome outcome, WorkingRequest request)
    {
        WorkingPage page = new(request);
        if (outcome is BeamOutcome.Tips tips)
        {
            HandWorking working = HandWorking.Of(beam.Model, tips.Combination.Factors, request.About);
            WorkingSheet.Write(page, calculation, beam, working);
        }
        else
        {
            WorkingSheet.Write(page, calculation, beam, HandWorking.FreeBodyOf(beam.Model));
        }

        page.Result($"{MotionWords.Verdict(outcome)}{string.Concat(MotionWords.Of(beam, outcome).Select(motion => $": {motion}"))}.");
        foreach (string message in MessageLines.InOrder(calculation).Select(message => PlainAscii.Of(message.Text)))
        {
            page.Result(message);
        }

        return page.Lines;
    }

    /// <summary>A beam with cells to mend.</summary>
    internal static ImmutableArray<WorkingLine> Unread(Calculation calculation, WorkingRequest request)
    {
        WorkingPage page = new(request);
        page.Result("Nothing can be worked before these cells are mended:");
        foreach (string problem in ProblemLines.Of(calculation))
        {
            page.Result(problem);
        }

        return page.Lines;
    }
}
