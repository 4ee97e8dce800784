using System.Collections.Immutable;

namespace FieldCheck.Sheet.Catalogue;

/// <summary>Published sections and materials, each with its source.</summary>
/// <remarks>
/// A name is found whatever its case, with or without its spaces and hyphens, and with × for x: "ipe200", "W10×30".
/// </remarks>
public sealed record SectionCatalogue
{
    private static readonly SectionCatalogue Shipped = new(
        new(() => new(PresetTables.Read("presets/sections/").Select(CatalogueShape.Of), shape => shape.Name)),
        new(() => new(PresetTables.Read("presets/materials/").Select(CatalogueGrade.Of), grade => grade.Name)));

    private readonly Lazy<NameIndex<CatalogueShape>> _shapes;
    private readonly Lazy<NameIndex<CatalogueGrade>> _grades;

    private SectionCatalogue(Lazy<NameIndex<CatalogueShape>> shapes, Lazy<NameIndex<CatalogueGrade>> grades)
    {
        _shapes = shapes;
        _grades = grades;
    }

    /// <summary>Names of all shapes, family by family.</summary>
    public ImmutableArray<string> Names => _shapes.Value.Names;

    /// <summary>Names of all grades.</summary>
    public ImmutableArray<string> GradeNames => _grades.Value.Names;

    /// <summary>The catalogue that ships with the program; it is read once, when a name is first asked for.</summary>
    public static SectionCatalogue BuiltIn() => Shipped;

    /// <summary>Finds a shape.</summary>
    /// <param name="name">Its name, as typed.</param>
    /// <returns>The shape, or null when none is called so.</returns>
    public CatalogueShape? Shape(string name) => _shapes.Value.Find(name);

    /// <summary>Finds a grade.</summary>
    /// <param name="name">Its name, as typed.</param>
    /// <returns>The grade, or null when none is called so.</returns>
    public CatalogueGrade? Grade(string name) => _grades.Value.Find(name);
}
