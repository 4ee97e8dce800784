using System.Collections.Immutable;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Editing;

/// <summary>Which columns sections, materials, limits, bracing and bearings have, and which key each is.</summary>
internal static class StickColumns
{
    private static readonly ImmutableArray<StickColumn> Sections =
    [
        new(FormColumn.Shape, "shape"),
        new(FormColumn.Width, "width"),
        new(FormColumn.Depth, "depth"),
        new(FormColumn.Plies, "plies"),
        new(FormColumn.Diameter, "diameter"),
        new(FormColumn.Wall, "wall"),
        new(FormColumn.FlangeWidth, "flange_width", "flange"),
        new(FormColumn.FlangeThickness, "flange_thickness", "thickness"),
        new(FormColumn.WebThickness, "web_thickness", "web"),
        new(FormColumn.Inertia, "inertia", "I"),
        new(FormColumn.SectionModulus, "section_modulus", "S"),
        new(FormColumn.Area, "area", "A"),
        new(FormColumn.ShearArea, "shear_area", "shear area"),
        new(FormColumn.Weight, "weight"),
        new(FormColumn.Flat, "flat", "stands"),
    ];

    private static readonly ImmutableArray<StickColumn> Materials =
    [
        new(FormColumn.Grade, "grade"),
        new(FormColumn.Modulus, "modulus", "E"),
        new(FormColumn.AllowableBending, "allowable_bending", "allow bending"),
        new(FormColumn.AllowableShear, "allowable_shear", "allow shear"),
        new(FormColumn.AllowableBearing, "allowable_bearing", "allow bearing"),
        new(FormColumn.DesignBending, "design_bending", "design bending"),
        new(FormColumn.DesignShear, "design_shear", "design shear"),
        new(FormColumn.DesignBearing, "design_bearing", "design bearing"),
        new(FormColumn.Yield, "yield"),
        new(FormColumn.Factors, "factors"),
        new(FormColumn.Creep, "creep"),
        new(FormColumn.ShearModulus, "shear_modulus", "G"),
        new(FormColumn.Density, "density"),
    ];

    private static readonly ImmutableArray<StickColumn> Limits =
    [
        new(FormColumn.Rules, "rules"),
        new(FormColumn.Deflection, "deflection"),
        new(FormColumn.Overhang, "deflection_overhang"),
        new(FormColumn.Absolute, "deflection_absolute"),
        new(FormColumn.Final, "deflection_final"),
        new(FormColumn.FinalOverhang, "deflection_final_overhang", "final overhang"),
        new(FormColumn.CaseLimits, "deflection_cases", "by case"),
        new(FormColumn.Lasting, "lasting"),
    ];

    private static readonly ImmutableArray<StickColumn> Bracing = [new(FormColumn.Unbraced, "unbraced")];

    private static readonly ImmutableArray<StickColumn> Bearings =
    [
        new(FormColumn.Bearing, "bearing", "length"),
        new(FormColumn.BearingAllowable, "bearing_allowable", "allow bearing on it"),
        new(FormColumn.Pad, "pad"),
        new(FormColumn.Pressure, "allowable_pressure", "allow pressure under it"),
    ];

    private static readonly ImmutableArray<StickColumn> Every =
        [.. Sections, .. Materials, .. Limits, .. Bracing, .. Bearings];

    // The forms of a section: the keys that tell each, and its columns.
    private static readonly ImmutableArray<(FormColumn[] Telling, FormColumn[] Columns)> Forms =
    [
        ([FormColumn.Shape], [FormColumn.Flat]),
        ([FormColumn.Width, FormColumn.Plies], [FormColumn.Width, FormColumn.Depth, FormColumn.Plies, FormColumn.Flat]),
        ([FormColumn.Diameter, FormColumn.Wall], [FormColumn.Diameter, FormColumn.Wall]),
        ([FormColumn.FlangeWidth, FormColumn.FlangeThickness, FormColumn.WebThickness],
            [FormColumn.Depth, FormColumn.FlangeWidth, FormColumn.FlangeThickness, FormColumn.WebThickness, FormColumn.Flat]),
        ([FormColumn.Inertia, FormColumn.SectionModulus, FormColumn.Area, FormColumn.ShearArea, FormColumn.Weight],
            [FormColumn.Inertia, FormColumn.SectionModulus, FormColumn.Area, FormColumn.Depth, FormColumn.ShearArea, FormColumn.Weight]),
    ];

    internal static ImmutableArray<FormColumn> All(FormBlock block) => [.. Of(block).Select(column => column.Column)];

    /// <summary>The columns of a block: of sections, those that one of them needs.</summary>
    internal static ImmutableArray<FormColumn> Of(BeamDocument document, FormBlock block) => block != FormBlock.Sections
        ? All(block)
        :
        [
            .. All(block).Where(column => Enumerable.Range(0, StickRows.CountOf(document, block))
                .Any(row => Of(document, new FormPlace(block, row, column)).Contains(column))),
        ];

    /// <summary>
    /// The columns that make sense in a row: of a section those of its form and what stands in others, all where it has
    /// none yet.
    /// </summary>
    internal static ImmutableArray<FormColumn> Of(BeamDocument document, FormPlace place)
    {
        ImmutableArray<FormColumn> all = All(place.Block);
        if (place.Block != FormBlock.Sections)
        {
            return all;
        }

        HashSet<FormColumn> standing =
            [.. all.Where(column => StickCells.TextOf(document, place with { Column = column }) is not null)];
        (FormColumn[] Telling, FormColumn[] Columns)[] forms =
            [.. Forms.Where(form => form.Telling.Any(standing.Contains))];
        return forms.Length == 0
            ? all
            : [.. all.Where(column => column == FormColumn.Shape || standing.Contains(column)
                || forms.Any(form => form.Columns.Contains(column)))];
    }

    internal static string? Heading(FormColumn column) =>
        Every.FirstOrDefault(known => known.Column == column)?.Heading;

    internal static string? KeyOf(FormColumn column) => Every.FirstOrDefault(known => known.Column == column)?.Key;

    /// <summary>The column of a key; the first of the block where it has none.</summary>
    internal static FormColumn ColumnOf(FormBlock block, string key) =>
        (Of(block).FirstOrDefault(known => known.Key == key) ?? Of(block)[0]).Column;

    internal static bool HasKey(FormBlock block, string key) => Of(block).Any(known => known.Key == key);

    private static ImmutableArray<StickColumn> Of(FormBlock block) => block switch
    {
        FormBlock.Sections => Sections,
        FormBlock.Materials => Materials,
        FormBlock.Limits => Limits,
        FormBlock.Bracing => Bracing,
        _ => Bearings,
    };

    private sealed record StickColumn(FormColumn Column, string Key, string? Words = null)
    {
        internal string Heading => Words ?? Column.ToString().ToLowerInvariant();
    }
}
