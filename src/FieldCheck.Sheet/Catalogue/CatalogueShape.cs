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
        SectionShape shape = new SectionShape.Rectangle(
            table.Value("width", QuantityKind.Length), table.Value("depth", QuantityKind.Length));
        return new(
            table.Name, Section.Of(shape), Section.Of(shape, flat: true), table.Text("source"), table.Text("status"));
    }

    private static Section UprightI(PresetTable table)
    {
        Section computed = Computed(table, flat: false);
        return computed with
        {
            SectionModulus = table.Value("section_modulus", QuantityKind.SectionModulus),
            PlasticModulus = table.ValueOrNull("plastic_modulus", QuantityKind.SectionModulus)
                ?? computed.PlasticModulus,
        };
    }

    private static Section FlatI(PresetTable table)
    {
        Section computed = Computed(table, flat: true);
        return computed with { SectionModulus = computed.Inertia / (computed.Depth / 2) };
    }

    // What is published stands for what follows from the sizes.
    private static Section Computed(PresetTable table, bool flat)
    {
        double flange = table.Value("flange_thickness", QuantityKind.Length);
        double? foot = table.ValueOrNull("flange_to_fillet_foot", QuantityKind.Length);
        SectionShape.I shape = new(
            table.Value("flange_width", QuantityKind.Length),
            flange,
            table.Value("web_thickness", QuantityKind.Length),
            table.Value("depth", QuantityKind.Length),
            table.ValueOrNull("root_radius", QuantityKind.Length) ?? (foot ?? flange) - flange,
            IsRolled: true)
        {
            FilletDepth = foot,
        };
        double strong = table.Value("inertia", QuantityKind.Inertia);
        double weak = table.Value("weak_inertia", QuantityKind.Inertia);
        return Section.Of(shape, flat) with
        {
            Area = table.Value("area", QuantityKind.Area),
            Inertia = flat ? weak : strong,
            LateralInertia = flat ? strong : weak,
            WeightPerLength = table.Value("weight", QuantityKind.ForcePerLength),
        };
    }
}
