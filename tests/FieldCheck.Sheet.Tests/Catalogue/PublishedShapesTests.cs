using FieldCheck.Mechanics.Model;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Tests.Catalogue;

/// <summary>The published properties of every shape that ships, worked out again from its published sizes.</summary>
/// <remarks>
/// A misprinted digit shows. The tables round sizes and properties to three or four figures, and the mill's fillet is
/// not quite a quarter circle: hence 1.5 % for inch-pound sections and 0.5 % for metric ones; sawn and computed sizes are
/// exact but for the table's own rounding. Known flaws of the source: the areas of Pipe2STD and Pipe10STD are 1.7 % and
/// 3.3 % above those of their own sizes and are left out of the file, so that the computed ones are used.
/// </remarks>
public sealed class PublishedShapesTests
{
    private static readonly ShippedTable[] All = [.. ShippedFile.Tables("presets/sections/")];

    public static TheoryData<string> Names => [.. All.Select(table => table.Name)];

    [Theory]
    [InlineData("W", 45)]
    [InlineData("C", 20)]
    [InlineData("HSS", 20)]
    [InlineData("Pipe", 18)]
    [InlineData("IPE", 18)]
    [InlineData("HEA", 19)]
    [InlineData("HEB", 19)]
    [InlineData("RHS", 15)]
    [InlineData("SHS", 10)]
    [InlineData("sawn timber, dressed", 27)]
    [InlineData("sawn timber, metric", 21)]
    public void Family_HoldsAllOfItsSizes(string family, int count) => Assert.Equal(
        count, SectionCatalogue.BuiltIn().Search("").Count(name => name.Family == family));

    [Fact]
    public void NamesAreFound_WithoutReadingFigures() =>
        Assert.Equal(All.Select(table => table.Name), SectionCatalogue.BuiltIn().Names);

    [Fact]
    public void NoTwoNames_AreFoundAsOne() => Assert.Equal(
        All.Length, All.Select(table => CatalogueName.Plain(table.Name)).Distinct().Count());

