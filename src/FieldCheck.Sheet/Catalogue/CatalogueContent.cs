using System.Collections.Immutable;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Document.Tables;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Catalogue;

/// <summary>The keys of a catalogue file; docs/catalogue.md has what they mean.</summary>
internal static class CatalogueContent
{
    /// <summary>The table that shapes stand in.</summary>
    internal const string ShapeTable = "shape";

    /// <summary>The table that grades stand in.</summary>
    internal const string GradeTable = "grade";

    /// <summary>The key of the family, of one entry or at the top of all.</summary>
    internal const string Family = "family";

    private static readonly Wanted Text = new Wanted.FreeText();
    private static readonly Wanted Length = new Wanted.Measure(QuantityKind.Length);
    private static readonly Wanted Area = new Wanted.Measure(QuantityKind.Area);
    private static readonly Wanted Modulus = new Wanted.Measure(QuantityKind.SectionModulus);
    private static readonly Wanted Inertia = new Wanted.Measure(QuantityKind.Inertia);
    private static readonly Wanted Stress = new Wanted.Measure(QuantityKind.Pressure);

    /// <summary>Keys of a shape.</summary>
    internal static ImmutableArray<Field<CatalogueEntry>> Shape { get; } =
    [
        Field("form", new Wanted.OneOf([.. ShapeForms.Words])),
        Field(Family, Text),
        Field("depth", Length),
        Field("width", Length),
        Field("flange_width", Length),
        Field("web_thickness", Length),
        Field("flange_thickness", Length),
        Field("flange_slope", new Wanted.BareNumber()),
        Field("root_radius", Length),
        Field("flange_to_fillet_foot", Length),
        Field("diameter", Length),
        Field("wall", Length),
        Field("nominal_wall", Length),
        Field("outer_radius", Length),
        Field("inner_radius", Length),
        Field("area", Area),
        Field("inertia", Inertia),
        Field("section_modulus", Modulus),
        Field("plastic_modulus", Modulus),
        Field("shear_area", Area),
        Field("weak_inertia", Inertia),
        Field("weak_section_modulus", Modulus),
        Field("torsion_constant", Inertia),
        Field("weight", new Wanted.Measure(QuantityKind.ForcePerLength)),
        Field("source", Text),
        Field("status", Text),
    ];

    /// <summary>Keys of a grade.</summary>
    internal static ImmutableArray<Field<CatalogueEntry>> Grade { get; } =
    [
        Field(Family, Text),
        Field("standard", Text),
        Field("modulus", Stress),
        Field("shear_modulus", Stress),
        Field("density", new Wanted.Measure(QuantityKind.UnitWeight)),
        Field("yield", Stress),
        Field("yield_thickness", Length),
        Field("yield_shape", new Wanted.OneOf(GradeRows.IOrChannel, GradeRows.RectangularTube, GradeRows.RoundTube)),
        Field("strengths", new Wanted.OneOf(GradeRows.Reference, GradeRows.Characteristic)),
        Field("bending", Stress),
        Field("shear", Stress),
        Field("tension", Stress),
        Field("bearing", Stress),
        Field("minimum_modulus", Stress),
        Field("size_factor", new Wanted.OneOf(GradeRows.DimensionLumber, GradeRows.Glulam)),
        Field("thickness_from", Length),
        Field("thickness_to", Length),
        Field("width_from", Length),
        Field("width_to", Length),
        Field("excess_over", Length),
        Field("excess_to", Length),
        Field("source", Text),
        Field("status", Text),
    ];

    private static readonly TableMapping<CatalogueDocument> Document = new(() => new CatalogueDocument(),
    [
        Part<CatalogueDocument>.Of(new Field<CatalogueDocument>(
            Family, Text, file => file.Family, (file, text) => file with { Family = text })),
        Part<CatalogueDocument>.Of(ShapeTable, Entries(Shape),
            file => file.Shapes, (file, entries) => file with { Shapes = entries }),
        Part<CatalogueDocument>.Of(GradeTable, Entries(Grade),
            file => file.Grades, (file, entries) => file with { Grades = entries }),
    ]);

    /// <summary>What may stand in a catalogue file.</summary>
    internal static Schema.Table Schema => Document.Schema;

    /// <summary>The file with this content.</summary>
    internal static CatalogueDocument Read(Content content) => Document.Read(content);

    private static Field<CatalogueEntry> Field(string key, Wanted wanted) => CatalogueEntry.Field(key, wanted);

    private static NamedTablesMapping<CatalogueEntry> Entries(ImmutableArray<Field<CatalogueEntry>> fields) => new(
        new TableMapping<CatalogueEntry>(
            () => CatalogueEntry.Empty, [.. fields.Select(field => Part<CatalogueEntry>.Of(field))]),
        entry => entry.Name,
        (entry, name) => entry with { Name = name });
}
