using FieldCheck.Mechanics.Model;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Catalogue;

/// <summary>A rolled or sawn shape as published.</summary>
/// <param name="Name">Its name, as "W10x30" or "IPE 200".</param>
/// <param name="Upright">Its figures when bent about the strong axis.</param>
/// <param name="Flat">Its figures when bent about the weak axis.</param>
/// <param name="Source">Where the figures come from.</param>
/// <param name="Status">Whether they were read there.</param>
public sealed record CatalogueShape(string Name, Section Upright, Section Flat, string Source, string Status)
{
    internal static CatalogueShape Of(PresetTable table) => table.Text("form") switch
    {
        "I" => new(table.Name, UprightI(table), FlatI(table), table.Text("source"), table.Text("status")),
        "rectangle" => Rectangle(table),
        string form => throw new InvalidDataException($"{table.Name}: {form} is no form of a shape."),
    };

    private static CatalogueShape Rectangle(PresetTable table)
    {
        double width = table.Value("width", QuantityKind.Length);
        double depth = table.Value("depth", QuantityKind.Length);
        return new(
            table.Name,
            Section.Rectangle(width, depth),
            Section.Rectangle(depth, width),
            table.Text("source"),
            table.Text("status"));
    }

    private static Section UprightI(PresetTable table) => new()
    {
        Area = table.Value("area", QuantityKind.Area),
        Inertia = table.Value("inertia", QuantityKind.Inertia),
        SectionModulus = table.Value("section_modulus", QuantityKind.SectionModulus),
        Depth = table.Value("depth", QuantityKind.Length),
        ShearArea = table.Value("depth", QuantityKind.Length) * table.Value("web_thickness", QuantityKind.Length),
        WeightPerLength = table.Value("weight", QuantityKind.ForcePerLength),
    };

    private static Section FlatI(PresetTable table)
    {
        double width = table.Value("flange_width", QuantityKind.Length);
        double inertia = table.Value("weak_inertia", QuantityKind.Inertia);
        return UprightI(table) with
        {
            Inertia = inertia,
            SectionModulus = inertia / (width / 2),
            Depth = width,
            ShearArea = 2 * width * table.Value("flange_thickness", QuantityKind.Length) * 5 / 6,
        };
    }
}
