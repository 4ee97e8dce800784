using FieldCheck.Screen.Combining;
using FieldCheck.Screen.Sections;
using FieldCheck.Sheet.Editing;

namespace FieldCheck.Screen.FormGrid;

/// <summary>What can be typed in a cell.</summary>
internal static class CellHints
{
    /// <summary>What can be typed, with examples.</summary>
    /// <param name="place">The cell.</param>
    internal static string Of(FormPlace place) => place.IsOwnWeight
        ? "the weight of the sections as a load, on or off (Space)"
        : place.Block is FormBlock.Cases or FormBlock.Combinations or FormBlock.Rolling ? CaseWords.Hint(place)
        : StickCells.Has(place.Block) ? StickWords.Hint(place.Column)
        : place.Column switch
        {
            FormColumn.Length => "the span's length: 3.6, 3600mm, 12'-6 1/2\"",
            FormColumn.Reading => "tape reading of the far end, from the left end of the beam",
            FormColumn.Section => "a shape of the catalogue, as W10x30, or a name; sizes by / m",
            FormColumn.Material => "a grade of the catalogue, as A992, or a name; figures by / m",
            FormColumn.Place => "where it stands: 0.3, joint 1, end, mid 1, end - 6 in",
            FormColumn.Kind => "Space changes it: pin, roller 30 deg, fixed, guide, spring 500",
            FormColumn.Settles => "by how much it sinks: 12 mm",
            FormColumn.Acts => "Space: both, up (only pushes), down (only holds down)",
            FormColumn.Label => "what it is called everywhere; empty: its letter",
            FormColumn.Size => "12, 12/m spread, 3..6/m varies, 5 kNm turns, 1.2t, 12 psf * 5 ft",
            FormColumn.From => "where it stands or begins: 0.6, A + 4 ft, mid 1",
            FormColumn.To => "where it ends; empty for a load at one place",
            FormColumn.Vertical => "force stated upward: 10.3, 2250 lbf; held down: -1.2",
            FormColumn.Horizontal => "force stated to the right: 3; to the left: -3",
            FormColumn.Moment => "moment stated counter-clockwise: 5; clockwise: -5",
            FormColumn.Under => "Space: the combination or case it is stated for, or max, min",
            FormColumn.Basis => "Space: service, factored, unknown (is not judged then)",
            FormColumn.Allow => "how far off it may be: 2 %, 0.5 kN; empty: 2 %",
            FormColumn.Source => "where it is stated: hire firm's sheet, rev B",
            FormColumn.Support => "the support it is stated of, by its letter or name",
            FormColumn.Case => "dead live roof_live snow rain wind earthquake construction, other",
            _ => "what it is",
        };

    /// <summary>The same for a cell that cannot do without; null where the reason must be told besides.</summary>
    /// <param name="place">The cell.</param>
    internal static string? OfMissing(FormPlace place) => place.Column
        is FormColumn.Length or FormColumn.Place or FormColumn.Kind or FormColumn.Size or FormColumn.From
        or FormColumn.Vertical or FormColumn.Support or FormColumn.Name or FormColumn.Axles or >= FormColumn.Factor
            ? Of(place)
            : null;
}
