using FieldCheck.Sheet.Editing;
using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Screen.StatedFigures;

/// <summary>What a cell of what is stated was read as: its figure, and which way it acts on the beam.</summary>
internal static class StatedReadBack
{
    /// <summary>The cell read back; null where there is nothing to say.</summary>
    /// <param name="column">The column.</param>
    /// <param name="text">What stands in the cell.</param>
    /// <param name="units">The units that results are shown in.</param>
    internal static string? Of(FormColumn column, string text, DisplayUnits units) => column switch
    {
        FormColumn.Vertical => Figure(text, QuantityKind.Force, units, "up", "held down"),
        FormColumn.Horizontal => Figure(text, QuantityKind.Force, units, "to the right", "to the left"),
        FormColumn.Moment => Figure(text, QuantityKind.Moment, units, "counter-clockwise", "clockwise"),
        FormColumn.Under => text switch
        {
            "max" => "max: the greatest of the combinations",
            "min" => "min: the least of the combinations",
            _ => $"stated for {text}",
        },
        FormColumn.Basis => text switch
        {
            "service" => "service: without load factors",
            "factored" => "factored: with load factors",
            "unknown" => "unknown: not judged until it is known",
            _ => null,
        },
        _ => null,
    };

    private static string? Figure(string text, QuantityKind kind, DisplayUnits units, string positive, string negative) =>
        QuantityReader.Read(text, kind) is not Reading<Quantity>.Accepted { Value: Quantity read } ? null
        : read.Value < 0 ? $"{TextSafety.ForTerminal(text.Trim())} = {units.Say(-read.Value, kind)} {negative}"
        : $"{ReadBack.Say(text, read, kind, units)}{(read.Value > 0 ? " " + positive : "")}";
}
