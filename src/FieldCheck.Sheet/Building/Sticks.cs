using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Strength;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Strength;

namespace FieldCheck.Sheet.Building;

/// <summary>The named sections and materials of one beam, and which of them each span is made of.</summary>
internal sealed class Sticks
{
    private readonly SectionCatalogue _catalogue;
    private readonly Dictionary<string, Section?> _sections;
    private readonly Dictionary<string, Material?> _materials;

    /// <param name="document">The beam as typed.</param>
    /// <param name="catalogue">What its sections and materials may name.</param>
    /// <param name="problems">Takes what is wrong with them, used by a span or not.</param>
    /// <param name="offsets">How far cells are taken as off; null: none is.</param>
    internal Sticks(
        BeamDocument document, SectionCatalogue catalogue, ProblemList problems, CellOffsets? offsets = null)
    {
        _catalogue = catalogue;
        StrengthRules rules = StrengthRows.Rules(document.Limits?.Rules);
        _sections = Named("section", Fields.Section, document.Sections, entry => entry.Name,
            (row, _) => SectionRows.Read(row, catalogue), problems, offsets);
        _materials = Named("material", Fields.Material, document.Materials, entry => entry.Name,
            (row, entry) =>
            {
                ImmutableArray<StrengthFactor> factors = FactorRows.Read(entry, row.Path, problems);
                return MaterialRows.Read(row, catalogue) is Material read ? InUse(read with { Factors = factors }, rules) : null;
            },
            problems,
            offsets);
    }

    /// <summary>What a span is made of; null when one of its names leads nowhere, which has been told.</summary>
    internal Stick? Of(Row span)
    {
        string? section = NameOf(span, "section", _sections, name =>
            _catalogue.Shape(name) is null ? null : ProblemText.IsAShape(name));
        string? material = NameOf(span, "material", _materials, name =>
            _catalogue.Grade(name) is null ? null : ProblemText.IsAGrade(name));
        Section? figures = section is null ? null : _sections.GetValueOrDefault(section);
        Material? stuff = material is null ? null : _materials.GetValueOrDefault(material);
        bool isKnown = (section is null || figures is not null) && (material is null || stuff is not null);
        return isKnown ? new Stick(section, figures, material, stuff) : null;
    }

    private static Material InUse(Material material, StrengthRules rules) =>
        material with { ModulusFactor = ServiceModulus.FactorOf(material, rules) };

    private static Dictionary<string, TFigures?> Named<TEntry, TFigures>(
        string table,
        ImmutableArray<Field<TEntry>> fields,
        Rows<TEntry> entries,
        Func<TEntry, string> nameOf,
        Func<Row, TEntry, TFigures?> read,
        ProblemList problems,
        CellOffsets? offsets)
        where TFigures : class
    {
        Dictionary<string, TFigures?> named = new(StringComparer.Ordinal);
        foreach (TEntry entry in entries)
        {
            string name = nameOf(entry);
            Row row = Row.Of(fields, entry, KeyPath.Top.Into(table).Into(name).ToString(), problems, offsets);
            if (string.IsNullOrWhiteSpace(name))
            {
                row.Refuse("", ProblemText.EmptyName);
            }

            if (!named.TryAdd(name, read(row, entry)))
            {
                row.Refuse("", ProblemText.SameName(table, name));
            }
        }

        return named;
    }

    /// <summary>The name that stands in the span, or the only one of the beam.</summary>
    private static string? NameOf<T>(
        Row span, string key, Dictionary<string, T?> named, Func<string, string?> inCatalogue)
        where T : class
    {
        if (span.Text(key) is not string name)
        {
            return named.Count == 1 ? named.Keys.Single() : null;
        }

        if (!named.ContainsKey(name) && !string.IsNullOrWhiteSpace(name))
        {
            span.Refuse(key, inCatalogue(name) ?? ProblemText.UnknownName(key, name, [.. named.Keys]));
        }

        return name;
    }
}
