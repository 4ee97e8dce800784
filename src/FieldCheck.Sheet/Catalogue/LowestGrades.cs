using System.Collections.Immutable;

namespace FieldCheck.Sheet.Catalogue;

/// <summary>The lowest grade of each family, for a stick of which nobody knows the grade.</summary>
internal static class LowestGrades
{
    private static readonly ImmutableArray<string> Unknown = ["unknown", "unmarked", "notknown", "any", "none"];

    private static readonly ImmutableArray<string> Timber = ["timber", "wood", "lumber", "softwood"];

    private static readonly ImmutableArray<string> Metals = ["steel", "aluminium", "aluminum"];

    /// <summary>The lowest grades of the families that a word speaks of, as "C14 (softwood, EN 338)".</summary>
    /// <param name="word">What stands in place of a grade.</param>
    /// <param name="catalogue">The grades.</param>
    /// <returns>None where the word is not one for "not known" or for a material.</returns>
    internal static ImmutableArray<string> Of(string word, SectionCatalogue catalogue) =>
        [.. NamesOf(word, catalogue).Select(grade => $"{grade.Name} ({grade.Family})")];

    /// <summary>The same by their names.</summary>
    internal static ImmutableArray<CatalogueName> NamesOf(string word, SectionCatalogue catalogue)
    {
        string plain = CatalogueName.Plain(word).TrimEnd('?');
        Func<CatalogueGrade, bool>? isMeant =
            plain.Length == 0 || Unknown.Contains(plain) ? _ => true
            : Timber.Contains(plain) ? grade => grade.Material.Timber is not null
            : Metals.Contains(plain) ? grade => grade.Family.Contains(plain[..4], StringComparison.OrdinalIgnoreCase)
            : null;
        return isMeant is null
            ? []
            : [.. catalogue.GradeNames
                .Select(name => catalogue.Grade(name)!)
                .Where(isMeant)
                .GroupBy(grade => grade.Family)
                .Select(family => new CatalogueName(family.MinBy(Strength)!.Name, family.Key))];
    }

    private static double? Strength(CatalogueGrade grade) =>
        grade.Material.Timber?.Bending ?? grade.Material.Yield ?? grade.Material.Modulus;
}
