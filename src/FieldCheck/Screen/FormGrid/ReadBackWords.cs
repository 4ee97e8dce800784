using FieldCheck.Screen.Combining;
using FieldCheck.Screen.Sections;
using FieldCheck.Screen.StatedFigures;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Editing;
using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Screen.FormGrid;

/// <summary>What the text in a cell was read as, so that no slip of a unit goes unseen.</summary>
internal static class ReadBackWords
{
    /// <summary>A cell read back; null where there is nothing to say.</summary>
    /// <param name="calculation">What came of the beam.</param>
    /// <param name="place">The cell.</param>
    internal static string? Of(Calculation calculation, FormPlace place)
    {
        BeamDocument document = calculation.Document;
        DisplayUnits units = new(document.Units);
        string? text = FormCells.TextOf(document, place);
        if (text is null)
        {
            return null;
        }

        return (place.Block, place.Column) switch
        {
            (FormBlock.Spans, FormColumn.Length or FormColumn.Reading) => Said(text, QuantityKind.Length, units),
            (FormBlock.Supports, FormColumn.Place) => SupportPlace(calculation, place.Row, text, units),
            (FormBlock.Supports, FormColumn.Kind) => Kind(document.Supports[place.Row], units),
            (FormBlock.Supports, FormColumn.Settles) => Said(text, QuantityKind.Length, units),
            (FormBlock.Supports, FormColumn.Acts) => Acts(text),
            (FormBlock.Loads, FormColumn.Size or FormColumn.From or FormColumn.To) when !place.IsOwnWeight =>
                LoadWords.Of(calculation, place, text, units),
            (FormBlock.Cases or FormBlock.Combinations or FormBlock.Rolling, _) =>
                CaseWords.ReadBack(document, place, text, units),
            _ when StickCells.Has(place.Block) => StickWords.ReadBack(calculation, place, text),
            (FormBlock.Stated, _) => StatedReadBack.Of(place.Column, text, units),
            _ => null,
        };
    }

    /// <summary>What a quantity was read as; null where it does not read.</summary>
    internal static string? Said(string text, QuantityKind kind, DisplayUnits units) =>
        QuantityReader.Read(text, kind) is Reading<Quantity>.Accepted read
            ? ReadBack.Say(text, read.Value, kind, units)
            : null;

    private static string? SupportPlace(Calculation calculation, int row, string text, DisplayUnits units) =>
        calculation.Beam?.Supports.FirstOrDefault(support => support.Row == row) is NamedSupport support
            ? ReadBack.SayPlace(text, support.Support.Position, units)
            : Said(text, QuantityKind.Length, units);

    private static string? Kind(SupportEntry support, DisplayUnits units) => support.Kind switch
    {
        "pin" => "pin: holds up and along, lets it turn",
        "roller" => support.Surface is string slope
            ? $"roller on a slope of {slope}: pushes square to the slope"
            : "roller: holds up, lets it slide and turn",
        "fixed" => "fixed: holds up, along and turning",
        "guide" => "guide: holds along and turning, free up and down",
        "spring" => support.Stiffness is string stiffness
            ? $"spring: {Said(stiffness, QuantityKind.Stiffness, units) ?? stiffness}"
            : "spring: type its stiffness behind the word, as spring 500",
        _ => null,
    };

    private static string? Acts(string text) => text switch
    {
        "both" => "both: pushes up and holds down",
        "up" => "up: only pushes up; pulled, it lets go",
        "down" => "down: only holds down, as a strap does",
        _ => null,
    };
}
