using System.Collections.Immutable;
using FieldCheck.Reporting.Tables;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Strength;

namespace FieldCheck.Reporting.Record;

/// <summary>The checks of a beam by their numbers, one a sentence, and the work of one of them. Plain ASCII.</summary>
public static class SpokenChecks
{
    /// <summary>Every check, which is used up most, what is not checked, and how far checks go.</summary>
    /// <param name="calculation">What came of the beam.</param>
    /// <returns>The sentences; none where nothing is asked of the beam.</returns>
    public static ImmutableArray<string> Lines(Calculation calculation)
    {
        ArgumentNullException.ThrowIfNull(calculation);
        return calculation is { Beam: BuiltBeam beam, Checks.All: [_, ..] all }
            ?
            [
                .. all.Select((check, index) => Sentence(check, beam, index)),
                .. CheckTable.Below(calculation.Checks),
                .. CheckBars.Said(calculation).Select(line => SpokenAnswer.Sentence(SpokenUnits.Throughout(line))),
            ]
            : [];
    }

    /// <summary>One check, and how its figures come about.</summary>
    /// <param name="calculation">What came of the beam; it stands.</param>
    /// <param name="index">Which check, counted from 0.</param>
    public static ImmutableArray<string> Work(Calculation calculation, int index)
    {
        ArgumentNullException.ThrowIfNull(calculation);
        BuiltBeam beam = calculation.Beam ?? throw new ArgumentException("A beam that does not read has no check.", nameof(calculation));
        BeamCheck check = calculation.Checks.All[index];
        return
        [
            Sentence(check, beam, index),
            .. CheckWork.Work(check, beam.Display)
                .Where(line => check.Why is null || !line.Contains(check.Why, StringComparison.Ordinal))
                .Select(line => SpokenAnswer.Aloud(line) + "."),
        ];
    }

    private static string Sentence(BeamCheck check, BuiltBeam beam, int index) => SpokenAnswer.Sentence(
        $"check {index + 1}, {PlainAscii.Of(check.What)}: {string.Join("; ", CheckFacts.Of(check, beam))}");
}
