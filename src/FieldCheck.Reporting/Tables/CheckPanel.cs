using System.Collections.Immutable;
using FieldCheck.Mechanics.Strength;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Strength;

namespace FieldCheck.Reporting.Tables;

/// <summary>What the checks of a beam come to, for a view.</summary>
public static class CheckPanel
{
    /// <summary>What a line begins with that is of the check whose work is shown.</summary>
    public const string Chosen = CheckBars.Chosen;

    /// <summary>Every check in columns, what is used up most and what is not checked; nothing where nothing is asked.</summary>
    /// <param name="calculation">What came of the beam.</param>
    /// <param name="width">The widest line [columns].</param>
    public static ImmutableArray<string> Lines(Calculation calculation, int width)
    {
        ArgumentNullException.ThrowIfNull(calculation);
        return calculation.Beam is BuiltBeam beam ? CheckTable.Lines(calculation, beam, width) : [];
    }

    /// <summary>
    /// Every check in a line with a bar of how much is used, the work of one of them, and what is not checked; nothing
    /// where nothing is asked.
    /// </summary>
    /// <param name="calculation">What came of the beam.</param>
    /// <param name="chosen">The check whose work is shown, counted from 0; null: none.</param>
    /// <param name="width">The widest line [columns].</param>
    public static ImmutableArray<string> WithBars(Calculation calculation, int? chosen, int width)
    {
        ArgumentNullException.ThrowIfNull(calculation);
        return calculation.Beam is BuiltBeam beam ? CheckBars.Lines(calculation, beam, chosen, width) : [];
    }

    /// <summary>
    /// The verdict in few words, gravest first, as "OVER deflection of the overhang 1.32, 1 NOT JUDGED"; null where
    /// nothing is asked for.
    /// </summary>
    /// <param name="calculation">What came of the beam.</param>
    public static string? InShort(Calculation calculation)
    {
        ArgumentNullException.ThrowIfNull(calculation);
        BeamChecks checks = calculation.Checks;
        BeamCheck[] open = [.. checks.All.Where(check => check.Figures.Verdict == CheckVerdict.NotJudged)];
        int over = checks.All.Count(check => check.Figures.Verdict == CheckVerdict.Over);
        return checks.Verdict switch
        {
            CheckVerdict.Over => $"OVER {Most(checks)}"
                + (over > 1 ? $", {over - 1} more" : "")
                + (open.Length > 0 ? $", {open.Length} NOT JUDGED" : ""),
            CheckVerdict.NotJudged => $"NOT JUDGED {PlainAscii.Of(open[0].What)}"
                + (open.Length > 1 ? $", {open.Length - 1} more" : "")
                + (checks.Governing is null ? "" : $"; most used {Most(checks)}"),
            CheckVerdict.Ok => $"OK, most used {Most(checks)}",
            _ => null,
        };
    }

    private static string Most(BeamChecks checks) =>
        checks.Governing is BeamCheck most ? $"{PlainAscii.Of(most.What)} {most.Used}" : "";
}
