using FieldCheck.Mechanics.Model;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Building;

/// <summary>What one span is made of, by name and by figures.</summary>
/// <param name="SectionName">Name of its section on the sheet; null: none stands.</param>
/// <param name="Section">The section's figures; null: none stands.</param>
/// <param name="MaterialName">Name of its material on the sheet; null: none stands.</param>
/// <param name="Material">The material's figures; null: none stands.</param>
public sealed record Stick(string? SectionName, Section? Section, string? MaterialName, Material? Material)
{
    /// <summary>E·I, E with the factors for use [N·m²], or null when it is not known.</summary>
    internal double? FlexuralRigidity => Material?.ModulusInUse * Section?.Inertia;

    /// <summary>E·A [N], or null when it is not known.</summary>
    internal double? AxialRigidity => Material?.ModulusInUse * Section?.Area;

    /// <summary>G·A over the shear area [N], or null when it is not known.</summary>
    internal double? ShearRigidity => Material?.ShearModulus * Section?.ShearArea;

    /// <summary>Weight per length [N/m], the section's own or from area and density; null when not known.</summary>
    internal double? WeightPerLength => Section?.WeightPerLength ?? Material?.UnitWeight * Section?.Area;

    /// <summary>Key path of the section's figure, or of the name that the span lacks.</summary>
    internal string KeyOfSection(int span, string figure) =>
        KeyOf("section", SectionName, span, figure);

    /// <summary>Key path of the material's figure, or of the name that the span lacks.</summary>
    internal string KeyOfMaterial(int span, string figure) =>
        KeyOf("material", MaterialName, span, figure);

    private static string KeyOf(string table, string? name, int span, string figure) => name is null
        ? $"span[{span + 1}].{table}"
        : KeyPath.Top.Into(table).Into(name).Into(figure).ToString();
}
