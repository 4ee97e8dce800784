using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Sheet.Editing;

/// <summary>Texts typed for keys that have no column.</summary>
internal static class KeyEdits
{
    /// <summary>
    /// The beam with a text for a key; the row, section or material it is for is made where it is not there yet.
    /// </summary>
    internal static BeamDocument Type(BeamDocument document, string key, string text)
    {
        string? typed = string.IsNullOrWhiteSpace(text) ? null : text.Trim();
        BeamDocument begun = typed is null ? document : Begun(document, key);
        if (DocumentCells.Find(begun, key) is not DocumentCell cell)
        {
            return document;
        }

        string? plain = typed is null ? null : Plain(cell, typed, document.Units);
        BeamDocument changed = DocumentCells.Set(begun, key, plain) ?? document;
        return RowsBegun.Trimmed(changed);
    }

    /// <summary>A text with the unit, or the rest of the word, that the cell lets one leave out.</summary>
    private static string Plain(DocumentCell cell, string text, UnitSystem system) => cell.Wanted switch
    {
        Wanted.Measure measure => CellShorthand.Expand(text, UnitOf(cell.Key, measure.Kind, system)),
        Wanted.LengthOr length when text.Length > 0 && length.Word.StartsWith(text, StringComparison.OrdinalIgnoreCase) =>
            length.Word,
        Wanted.LengthOr => CellShorthand.Expand(text, QuantityKind.Length, system),
        Wanted.PlaceOnBeam => CellShorthand.ExpandPlace(text, CellUnits.Of(QuantityKind.Length, system)),
        Wanted.TwoLengths => CellShorthand.ExpandPad(text, CellUnits.ShortLength(system)),
        Wanted.OneOf words => SupportCells.Whole(text, [.. words.Words]),
        Wanted.ShareOfSpan when LoadSize.Reads(text, QuantityKind.Number) => "L/" + text,
        Wanted.Truth => SupportCells.Whole(text, ["true", "false"]),
        _ => text,
    };

    private static string UnitOf(string key, QuantityKind kind, UnitSystem system)
    {
        string table = key.Split('[', '.')[0];
        return (kind, table) switch
        {
            (QuantityKind.Length, "section" or "support" or "limits") => CellUnits.ShortLength(system),
            (QuantityKind.Pressure, "material") => CellUnits.Stress(system),
            (QuantityKind.Pressure, "support") when key.EndsWith(".bearing_allowable", StringComparison.Ordinal) =>
                CellUnits.Stress(system),
            _ => CellUnits.Of(kind, system),
        };
    }

    private static BeamDocument Begun(BeamDocument document, string key)
    {
        Rows<KeyStep> steps = KeyPath.Parse(key)?.Steps ?? [];
        string last = steps is [.., KeyStep.Into end] ? end.Key : "";
        return steps switch
        {
            [KeyStep.Into { Key: "section" }, KeyStep.Into section, ..] =>
                document with { Sections = WithSection(document.Sections, section.Key, last) },
            [KeyStep.Into { Key: "material" }, KeyStep.Into material, ..] =>
                document with { Materials = WithMaterial(document.Materials, material.Key, last) },
            _ => RowsBegun.For(document, steps),
        };
    }

    // A section that is there only because its name might be a shape of the catalogue is none once its sides are typed.
    private static Rows<SectionEntry> WithSection(Rows<SectionEntry> sections, string name, string key)
    {
        int row = sections.ToList().FindIndex(section => section.Name == name);
        return row < 0 ? sections.Add(new SectionEntry { Name = name })
            : sections[row] == NamedSticks.Shape(name) && key is not ("shape" or "flat")
                ? sections.SetItem(row, new SectionEntry { Name = name })
                : sections;
    }

    private static Rows<MaterialEntry> WithMaterial(Rows<MaterialEntry> materials, string name, string key)
    {
        int row = materials.ToList().FindIndex(material => material.Name == name);
        return row < 0 ? materials.Add(new MaterialEntry { Name = name })
            : materials[row] == NamedSticks.Grade(name) && key is ("modulus" or "shear_modulus" or "density")
                ? materials.SetItem(row, new MaterialEntry { Name = name })
                : materials;
    }
}
