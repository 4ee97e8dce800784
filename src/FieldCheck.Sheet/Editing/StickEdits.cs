using System.Globalization;
using System.Text.RegularExpressions;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Strength;

namespace FieldCheck.Sheet.Editing;

/// <summary>Changes of sections, materials and limits that are more than one key.</summary>
internal static partial class StickEdits
{
    /// <summary>
    /// A shape in place of whatever form the section had; two or three numbers, as "75 x 225", are the sides of a rectangle
    /// where no shape of the catalogue is called so.
    /// </summary>
    internal static BeamDocument Shape(BeamDocument document, int row, string? text)
    {
        if (StickRows.Sections(document).ElementAtOrDefault(row) is not string name)
        {
            return document;
        }

        SectionEntry before = document.Sections.ElementAtOrDefault(row) ?? new SectionEntry { Name = name };
        if (text is null)
        {
            return With(document, row, before with { Shape = null });
        }

        Match sides = Sides().Match(text);
        if (!sides.Success || SectionCatalogue.BuiltIn().Shape(text) is not null)
        {
            return Shaped(document, row, text);
        }

        BeamDocument emptied = With(document, row, new SectionEntry { Name = name, Flat = before.Flat });
        string unit = sides.Groups["unit"].Value;
        foreach ((string group, string key) in new[] { ("width", "width"), ("depth", "depth"), ("plies", "plies") })
        {
            if (sides.Groups[group] is { Success: true } side)
            {
                string path = KeyPath.Top.Into("section").Into(name).Into(key).ToString();
                emptied = KeyEdits.Type(emptied, path, key == "plies" || unit.Length == 0 ? side.Value : $"{side.Value} {unit}");
            }
        }

        return emptied;
    }

    /// <summary>A shape of the catalogue in place of whatever form the section had.</summary>
    internal static BeamDocument Shaped(BeamDocument document, int row, string shape) =>
        StickRows.Sections(document).ElementAtOrDefault(row) is string name
            ? With(document, row, new SectionEntry
            {
                Name = name,
                Shape = shape,
                Flat = document.Sections.ElementAtOrDefault(row)?.Flat,
            })
            : document;

    internal static BeamDocument Factors(BeamDocument document, string? material, string? text)
    {
        if (material is null || FigureText.Read(text ?? "") is not Rows<NamedFigure> figures)
        {
            return document;
        }

        Rows<NamedFigure> named =
        [
            .. figures.Select(figure => figure with
            {
                Name = FactorNames.Find(figure.Name) is { } kind ? FactorNames.Of(kind) ?? figure.Name : figure.Name,
            }),
        ];
        int row = document.Materials.ToList().FindIndex(entry => entry.Name == material);
        return document with
        {
            Materials = row < 0
                ? named.Count == 0 ? document.Materials : document.Materials.Add(new MaterialEntry { Name = material, Factors = named })
                : document.Materials.SetItem(row, document.Materials[row] with { Factors = named }),
        };
    }

    internal static BeamDocument OfCases(BeamDocument document, FormColumn column, string? text)
    {
        if (FigureText.Read(text ?? "") is not Rows<NamedFigure> figures)
        {
            return document;
        }

        var known = new LoadCases(document).Known;
        Rows<NamedFigure> named =
            [.. figures.Select(figure => figure with { Name = SupportCells.Whole(figure.Name, known) })];
        LimitsEntry limits = document.Limits ?? new LimitsEntry();
        return document with
        {
            Limits = column == FormColumn.Lasting
                ? limits with { Lasting = named }
                : limits with
                {
                    DeflectionCases = [.. named.Select(figure => figure with { Text = AsShare(figure.Text) })],
                },
        };
    }

    /// <summary>The beam without sections and materials in which nothing stands and that no span names.</summary>
    internal static BeamDocument Trimmed(BeamDocument document)
    {
        bool IsEmptySection(SectionEntry entry) => entry == new SectionEntry { Name = entry.Name }
            && document.Spans.All(span => span.Section != entry.Name);
        bool IsEmptyMaterial(MaterialEntry entry) => entry == new MaterialEntry { Name = entry.Name }
            && document.Spans.All(span => span.Material != entry.Name);
        return document with
        {
            Sections = document.Sections.Any(IsEmptySection)
                ? [.. document.Sections.Where(entry => !IsEmptySection(entry))]
                : document.Sections,
            Materials = document.Materials.Any(IsEmptyMaterial)
                ? [.. document.Materials.Where(entry => !IsEmptyMaterial(entry))]
                : document.Materials,
            Limits = document.Limits == new LimitsEntry() ? null : document.Limits,
        };
    }

    private static string AsShare(string text) =>
        double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out _) ? "L/" + text : text;

    private static BeamDocument With(BeamDocument document, int row, SectionEntry entry) => document with
    {
        Sections = row < document.Sections.Count ? document.Sections.SetItem(row, entry) : document.Sections.Add(entry),
    };

    [GeneratedRegex(
        @"^(?<width>[0-9]+(\.[0-9]+)?)\s*[xX×*]\s*(?<depth>[0-9]+(\.[0-9]+)?)(\s*[xX×*]\s*(?<plies>[0-9]+))?\s*(?<unit>mm|cm|m|in)?$",
        RegexOptions.CultureInvariant)]
    private static partial Regex Sides();
}
