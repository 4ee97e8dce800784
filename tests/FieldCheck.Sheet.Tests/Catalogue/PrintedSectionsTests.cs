using System.Globalization;
using FieldCheck.Mechanics.Model;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Tests.Catalogue;

/// <summary>
/// Printed figures of the shipped shapes against those worked out from their outlines: the table of sections in
/// docs/verification.md. FIELDCHECK_ACCEPT=1 writes it anew; then read the change.
/// </summary>
public sealed class PrintedSectionsTests
{
    private const string Begin = "<!-- sections: begin, written by PrintedSectionsTests with FIELDCHECK_ACCEPT=1 -->";
    private const string End = "<!-- sections: end -->";

    private static readonly ShippedTable[] All = [.. ShippedFile.Tables("presets/sections/")];

    private static readonly (string Name, Func<ShippedTable, double?> Printed, Func<Section, double?> Ours)[] Figures =
    [
        ("A", table => table.Value("area", QuantityKind.Area), section => section.Area),
        ("I", table => table.Value("inertia", QuantityKind.Inertia), section => section.Inertia),
        ("S", table => table.Value("section_modulus", QuantityKind.SectionModulus), section => section.SectionModulus),
        ("Z", table => table.Value("plastic_modulus", QuantityKind.SectionModulus), section => section.PlasticModulus),
        ("I, weak", table => table.Value("weak_inertia", QuantityKind.Inertia), section => section.LateralInertia),
        ("J", table => table.Value("torsion_constant", QuantityKind.Inertia), section => section.TorsionConstant),
        ("Cw", Warping, section => section.WarpingConstant),
    ];

    [Fact]
    public void TableInTheDocumentation_IsThatOfTheCatalogue()
    {
        string path = Path.Combine(Root(), "docs", "verification.md");
        string page = File.ReadAllText(path).ReplaceLineEndings("\n");
        int from = page.IndexOf(Begin, StringComparison.Ordinal) + Begin.Length;
        int to = page.IndexOf(End, StringComparison.Ordinal);
        string table = "\n" + string.Join('\n', Table()) + "\n";
        if (Environment.GetEnvironmentVariable("FIELDCHECK_ACCEPT") == "1")
        {
            File.WriteAllText(path, page[..from] + table + page[to..]);
            return;
        }

        Assert.Equal(table, page[from..to]);
    }

    // Printed to three digits; the radius is only about the foot of the fillet less the flange.
    [Fact]
    public void TorsionAndWarpingOfEveryW_AreThosePrinted() => Assert.All(PrintedWarping.OfW.Keys, name =>
    {
        ShippedTable table = All.Single(table => table.Name == name);
        Section ours = Ours(name);

        Assert.InRange(ours.TorsionConstant!.Value / table.Value("torsion_constant", QuantityKind.Inertia)!.Value, 0.994, 1.006);
        Assert.InRange(ours.WarpingConstant!.Value / Warping(table)!.Value, 0.983, 1.017);
    });

    private static IEnumerable<string> Table()
    {
        yield return $"| family | sizes | {string.Join(" | ", Figures.Select(figure => figure.Name))} |";
        yield return $"| --- | --- |{string.Concat(Figures.Select(_ => " --- |"))}";
        foreach (IGrouping<string, ShippedTable> family in All
            .Where(IsPrinted)
            .GroupBy(table => SectionCatalogue.BuiltIn().Shape(table.Name)!.Family))
        {
            yield return $"| {family.Key} | {family.Count()} |"
                + string.Concat(Figures.Select(figure => $" {Farthest(family, figure.Printed, figure.Ours)} |"));
        }
    }

    private static string Farthest(
        IEnumerable<ShippedTable> family, Func<ShippedTable, double?> printed, Func<Section, double?> ours)
    {
        double[] deviations =
        [
            .. from table in family
               where printed(table) is not null
               select 100 * (ours(Ours(table.Name))!.Value / printed(table)!.Value - 1),
        ];
        return deviations is []
            ? "-"
            : string.Create(CultureInfo.InvariantCulture, $"{deviations.MaxBy(Math.Abs):+0.00;-0.00} %");
    }

    private static bool IsPrinted(ShippedTable table) =>
        table.Text("status").StartsWith("read in the source", StringComparison.Ordinal)
        && !table.Text("status").Contains("computed", StringComparison.Ordinal);

    private static double? Warping(ShippedTable table) =>
        PrintedWarping.OfW.TryGetValue(table.Name, out double inches) ? inches * Math.Pow(0.0254, 6) : null;

    private static Section Ours(string name) => Section.Of(SectionCatalogue.BuiltIn().Shape(name)!.Upright.Shape!);

    private static string Root()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "FieldCheck.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new DirectoryNotFoundException("FieldCheck.sln not found");
    }
}
