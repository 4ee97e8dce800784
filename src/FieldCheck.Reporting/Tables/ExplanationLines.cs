using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Stated;

namespace FieldCheck.Reporting.Tables;

/// <summary>What would explain the stated figures of a sheet: nothing where none is called low or high.</summary>
internal static class ExplanationLines
{
    internal static IEnumerable<string> Of(Calculation calculation, BuiltBeam beam) =>
        calculation.Explanations.SelectMany(set => Of(calculation, set, new BeamWords(beam)));

    /// <summary>The same as whole sentences, for reading aloud.</summary>
    internal static IEnumerable<string> Spoken(Calculation calculation, BuiltBeam beam) => calculation.Explanations
        .SelectMany(set => Of(calculation, set, new BeamWords(beam, IsSpoken: true)))
        .Select(line => line.TrimStart('-', ' ').TrimEnd(':'));

    private static IEnumerable<string> Of(Calculation calculation, StatedExplanation set, BeamWords words)
    {
        string source = set.Source is null ? "" : $", as {TypedLetters.Name(words.Beam, set.Source)} has them";
        string[] heading = calculation.Explanations.Length > 1 || set.Source is not null
            ? [$"The figures for {TypedLetters.Name(words.Beam, set.Against.Name)}{source}:"]
            : [];
        return [.. heading, .. WordsOf(calculation, set, words).Of(set.Diagnosis, IsPlaceTold(calculation, set))];
    }

    /// <summary>The words for one set of the figures of a sheet.</summary>
    internal static ExplanationWords WordsOf(Calculation calculation, StatedExplanation set, BeamWords words)
    {
        StatedWords stated = new(words);
        return new ExplanationWords(
            words, set.Set.Figures, [.. set.Rows.Select(row => stated.NumberTyped(calculation.Stated[row]))]);
    }

    /// <summary>Whether the balance of the same figures says what load they lack.</summary>
    private static bool IsPlaceTold(Calculation calculation, StatedExplanation set) => calculation.StatedBalances.Any(
        balance => balance.Balance.Lacking is not null
            && balance.Source == set.Source
            && balance.Against.IsSameAs(set.Against));
}
