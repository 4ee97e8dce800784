using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Strength;

namespace FieldCheck.Reporting.Tables;

/// <summary>The checks of a beam, each in two or three facts with its name before them, for reading aloud.</summary>
internal static class CheckFacts
{
    internal static IEnumerable<(string Label, string Fact)> Of(Calculation calculation, BuiltBeam beam) =>
    [
        .. calculation.Checks.All.SelectMany(check => Of(check, beam).Select(fact => ($"Check of {PlainAscii.Of(check.What)}", fact))),
        .. CheckTable.Below(calculation.Checks).Select(line => ("Checks", line)),
    ];

    /// <summary>The verdict of one check, what it has and may have, where, and what the limit comes from.</summary>
    internal static IEnumerable<string> Of(BeamCheck check, BuiltBeam beam)
    {
        yield return check.Why is string why ? $"{check.Verdict}, because {SpokenUnits.Throughout(PlainAscii.Of(why))}" : check.Verdict;
        if (check.Why is null)
        {
            string have = SpokenUnits.In(PlainAscii.Of(check.Have(beam.Display)));
            string allow = SpokenUnits.In(PlainAscii.Of(check.Allow(beam.Display)));
            yield return $"has {have}, may have {allow}, uses {check.Used} of it";
        }

        if (CheckTable.Place(check) is { Length: > 0 } place && check.Why is null)
        {
            yield return SpokenUnits.Throughout(place);
        }

        yield return $"limit by {PlainAscii.Of(check.Source)}";
    }
}
