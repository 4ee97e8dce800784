using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Reporting.Tables;

/// <summary>What a beam is made of: each section and material as typed, as read, and where its figures come from.</summary>
internal static class StickLines
{
    /// <summary>All of it, in the letters that were typed.</summary>
    internal static ImmutableArray<string> Of(BeamDocument document, BuiltBeam beam, SectionCatalogue catalogue) =>
    [
        .. document.Sections.Select(section => TextSafety.ForTerminal(
            $"{AsRead(beam, section)}; source: {(section.Shape is string shape ? Source(catalogue.Shape(shape)) : "as given")}")),
        .. document.Materials.Select(material => TextSafety.ForTerminal(
            $"{AsRead(beam, material)}; source: {(material.Grade is string grade ? Source(catalogue.Grade(grade)) : "as given")}")),
        OwnWeight(document, beam),
    ];

    /// <summary>The sections and materials alone, without where they come from, in plain ASCII.</summary>
    internal static ImmutableArray<string> AsRead(BeamDocument document, BuiltBeam beam) =>
    [
        .. document.Sections.Select(section => PlainAscii.Of(AsRead(beam, section))),
        .. document.Materials.Select(material => PlainAscii.Of(AsRead(beam, material))),
    ];

    private static string AsRead(BuiltBeam beam, SectionEntry section)
    {
        string typed = string.Join(", ", TypedCells.Of(Fields.Section, section));
        Section? used = beam.Sticks.FirstOrDefault(stick => stick.SectionName == section.Name)?.Section;
        return $"section {section.Name}: {typed}; {Read(beam, Figures(used))}";
    }

    private static string AsRead(BuiltBeam beam, MaterialEntry material)
    {
        string typed = string.Join(
            ", ",
            [
                .. TypedCells.Of(Fields.Material, material),
                .. material.Factors.Select(factor => $"factor {factor.Name} {factor.Text}"),
            ]);
        Material? used = beam.Sticks.FirstOrDefault(stick => stick.MaterialName == material.Name)?.Material;
        return $"material {material.Name}: {typed}; {Read(beam, Figures(used))}";
    }

    private static (string Name, double? Value, QuantityKind Kind)[] Figures(Section? section) => section is null ? [] :
    [
        ("I", section.Inertia, QuantityKind.Inertia),
        ("A", section.Area, QuantityKind.Area),
        ("S", section.SectionModulus, QuantityKind.SectionModulus),
    ];

    private static (string Name, double? Value, QuantityKind Kind)[] Figures(Material? material) => material is null ? [] :
    [
        ("E", material.Modulus, QuantityKind.Pressure),
        ("weight per volume", material.UnitWeight, QuantityKind.UnitWeight),
        ("yield", material.Yield, QuantityKind.Pressure),
    ];

    private static string Read(BuiltBeam beam, (string Name, double? Value, QuantityKind Kind)[] figures)
    {
        if (figures.Length == 0)
        {
            return "used by no span";
        }

        string[] known =
        [
            .. figures.Where(figure => figure.Value is not null)
                .Select(figure => $"{figure.Name} {beam.Display.Say(figure.Value!.Value, figure.Kind)}"),
        ];
        return known.Length == 0 ? "no figure of it is known" : $"read as {string.Join(", ", known)}";
    }

    private static string Source(CatalogueShape? shape) =>
        shape is null ? "unknown" : Source(shape.Source, shape.IsFromMemory, shape.File);

    private static string Source(CatalogueGrade? grade) =>
        grade is null ? "unknown" : Source($"{grade.Standard}, {grade.Source}", grade.IsFromMemory, grade.File);

    private static string Source(string source, bool isFromMemory, string? file) =>
        source + (isFromMemory ? " (some figure from memory: to be confirmed)" : "") + (file is null ? "" : $", own file {file}");

    private static string OwnWeight(BeamDocument document, BuiltBeam beam) => document.SelfWeight is null
        ? "own weight of the beam: NOT among the loads, but for what is typed as a load"
        : beam.Loads.FirstOrDefault(load => load.Row is null) is NamedLoad weight
            ? $"own weight of the beam: among the loads, in case {TextSafety.ForTerminal(weight.Case)}"
            : "own weight of the beam: among the loads, and comes to nothing";
}
