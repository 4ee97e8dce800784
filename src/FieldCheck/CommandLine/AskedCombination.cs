using System.Collections.Immutable;
using System.Globalization;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Reporting;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.CommandLine;

/// <summary>Finds the combination that is asked for.</summary>
internal static class AskedCombination
{
    /// <summary>Which it is, counted from 0.</summary>
    /// <param name="stands">The combinations there are.</param>
    /// <param name="text">Its name, whose capitals do not count, or its number, counted from 1.</param>
    internal static Reading<int> Find(BeamOutcome.Stands stands, string text)
    {
        string wanted = text.Trim();
        ImmutableArray<string> names = [.. stands.Combinations.Select(answer => answer.Combination.Name)];
        int index = names.ToList().FindIndex(name => name.Equals(wanted, StringComparison.OrdinalIgnoreCase));
        if (index < 0 && int.TryParse(wanted, NumberStyles.None, CultureInfo.InvariantCulture, out int number)
            && number >= 1 && number <= names.Length)
        {
            index = number - 1;
        }

        return index >= 0
            ? new Reading<int>.Accepted(index)
            : new Reading<int>.Refused(
                $"there is no such combination; there is {string.Join(", ", names.Select(PlainAscii.Of))}.", 0);
    }
}
