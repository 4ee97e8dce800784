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
        string source = set.Source is null ? "" : $", as {PlainAscii.Of(set.Source)} has them";
        string[] heading = calculation.Explanations.Length > 1 || set.Source is not null
            ? [$"The figures for {PlainAscii.Of(set.Against.Name)}{source}:"]
            : [];
        return [.. heading, .. new ExplanationWords(words, set.Set.Figures).Of(set.Diagnosis)];
    }
}
