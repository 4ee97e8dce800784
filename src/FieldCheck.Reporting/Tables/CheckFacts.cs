using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Strength;

namespace FieldCheck.Reporting.Tables;

/// <summary>The checks of a beam, each in two or three facts with its name before them, for reading aloud.</summary>
internal static class CheckFacts
{
    internal static IEnumerable<(string Label, string Fact)> Of(Calculation calculation, BuiltBeam beam)
    {
        foreach (BeamCheck check in calculation.Checks.All)
        {
            string label = $"Check of {PlainAscii.Of(check.What)}";
            yield return (label, check.Why is string why ? $"{check.Verdict}, because {PlainAscii.Of(why)}" : check.Verdict);
            if (check.Why is null)
            {
                string have = SpokenUnits.In(PlainAscii.Of(check.Have(beam.Display)));
                string allow = SpokenUnits.In(PlainAscii.Of(check.Allow(beam.Display)));
                yield return (label, $"has {have}, may have {allow}, uses {check.Used} of it");
            }

            if (CheckTable.Place(check) is { Length: > 0 } place && check.Why is null)
            {
                yield return (label, place);
            }

            yield return (label, $"limit by {PlainAscii.Of(check.Source)}");
        }

        foreach (string line in CheckTable.Below(calculation.Checks))
        {
            yield return ("Checks", line);
        }
    }
}
