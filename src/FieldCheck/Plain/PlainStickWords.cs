using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Editing;

namespace FieldCheck.Plain;

/// <summary>What is asked and said of cells of sections, materials, limits, bracing and bearings.</summary>
internal static class PlainStickWords
{
    /// <summary>What is asked of a cell.</summary>
    /// <param name="column">Its column.</param>
    /// <param name="row">What its row is called, as "section joist".</param>
    internal static string Asked(FormColumn column, string row) => column switch
    {
        FormColumn.Flat => $"Does {row} stand on edge, or lie flat",
        FormColumn.Inertia => $"Second moment of area of {row}",
        FormColumn.SectionModulus => $"Section modulus of {row}",
        FormColumn.Modulus => $"Modulus of elasticity of {row}",
        FormColumn.ShearModulus => $"Shear modulus of {row}",
        FormColumn.AllowableBending => $"Allowable stress in bending of {row}",
        FormColumn.AllowableShear => $"Allowable stress in shear of {row}",
        FormColumn.AllowableBearing => $"Allowable stress in bearing of {row}",
        FormColumn.DesignBending => $"Design strength in bending of {row}",
        FormColumn.DesignShear => $"Design strength in shear of {row}",
        FormColumn.DesignBearing => $"Design strength in bearing of {row}",
        FormColumn.Rules => "Rules that strengths are judged by",
        FormColumn.Deflection => "Limit of deflection of each bay",
        FormColumn.Overhang => "Limit of deflection of each overhang",
        FormColumn.Absolute => "Deflection nowhere more than",
        FormColumn.Final => "Limit of deflection of each bay in the end",
        FormColumn.FinalOverhang => "Limit of deflection of each overhang in the end",
        FormColumn.CaseLimits => "Limits of deflection under one case alone",
        FormColumn.Lasting => "Share of cases that lasts",
        FormColumn.Unbraced => $"Length of {row} free to go sideways, or braced",
        FormColumn.Bearing => $"Length of the bearing at {row}",
        FormColumn.BearingAllowable => $"What the beam may press on the bearing at {row}",
        FormColumn.Pad => $"Sides of the pad under {row}",
        FormColumn.Pressure => $"What the ground under {row} may carry",
        _ => PlainWords.Sentence($"{FormColumns.Heading(column)} of {row}").TrimEnd('.'),
    };

    /// <summary>Sides typed in the place of a shape, each with its name; null where the cell holds what was typed.</summary>
    /// <param name="document">The beam, the sides in it.</param>
    /// <param name="place">The cell of the shape.</param>
    internal static string? Sides(BeamDocument document, FormPlace place)
    {
        FormColumn[] columns = place.Column == FormColumn.Shape && FormCells.TextOf(document, place) is null
            ? [FormColumn.Width, FormColumn.Depth, FormColumn.Plies]
            : [];
        string sides = string.Join(", ", columns
            .Select(column => (Name: FormColumns.Heading(column), Text: FormCells.TextOf(document, place with { Column = column })))
            .Where(side => side.Text is not null)
            .Select(side => $"{side.Name} {side.Text}"));
        return sides.Length == 0 ? null : sides;
    }
}
