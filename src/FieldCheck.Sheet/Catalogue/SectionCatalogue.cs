using System.Collections.Immutable;

namespace FieldCheck.Sheet.Catalogue;

/// <summary>Published sections and materials, each with its source, and the person's own beside them.</summary>
/// <remarks>
/// A name is found whatever its case, with or without its spaces and hyphens, and with × for x: "ipe200", "W10×30".
/// </remarks>
public sealed record SectionCatalogue
{
    private static readonly SectionCatalogue Shipped = new(
        new(() => new([.. ShippedEntry.Find("presets/sections/").Select(ShippedShape)])),
        new(() => new([.. ShippedEntry.Find("presets/materials/").Select(ShippedGrade)])));

    private readonly Lazy<NameIndex<CatalogueShape>> _shapes;
    private readonly Lazy<NameIndex<CatalogueGrade>> _grades;

    private SectionCatalogue(Lazy<NameIndex<CatalogueShape>> shapes, Lazy<NameIndex<CatalogueGrade>> grades)
    {
        _shapes = shapes;
        _grades = grades;
    }

    /// <summary>Names of all shapes, the person's own first, then family by family.</summary>
    public ImmutableArray<string> Names => _shapes.Value.Names;

    /// <summary>Names of all grades, the person's own first.</summary>
    public ImmutableArray<string> GradeNames => _grades.Value.Names;

    /// <summary>The catalogue that ships with the program; it is read once, as far as it is asked for.</summary>
    public static SectionCatalogue BuiltIn() => Shipped;

    /// <summary>Finds a shape.</summary>
    /// <param name="name">Its name, as typed.</param>
    /// <returns>The shape, or null when none is called so.</returns>
    public CatalogueShape? Shape(string name) => _shapes.Value.Find(name);

    /// <summary>Finds a grade.</summary>
    /// <param name="name">Its name, as typed.</param>
    /// <returns>The grade, or null when none is called so.</returns>
    public CatalogueGrade? Grade(string name) => _grades.Value.Find(name);

    /// <summary>
    /// The shapes that typed letters fit, best first: the name itself, names that begin so, names or families that hold it.
    /// </summary>
    /// <param name="text">As typed, as "w10" or "ipe 2"; empty: all.</param>
    public ImmutableArray<CatalogueName> Search(string text) => _shapes.Value.Search(text);

    /// <summary>The grades that typed letters fit, best first.</summary>
    /// <param name="text">As typed, as "c24" or "glued"; empty: all.</param>
    public ImmutableArray<CatalogueName> SearchGrades(string text) => _grades.Value.Search(text);

    /// <summary>The lowest grade of each family that a word speaks of, for a stick of which nobody knows the grade.</summary>
    /// <param name="word">As "unknown", "timber" or "steel".</param>
    /// <returns>None where the word is not one of these.</returns>
    public ImmutableArray<CatalogueName> LowestGradesOf(string word) => LowestGrades.NamesOf(word, this);

    /// <summary>This catalogue with the person's own entries before the others, in place of those of the same name.</summary>
    internal SectionCatalogue With(ImmutableArray<CatalogueShape> shapes, ImmutableArray<CatalogueGrade> grades) => new(
        shapes.IsEmpty ? _shapes : new(() => _shapes.Value.With(
            [.. shapes.Select(shape => Item(shape with { IsInPlaceOfShipped = _shapes.Value.Has(shape.Name) }))])),
        grades.IsEmpty ? _grades : new(() => _grades.Value.With(
            [.. grades.Select(grade => Item(grade with { IsInPlaceOfShipped = _grades.Value.Has(grade.Name) }))])));

    private static CatalogueItem<CatalogueShape> Item(CatalogueShape shape) =>
        new(new CatalogueName(shape.Name, shape.Family), () => shape);

    private static CatalogueItem<CatalogueGrade> Item(CatalogueGrade grade) =>
        new(new CatalogueName(grade.Name, grade.Family), () => grade);

    private static CatalogueItem<CatalogueShape> ShippedShape(ShippedEntry entry)
    {
        Lazy<CatalogueShape> shape = new(entry.Shape);
        return new(entry.Name, () => shape.Value);
    }

    private static CatalogueItem<CatalogueGrade> ShippedGrade(ShippedEntry entry)
    {
        Lazy<CatalogueGrade> grade = new(entry.Grade);
        return new(entry.Name, () => grade.Value);
    }
}
