using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Editing;

/// <summary>
/// Gives a section or material that a span names a table of its own. A name not known yet is taken for a shape or grade
/// of the catalogue, and its table goes again when no span names it any more.
/// </summary>
internal static class NamedSticks
{
    /// <summary>The beam after a span was given another section or material.</summary>
    /// <param name="document">The beam, the new name in it.</param>
    /// <param name="row">The span, counted from 0.</param>
    /// <param name="before">The span before.</param>
    internal static BeamDocument Tied(BeamDocument document, int row, SpanEntry before)
    {
        SpanEntry typed = document.Spans[row];
        SpanEntry span = typed with
        {
            Section = typed.Section == before.Section ? typed.Section : AsInTheFile(typed.Section, document.Sections.Select(one => one.Name)),
            Material = typed.Material == before.Material ? typed.Material : AsInTheFile(typed.Material, document.Materials.Select(one => one.Name)),
        };
        BeamDocument named = span == typed ? document : document with { Spans = document.Spans.SetItem(row, span) };
        BeamDocument tied = span.Section == before.Section ? named : TieSection(named, row, before.Section);
        return span.Material == before.Material ? tied : TieMaterial(tied, row, before.Material);
    }

    internal static SectionEntry Shape(string name) => new() { Name = name, Shape = name };

    internal static MaterialEntry Grade(string name) => new() { Name = name, Grade = name };

    // "ipe200" is the section that the file calls "IPE 200", not a second one of the same shape.
    private static string? AsInTheFile(string? name, IEnumerable<string> names) => name is null ? null
        : names.OrderByDescending(known => known == name)
            .FirstOrDefault(known => CatalogueName.Plain(known) == CatalogueName.Plain(name)) ?? name;

    private static BeamDocument TieSection(BeamDocument document, int row, string? before)
    {
        string? name = document.Spans[row].Section;
        BeamDocument left = before is null || document.Spans.Any(span => span.Section == before)
            ? document
            : document with { Sections = [.. document.Sections.Where(section => section != Shape(before))] };
        if (name is null || left.Sections.Any(section => section.Name == name))
        {
            return left;
        }

        // Alone it needed no naming; beside another it does.
        string? only = left.Sections.Count == 1 ? left.Sections[0].Name : null;
        return left with
        {
            Sections = left.Sections.Add(Shape(name)),
            Spans = [.. left.Spans.Select((span, index) =>
                index == row ? span : span with { Section = span.Section ?? only })],
        };
    }

    private static BeamDocument TieMaterial(BeamDocument document, int row, string? before)
    {
        string? name = document.Spans[row].Material;
        BeamDocument left = before is null || document.Spans.Any(span => span.Material == before)
            ? document
            : document with { Materials = [.. document.Materials.Where(material => material != Grade(before))] };
        if (name is null || left.Materials.Any(material => material.Name == name))
        {
            return left;
        }

        string? only = left.Materials.Count == 1 ? left.Materials[0].Name : null;
        return left with
        {
            Materials = left.Materials.Add(Grade(name)),
            Spans = [.. left.Spans.Select((span, index) =>
                index == row ? span : span with { Material = span.Material ?? only })],
        };
    }
}