    [Theory]
    [MemberData(nameof(Names))]
    public void Shape_ReadsWithItsSourceAndStatus(string name)
    {
        ShippedTable table = Table(name);
        CatalogueShape shape = SectionCatalogue.BuiltIn().Shape(name)!;

        Assert.Equal(
            (name, table.Text("source"), table.Text("status")), (shape.Name, shape.Source, shape.Status));
        Assert.NotEmpty(shape.Source);
        Assert.NotEmpty(shape.Status);
        Assert.Equal(table.Text("status").Contains("memory", StringComparison.Ordinal), shape.IsFromMemory);
        Assert.NotNull(shape.Upright.Shape);
        Assert.Equal(shape.Upright.Shape, shape.Flat!.Shape);
        Assert.Equal((false, true), (shape.Upright.IsFlat, shape.Flat.IsFlat));
        Assert.True(shape.Upright.Inertia >= shape.Flat.Inertia);
        Assert.Equal(shape.Upright.LateralInertia!.Value, shape.Flat.Inertia!.Value, shape.Flat.Inertia.Value * 1e-9);
        Assert.Equal(shape.Flat.LateralInertia!.Value, shape.Upright.Inertia!.Value, shape.Upright.Inertia.Value * 1e-9);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void PublishedProperties_AreThoseOfItsSizes(string name)
    {
        ShippedTable table = Table(name);
        SizeProperties expected = SizeProperties.Of(table);
        double tolerance = ToleranceOf(table);

        Near(expected.Area, table.Value("area", QuantityKind.Area), tolerance);
        Near(expected.Inertia, table.Value("inertia", QuantityKind.Inertia)!.Value, tolerance);
        Near(expected.Modulus, table.Value("section_modulus", QuantityKind.SectionModulus)!.Value, tolerance);
        Near(expected.WeakInertia, table.Value("weak_inertia", QuantityKind.Inertia), WeakToleranceOf(table));
        Near(expected.PlasticModulus ?? 1, table.Value("plastic_modulus", QuantityKind.SectionModulus), tolerance);

        // Steel: 490 lb/ft3 = 7849 kg/m3, close to the metric 7850.
        Near(
            SizeProperties.WeighedArea(table) * 7850 * 9.80665,
            table.Value("weight", QuantityKind.ForcePerLength),
            tolerance);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void FiguresInUse_AreThePublishedOnes_OrThoseOfItsSizes(string name)
    {
        ShippedTable table = Table(name);
        CatalogueShape shape = SectionCatalogue.BuiltIn().Shape(name)!;
        SizeProperties sizes = SizeProperties.Of(table);
        bool isExact = table.Text("form") == "rectangle";

        Same(Published("area", QuantityKind.Area) ?? sizes.Area, shape.Upright.Area);
        Same(Published("inertia", QuantityKind.Inertia) ?? sizes.Inertia, shape.Upright.Inertia);
        Same(Published("section_modulus", QuantityKind.SectionModulus) ?? sizes.Modulus, shape.Upright.SectionModulus);
        string weak = table.Text("form") == "round tube" ? "inertia" : "weak_inertia";
        Same(Published(weak, QuantityKind.Inertia) ?? sizes.WeakInertia, shape.Flat!.Inertia);
        Same(Published("plastic_modulus", QuantityKind.SectionModulus) ?? sizes.PlasticModulus, shape.Upright.PlasticModulus);
        Same(Published("torsion_constant", QuantityKind.Inertia), shape.Upright.TorsionConstant);
        Assert.Equal(table.Value("weight", QuantityKind.ForcePerLength), shape.Upright.WeightPerLength);

        double? Published(string key, QuantityKind kind) => isExact ? null : table.Value(key, kind);
    }

    [Theory]
    [InlineData("W8x10", 30.9)]
    [InlineData("W10x49", 2070)]
    [InlineData("W14x90", 16000)]
    [InlineData("W30x99", 26800)]
    public void WarpingConstantOfW_IsThatOfTheTable(string name, double published)
    {
        // AISC Shapes Database v15.0, C_w in in6; read there. I_y (d - t_f)^2 / 4 with its own rounding.
        Section upright = SectionCatalogue.BuiltIn().Shape(name)!.Upright;

        Assert.InRange(upright.WarpingConstant!.Value / Math.Pow(0.0254, 6) / published, 0.99, 1.01);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void SlopeOfAChannel_IsCounted_WhereTheTableGivesNoFigure(string name)
    {
        // The section modulus laid flat is that of the farther edge, which no table gives: Iy / (bf - x), with x the
        // centroid of plates whose flanges slope 1 in 6.
        ShippedTable table = Table(name);
        if (table.Text("form") == "channel")
        {
            Section flat = SectionCatalogue.BuiltIn().Shape(name)!.Flat!;
            double expected = table.Value("weak_inertia", QuantityKind.Inertia)!.Value
                / (table.Length("flange_width") - SizeProperties.CentroidOfChannel(table));

            Assert.InRange(flat.SectionModulus!.Value / expected, 0.995, 1.005);
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void TorsionConstant_LiesWhereItsPlatesPutIt(string name)
    {
        // Thin open plates: the sum of b t^3 / 3; fillets add to it, by half at the most for what is rolled;
        // where only sizes are known it is counted low, each plate with what its ends lack.
        ShippedTable table = Table(name);
        if (table.Text("form") is "I" or "channel")
        {
            double d = table.Length("depth");
            double tf = table.Length("flange_thickness");
            double plates = (2 * table.Length("flange_width") * Math.Pow(tf, 3)
                + (d - tf) * Math.Pow(table.Length("web_thickness"), 3)) / 3;

            Assert.InRange(SectionCatalogue.BuiltIn().Shape(name)!.Upright.TorsionConstant!.Value / plates, 0.75, 1.6);
        }
    }

    private static ShippedTable Table(string name) => All.Single(table => table.Name == name);

    private static double ToleranceOf(ShippedTable table) => table.Text("form") switch
    {
        "rectangle" => 2e-4,
        "rectangular tube" when !table.Cells.ContainsKey("nominal_wall") => 1e-3,
        "I" when table.Cells.ContainsKey("root_radius") => 0.005,
        _ => 0.015,
    };

    private static double WeakToleranceOf(ShippedTable table) =>
        table.Text("form") == "channel" ? 0.04 : ToleranceOf(table);

    private static void Near(double expected, double? published, double tolerance) =>
        Assert.InRange(published / expected ?? 1, 1 - tolerance, 1 + tolerance);

    private static void Same(double? expected, double? used)
    {
        if (expected is double value)
        {
            Assert.Equal(value, used!.Value, value * 1e-9);
        }
    }
}
