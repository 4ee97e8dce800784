using System.Collections.Immutable;
using System.Globalization;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.CombinationSets;

/// <summary>Makes combinations for the cases of one beam out of the rows of a set.</summary>
/// <param name="cases">The cases that have loads.</param>
/// <param name="psi">The variable cases of the set.</param>
internal sealed class SetExpansion(ImmutableArray<string> cases, ImmutableArray<PsiEntry> psi)
{
    /// <summary>Products of factors are rounded to so many places: 1.5 x 0.7 is 1.05.</summary>
    private const int Places = 6;

    private readonly ImmutableArray<string> _variable =
        [.. psi.Select(row => row.Case!).Where(name => cases.Contains(name, StringComparer.Ordinal))];

    /// <summary>The combinations of one row: none where what it needs has no loads.</summary>
    internal IEnumerable<CombinationSetRow> Of(SetRowEntry row)
    {
        (SetTerm Term, double Factor)[] terms =
            [.. row.Factors.Select(factor => (SetTerm.Of(factor.Name), Number(factor.Text)))];
        ImmutableArray<string?> leading =
            terms.Any(one => one.Term.Variable == VariableCases.Leading) ? [.. _variable] : [null];
        return row.Needs.All(need => SetTerm.Either(need).Any(HasLoads))
            ? from leader in leading
              from chosen in Choices(terms)
              from others in Others(terms, leader, chosen)
              let factors = Factors(terms, leader, chosen, others)
              where factors.Count > 0
              select new CombinationSetRow(
                  new CombinationEntry { Name = NameOf(factors), Basis = row.Basis, Factors = factors },
                  row.Expression ?? "",
                  row.Source ?? "",
                  row.Status ?? "")
            : [];
    }

    /// <summary>Two combinations with one key say the same.</summary>
    internal static string KeyOf(CombinationEntry entry) => string.Join(
        '\n',
        entry.Factors
            .Where(factor => Number(factor.Text) != 0)
            .Select(factor => $"{Number(factor.Text).ToString("R", CultureInfo.InvariantCulture)} {factor.Name}")
            .Order(StringComparer.Ordinal)
            .Prepend(entry.Basis ?? "service"));

    /// <summary>Which case each term takes: every way of choosing one where it names several.</summary>
    private IEnumerable<ImmutableArray<string?>> Choices((SetTerm Term, double Factor)[] terms) => terms.Aggregate(
        (IEnumerable<ImmutableArray<string?>>)[[]],
        (chosen, one) => chosen.SelectMany(before =>
            one.Term.Cases.Where(HasLoads).DefaultIfEmpty<string?>(null).Select(name => before.Add(name))));

    /// <summary>The variable cases that go with the leading one: all others, or every choice of them, the largest first.</summary>
    private ImmutableArray<ImmutableArray<string>> Others(
        (SetTerm Term, double Factor)[] terms, string? leader, ImmutableArray<string?> chosen)
    {
        ImmutableArray<string> all = [.. _variable.Where(name => name != leader && !chosen.Contains(name))];
        return terms.Any(one => one.Term.Variable == VariableCases.SomeOthers)
            ? [.. Enumerable.Range(0, 1 << all.Length)
                .Select(left => all.Where((_, index) => (left >> (all.Length - 1 - index) & 1) == 0).ToImmutableArray())
                .OrderByDescending(some => some.Length)]
            : [all];
    }

    private Rows<NamedFigure> Factors(
        (SetTerm Term, double Factor)[] terms,
        string? leader,
        ImmutableArray<string?> chosen,
        ImmutableArray<string> others)
    {
        IEnumerable<(string Case, double Factor)> factors = terms.Zip(chosen).SelectMany(pair =>
        {
            (SetTerm term, double factor) = pair.First;
            ImmutableArray<string?> taken = term.Variable switch
            {
                VariableCases.Leading => [leader],
                VariableCases.None => [pair.Second],
                _ => [.. others],
            };
            return taken.OfType<string>().Select(name => (name, factor * PsiOf(name, term.Psi)));
        });
        return
        [
            .. factors.Select(one => (one.Case, Factor: Math.Round(one.Factor, Places)))
                .Where(one => one.Factor != 0)
                .Select(one => new NamedFigure(one.Case, Text(one.Factor))),
        ];
    }

    private double PsiOf(string name, int? which)
    {
        PsiEntry? row = psi.FirstOrDefault(row => row.Case == name);
        string? text = which switch
        {
            0 => row?.Psi0,
            1 => row?.Psi1,
            2 => row?.Psi2,
            _ => null,
        };
        return text is null ? 1 : Number(text);
    }

    private bool HasLoads(string name) => cases.Contains(name, StringComparer.Ordinal);

    /// <summary>"1.2 dead + 1.6 live"; a factor 1 is not said.</summary>
    private static string NameOf(Rows<NamedFigure> factors) => string.Concat(factors.Select((factor, index) =>
    {
        double value = Number(factor.Text);
        string sign = index == 0 ? (value < 0 ? "-" : "") : value < 0 ? " - " : " + ";
        string size = Math.Abs(value) == 1 ? "" : Text(Math.Abs(value)) + " ";
        return sign + size + factor.Name.Replace('_', ' ');
    }));

    private static string Text(double number) => number.ToString("0.0#####", CultureInfo.InvariantCulture);

    private static double Number(string text) =>
        NumberReader.Read(text) is Reading<double>.Accepted read ? read.Value : 0;
}
