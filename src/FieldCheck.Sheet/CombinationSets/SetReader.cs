using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Document.Tables;
using FieldCheck.Sheet.Presets;
using FieldCheck.Sheet.Presets.Toml;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.CombinationSets;

/// <summary>Reads a file that holds a set of combinations.</summary>
internal static class SetReader
{
    private const string NoFactors = "a row needs the factor of at least one case, as { dead = 1.2, live = 1.6 }";
    private const string NoCase = "psi belong to a case: needs its name, as \"live\"";
    private const string NothingVariable = "leading and others are cases with psi values, and none stands in this file";
    private const int MostVariable = 8;
    private const int MostUses = 100;
    private const int MostChoices = 256;

    /// <summary>Reads a file's bytes.</summary>
    /// <param name="name">The file, as it was named.</param>
    /// <param name="bytes">All its bytes.</param>
    /// <param name="problems">What is wrong, in order of line; empty where the set can be used.</param>
    internal static SetDocument? ReadBytes(string name, ReadOnlySpan<byte> bytes, out ImmutableArray<FileProblem> problems)
    {
        if (bytes.Length > BeamFileText.MostBytes)
        {
            problems = [FileProblem.OfWhole(name, "it is larger than 1 MiB.")];
            return null;
        }

        if (Utf8Text.ProblemOf(bytes) is TomlProblem problem)
        {
            problems = [problem.In(name)];
            return null;
        }

        return Read(name, Encoding.UTF8.GetString(bytes).TrimStart('\uFEFF'), out problems);
    }

    /// <summary>Reads a file's text.</summary>
    internal static SetDocument? Read(string name, string text, out ImmutableArray<FileProblem> problems)
    {
        TomlFile file = TomlReader.Read(text);
        ContentBinder binder = new(SetContent.Schema);
        Content? content = file.IsSound ? binder.Bind(SetContent.Schema, file.Root) : null;
        SetDocument? set = content is null ? null : SetContent.Read(content);
        IEnumerable<TomlProblem> wrong = set is null
            ? []
            : ProblemsOf(set).Select(problem => TomlPlace.Of(file, problem));
        problems = FileProblem.InOrder(
            [.. new[] { file.Problems, binder.Problems, wrong }.SelectMany(all => all).Select(one => one.In(name))]);
        return problems.IsEmpty ? set : null;
    }

    private static IEnumerable<Problem> ProblemsOf(SetDocument set) =>
    [
        .. set.Combinations.SelectMany((row, index) => ProblemsOf(row, $"combination[{index + 1}]", set)),
        .. set.Psi.SelectMany((row, index) => ProblemsOf(row, $"psi[{index + 1}]")),
        .. Product(set.Psi.CountBy(row => row.Case ?? "").Select(rows => rows.Value)) > MostUses
            ? [new Problem("psi[1]", TooManyUses, 0)]
            : Array.Empty<Problem>(),
    ];

    /// <summary>A product of counts, which may be beyond any whole number.</summary>
    private static double Product(IEnumerable<int> counts) => counts.Aggregate(1.0, (product, count) => product * count);

    private static IEnumerable<Problem> ProblemsOf(SetRowEntry row, string path, SetDocument set)
    {
        if (row.Basis is not (null or "service" or "factored"))
        {
            yield return new($"{path}.basis", ProblemText.NotOneOf(row.Basis, ["service", "factored"]), 0);
        }

        if (row.Factors.Count == 0)
        {
            yield return new($"{path}.factors", NoFactors, 0);
        }

        if (Product(row.Factors.Select(factor => Math.Max(1, SetTerm.Of(factor.Name).Cases.Length))) > MostChoices)
        {
            yield return new($"{path}.factors", TooManyWays, 0);
        }

        HashSet<string> named = new(StringComparer.OrdinalIgnoreCase);
        foreach (NamedFigure factor in row.Factors)
        {
            string key = $"{path}.factors.{TomlText.Key(factor.Name)}";
            foreach (string twice in SetTerm.Of(factor.Name).Cases.Distinct().Where(one => !named.Add(one)))
            {
                yield return new(key, ProblemText.SameName("figure of the row", twice), 0);
            }

            if (SetTerm.Of(factor.Name).Cases.IsEmpty && set.Psi.Count == 0)
            {
                yield return new(key, string.IsNullOrWhiteSpace(factor.Name) ? ProblemText.EmptyName : NothingVariable, 0);
            }

            if (SetTerm.Of(factor.Name).Variable == VariableCases.SomeOthers
                && set.Psi.Select(psi => psi.Case).Distinct().Count() is > MostVariable and int variable)
            {
                yield return new(key, TooManyChoices(variable), 0);
            }

            foreach (Problem problem in ProblemOf(factor.Text, key))
            {
                yield return problem;
            }
        }
    }

    private static string TooManyUses => string.Create(
        CultureInfo.InvariantCulture, $"every choice of one row for each case is a set of its own: at most {MostUses} sets in a file");

    private static string TooManyWays => string.Create(
        CultureInfo.InvariantCulture, $"every choice among cases joined by or is a combination: at most {MostChoices} of one row");

    private static string TooManyChoices(int variable) => string.Create(
        CultureInfo.InvariantCulture,
        $"some others is every choice of the variable cases: of at most {MostVariable}, and {variable} have psi values here");

    private static IEnumerable<Problem> ProblemsOf(PsiEntry row, string path) =>
    [
        .. string.IsNullOrWhiteSpace(row.Case) ? (Problem[])[new($"{path}.case", NoCase, 0)] : [],
        .. ProblemOf(row.Psi0, $"{path}.psi0"),
        .. ProblemOf(row.Psi1, $"{path}.psi1"),
        .. ProblemOf(row.Psi2, $"{path}.psi2"),
    ];

    private static IEnumerable<Problem> ProblemOf(string? number, string key) =>
        number is not null && NumberReader.Read(number) is Reading<double>.Refused refused
            ? [new Problem(key, refused.Text, refused.Offset)]
            : [];
}
