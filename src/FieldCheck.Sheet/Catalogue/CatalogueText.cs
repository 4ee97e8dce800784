using System.Collections.Immutable;
using System.Globalization;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Catalogue;

/// <summary>What is said of catalogue files and of the names looked for in them.</summary>
internal static class CatalogueText
{
    /// <summary>The status of an entry of the person's own that has none.</summary>
    internal const string Own = "as its owner wrote it";

    /// <summary>The family of an entry of the person's own that has none.</summary>
    internal const string OwnFamily = "your own";

    internal const string NoSource = "needs its source, as \"maker's table of 2024\": a figure without one helps nobody";
    internal const string FootInFlange = "the foot of the fillet lies inside the flange: it is measured from the flange's outer face";
    internal const string FilletTooLarge = "the fillets do not fit between web and flanges";
    internal const string TooSteep = "so steep a slope leaves no flange at its edge, or no web at its root";
    internal const string NoHollow = "the walls leave no hollow: write it as a rectangle";
    internal const string CornerTooLarge = "the corners are rounder than the tube is wide";
    internal const string NoCorner = "the outer corner cuts through the inner one: no wall is left there";
    internal const string NoModulus = "a grade needs its modulus, as \"11 GPa\"";
    internal const string ThicknessWithoutYield = "needs the yield that holds up to this thickness beside it, as yield = \"235 N/mm2\"";
    internal const string ShapeWithoutYield = "needs the yield of this shape beside it, as yield = \"50 ksi\"";
    internal const string NoBasis = "needs strengths = \"reference\" (NDS) or \"characteristic\" (EN 338, EN 14080) beside it";
    internal const string SizeFactorOfOthers =
        "\"dimension lumber\" goes with reference strengths, \"glulam\" with characteristic ones";
    internal const string MinimumAboveModulus = "this is above the modulus, and cannot be its least value";
    internal const string EmptyName = "a name has at least one letter or digit";
    internal const string TooManyEntries = "a catalogue file has at most 10,000 entries";
    internal const string TooLarge = "it is larger than 1 MiB.";
    internal const int LongestName = 40;

    internal static string NoForm => $"a shape needs its form: {KindWords.Either([.. ShapeForms.Words])}";

    internal static string LongName => $"a name has at most {LongestName} letters";

    internal static string OddName => "a name holds letters, digits and signs that print";

    internal static bool IsFromMemory(string status) => status.Contains("from memory", StringComparison.Ordinal);

    internal static string Needs(string form, string key) => $"form \"{form}\" needs its {key}";

    internal static string SizesCrossed(string from) => $"this is below {from}, and no piece is between them";

    internal const string ExcessCrossed = "this is not above excess_over, and no piece is between them";

    internal static string NeedsStrength(string key) => $"strengths need {key} beside them, as \"4 N/mm2\"";

    internal static string UnlikeItsSizes(double ratio) => string.Create(
        CultureInfo.InvariantCulture,
        $"this is {ratio:G4} times what the sizes give: is a digit or the unit wrong?");

    internal static string StandsAlready(string name, string file) =>
        $"{Found.Quoted(name)} is found under the same name in {file} already: that one counts";

    internal static string UnknownShape(string name, SectionCatalogue catalogue) =>
        $"the catalogue has no shape {Found.Quoted(name)}{Meant(name, catalogue.Names, catalogue.Search)}";

    internal static string UnknownGrade(string name, SectionCatalogue catalogue)
    {
        string none = $"the catalogue has no grade {Found.Quoted(name)}";
        string lowest = LowestGrades.Of(name, catalogue) is [_, ..] grades
            ? ": where nobody knows, the lowest here are " + string.Join(", ", grades)
                + "; what is unmarked, wet, cut or split may be weaker still"
            : Meant(name, catalogue.GradeNames, catalogue.SearchGrades);
        return none + lowest;
    }

    internal static string NotFlat(string name) =>
        $"the catalogue gives no figures of {Found.Quoted(name)} laid flat: it needs its weak_inertia there";

    /// <summary>": did you mean X?" where a name is spelt much like it, or begins or goes on so; else nothing.</summary>
    private static string Meant(
        string typed, IReadOnlyList<string> names, Func<string, ImmutableArray<CatalogueName>> search)
    {
        IReadOnlyList<string> near = NearSpelling.Of(typed, names);
        if (near.Count == 0 && typed.Trim().Length > 1)
        {
            near = [.. search(typed).Select(found => found.Name).Take(NearSpelling.MostOffered)];
        }

        return near.Count > 0 ? $": did you mean {KindWords.Either(near)}?" : "";
    }
}
