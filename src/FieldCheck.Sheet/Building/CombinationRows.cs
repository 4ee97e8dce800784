using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Building;

/// <summary>Reads the combinations; without any there is one of all loads as they stand.</summary>
internal static class CombinationRows
{
    /// <summary>Name of the combination that stands where none is written.</summary>
    internal const string AllLoads = "all loads";

    /// <summary>Tells what is wrong with the rows.</summary>
    internal static void Check(
        ImmutableArray<Row> rows, Rows<CombinationEntry> entries, LoadCases cases, ProblemList problems)
    {
        HashSet<string> names = new(StringComparer.Ordinal);
        for (int index = 0; index < rows.Length; index++)
        {
            string name = entries[index].Name ?? "";
            if (string.IsNullOrWhiteSpace(name))
            {
                rows[index].Refuse("name", ProblemText.NoCombinationName);
            }
            else if (!names.Add(name))
            {
                rows[index].Refuse("name", ProblemText.SameName("combination", name));
            }

            if (entries[index].Factors.Count == 0)
            {
                rows[index].Refuse("factors", ProblemText.NoFactors);
            }

            Figures.Check(Fields.CombinationFactors, entries[index], rows[index].Path, problems, cases.Doubt);
        }
    }

    /// <summary>The combinations of rows in which nothing is wrong; one factor for each case.</summary>
    internal static ImmutableArray<Combination> Of(Rows<CombinationEntry> entries, ImmutableArray<LoadCase> cases) =>
        entries.Count == 0
            ? [new Combination(AllLoads, CombinationBasis.Service, [.. cases.Select(_ => 1.0)])]
            : [.. entries.Select(entry => Of(entry, cases))];

    private static Combination Of(CombinationEntry entry, ImmutableArray<LoadCase> cases) => new(
        entry.Name!,
        entry.Basis == "factored" ? CombinationBasis.Factored : CombinationBasis.Service,
        [.. cases.Select(loads => Factor(entry, loads.Name))]);

    private static double Factor(CombinationEntry entry, string name) =>
        entry.Factors.FirstOrDefault(factor => factor.Name == name) is NamedFigure figure
            ? Figures.Number(figure)
            : 0;
}
