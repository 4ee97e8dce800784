using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Tests.Catalogue;

/// <summary>
/// The published properties of every shape that ships, worked out again from its published sizes, fillets in.
/// </summary>
/// <remarks>
/// A misprinted digit shows. The tables round sizes and properties to three or four figures, and the mill's fillet is
/// not quite a quarter circle: hence 1.5 % for the inch-pound I shapes and 0.5 % for the metric ones; sawn sizes are
/// exact but for the table's own rounding.
/// </remarks>
public sealed class PublishedShapesTests
{
    private static readonly PresetTable[] All = [.. PresetTables.Read("presets/sections/")];

    public static TheoryData<string> Names => [.. All.Select(table => table.Name)];

    [Fact]
    public void Catalogue_HoldsEnoughOfEachFamily()
    {
        Assert.True(All.Count(table => table.Name.StartsWith('W')) >= 20);
        Assert.True(All.Count(table => table.Name.StartsWith("IPE", StringComparison.Ordinal)) >= 12);
        Assert.True(All.Count(table => table.Text("form") == "rectangle") >= 12);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Shape_SaysWhereItComesFrom(string name)
    {
        PresetTable table = All.Single(table => table.Name == name);

        Assert.NotEmpty(table.Text("source"));
        Assert.NotEmpty(table.Text("status"));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Shape_HasThePropertiesOfItsSizes(string name)
    {
        PresetTable table = All.Single(table => table.Name == name);
        Properties expected = table.Text("form") == "I" ? OfI(table) : OfRectangle(table);
        double tolerance = table.Text("form") == "rectangle" ? 2e-4
            : table.Cells.ContainsKey("root_radius") ? 0.005
            : 0.015;

        Near(expected.Area, table.Value("area", QuantityKind.Area), tolerance);
        Near(expected.Inertia, table.Value("inertia", QuantityKind.Inertia), tolerance);
        Near(expected.Modulus, table.Value("section_modulus", QuantityKind.SectionModulus), tolerance);
        if (table.ValueOrNull("weak_inertia", QuantityKind.Inertia) is double weak)
        {
            Near(expected.WeakInertia, weak, tolerance);
        }

        if (table.ValueOrNull("plastic_modulus", QuantityKind.SectionModulus) is double plastic)
        {
            Near(expected.PlasticModulus, plastic, tolerance);
        }

        if (table.ValueOrNull("weight", QuantityKind.ForcePerLength) is double weight)
        {
            // Steel: 490 lb/ft3 = 7849 kg/m3, close to the metric 7850.
            Near(expected.Area * 7850 * 9.80665, weight, tolerance);
        }
    }

    private static Properties OfRectangle(PresetTable table)
    {
        double width = table.Value("width", QuantityKind.Length);
        double depth = table.Value("depth", QuantityKind.Length);
        return new(width * depth, width * Math.Pow(depth, 3) / 12, width * depth * depth / 6, 0, 0);
    }

    /// <summary>Three rectangles and four fillets, each a square of side r less the quarter circle in it.</summary>
    private static Properties OfI(PresetTable table)
    {
        double b = table.Value("flange_width", QuantityKind.Length);
        double d = table.Value("depth", QuantityKind.Length);
        double tf = table.Value("flange_thickness", QuantityKind.Length);
        double tw = table.Value("web_thickness", QuantityKind.Length);
        double r = table.ValueOrNull("root_radius", QuantityKind.Length)
            ?? table.Value("flange_to_fillet_foot", QuantityKind.Length) - tf;
        double h = d - 2 * tf;

        // Quarter circle about its own straight edge: pi r^4 / 16; its centroid lies 4 r / 3 pi from that edge.
        double quarter = Math.PI * r * r / 4;
        double arm = 4 * r / (3 * Math.PI);
        double quarterOwn = Math.PI * Math.Pow(r, 4) / 16 - quarter * arm * arm;
        double fillet = r * r - quarter;
        double centroid = (r * r * r / 2 - quarter * (r - arm)) / fillet;
        double filletOwn =
            Math.Pow(r, 4) / 3 - quarterOwn - quarter * Math.Pow(r - arm, 2) - fillet * centroid * centroid;

        double inertia = (b * Math.Pow(d, 3) - (b - tw) * Math.Pow(h, 3)) / 12
            + 4 * (filletOwn + fillet * Math.Pow(h / 2 - centroid, 2));
        double weak = 2 * tf * Math.Pow(b, 3) / 12 + h * Math.Pow(tw, 3) / 12
            + 4 * (filletOwn + fillet * Math.Pow(tw / 2 + centroid, 2));
        double plastic = b * tf * (d - tf) + tw * h * h / 4 + 4 * fillet * (h / 2 - centroid);
        return new(2 * b * tf + h * tw + 4 * fillet, inertia, inertia / (d / 2), weak, plastic);
    }

    private static void Near(double expected, double published, double tolerance) =>
        Assert.InRange(published / expected, 1 - tolerance, 1 + tolerance);

    private sealed record Properties(
        double Area, double Inertia, double Modulus, double WeakInertia, double PlasticModulus);
}
