using System.Collections.Immutable;
using System.Text.RegularExpressions;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Editing;

/// <summary>Factors written as a sum, as people name a combination: "1.2 dead + 1.6 live", "0.6D - 1.0W".</summary>
internal static partial class FactorText
{
    /// <summary>The factors that a name spells; none where it is anything but such a sum.</summary>
    /// <param name="name">The name of a combination.</param>
    /// <param name="cases">The cases there may be; the beginning of only one of them will do.</param>
    internal static Rows<NamedFigure> Read(string name, ImmutableArray<string> cases)
    {
        NamedFigure?[] terms = [.. Sign().Split(name.Replace('−', '-')).Select(term => Term(term, cases))];
        bool isSum = terms.All(term => term is not null)
            && terms.Select(term => term!.Name).Distinct().Count() == terms.Length;
        return isSum ? [.. terms.OfType<NamedFigure>()] : [];
    }

    private static NamedFigure? Term(string text, ImmutableArray<string> cases)
    {
        Match term = OneTerm().Match(text);
        if (!term.Success)
        {
            return null;
        }

        string word = term.Groups["case"].Value;
        string named = cases.FirstOrDefault(name => name.Equals(word, StringComparison.OrdinalIgnoreCase))
            ?? SupportCells.Whole(word, cases);
        string factor = term.Groups["factor"] is { Success: true } written ? written.Value : "1";
        return cases.Contains(named) ? new NamedFigure(named, term.Groups["minus"].Value + factor) : null;
    }

    /// <summary>Where a term begins; a minus with a blank before it, for "dead-live" may be a name.</summary>
    [GeneratedRegex(@"\+|(?<=\s)(?=-)", RegexOptions.CultureInvariant)]
    private static partial Regex Sign();

    [GeneratedRegex(
        @"^\s*(?<minus>-)?\s*((?<factor>[0-9]+(\.[0-9]+)?|\.[0-9]+)\s*[*×]?\s*)?(?<case>[A-Za-z][A-Za-z0-9_]*)\s*$",
        RegexOptions.CultureInvariant)]
    private static partial Regex OneTerm();
}
