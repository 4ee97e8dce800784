using System.Collections.Immutable;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Reporting.Tables;
using FieldCheck.Reporting.Working;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;

namespace FieldCheck.Reporting.Record;

/// <summary>The check as labelled sentences, one fact a line, without pictures or columns. Plain ASCII.</summary>
public static class PlainText
{
    /// <summary>The check of one beam.</summary>
    /// <param name="calculation">What came of it.</param>
    /// <param name="request">What to show; lines are not broken, whatever its width.</param>
    public static ImmutableArray<string> Lines(Calculation calculation, CheckRequest request)
    {
        ArgumentNullException.ThrowIfNull(calculation);
        ArgumentNullException.ThrowIfNull(request);
        IEnumerable<string> result = calculation is { Beam: BuiltBeam beam, Outcome: BeamOutcome outcome }
            ?
            [
                .. SpokenAnswer.Labelled("Read", InputLines.Of(calculation, isSpoken: true)),
                .. SpokenAnswer.Outcome(beam, outcome, null, request.At),
                .. SpokenAnswer.Envelopes(calculation, beam),
                .. SpokenAnswer.Labelled("How well it is known", BandWords.Of(calculation, isSpoken: true)),
                .. SpokenAnswer.Stated(calculation, beam),
                .. SpokenAnswer.Checks(calculation, beam),
            ]
            : SpokenAnswer.Labelled("To mend", ProblemLines.Of(calculation));
        return
        [
            .. CheckHeading.InAscii(calculation, request).Select(SpokenAnswer.Sentence),
            .. result,
            .. SpokenAnswer.Labelled("Remark", MessageLines.Of(calculation)),
            .. SpokenAnswer.Cautions(calculation),
            .. request.HasWorking ? Working(calculation) : [],
        ];
    }

    private static ImmutableArray<string> Working(Calculation calculation) => SpokenWorking.Of(
        PrintedWorking.Pages(calculation, null, new WorkingRequest(SpokenWorking.Width) { HasTables = false })
            .Select(line => line.Text)
            .Prepend("Working by hand."));
}
