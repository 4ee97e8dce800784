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
        string[] motions = [.. MotionWords.Of(beam, outcome).Select(motion => $": {motion}")];
        page.Result($"{MotionWords.Verdict(outcome)}{string.Concat(motions)}.");
        page.Results(MessageLines.InOrder(calculation).Select(message => TypedLetters.Sentence(beam, message.Text)));
        HandWorking working = outcome is BeamOutcome.Tips tips
            ? HandWorking.Of(beam.Model, tips.Combination.Factors, request.About)
            : HandWorking.FreeBodyOf(beam.Model, outcome is BeamOutcome.CanMove);
        WorkingSheet.Write(page, calculation, beam, working);
        return page.Lines;
    }

    /// <summary>A beam with cells to mend.</summary>
    internal static ImmutableArray<WorkingLine> Unread(Calculation calculation, WorkingRequest request)
    {
        WorkingPage page = new(request);
        page.Result("Nothing can be worked before these cells are mended:");
        page.Results(ProblemLines.Of(calculation));
        return page.Lines;
    }
}
