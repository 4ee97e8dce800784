using FieldCheck.Mechanics.Model;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Catalogue;

/// <summary>A grade of material as published.</summary>
/// <param name="Name">Its name, as "A992" or "C24".</param>
/// <param name="Standard">The standard it belongs to.</param>
/// <param name="Material">Its figures for stiffness and weight.</param>
/// <param name="Source">Where the figures come from.</param>
/// <param name="Status">Whether they were read there.</param>
public sealed record CatalogueGrade(string Name, string Standard, Material Material, string Source, string Status)
{
    internal static CatalogueGrade Of(PresetTable table) => new(
        table.Name,
        table.Text("standard"),
        new Material
        {
            Modulus = table.Value("modulus", QuantityKind.Pressure),
            ShearModulus = table.ValueOrNull("shear_modulus", QuantityKind.Pressure),
            UnitWeight = table.ValueOrNull("density", QuantityKind.UnitWeight),
            Yield = table.ValueOrNull("yield", QuantityKind.Pressure),
        },
        table.Text("source"),
        table.Text("status"));
}
