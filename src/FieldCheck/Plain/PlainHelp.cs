using System.Collections.Immutable;
using FieldCheck.Sheet.Editing;

namespace FieldCheck.Plain;

/// <summary>What the help says.</summary>
internal static class PlainHelp
{
    private const string Keys = "Anything else of the beam is set by its name and a text, as: title Bearer, "
        + "limits deflection L/360, hinge 1 at 2 m. more lists the names.";

    private const string Answers = "While a cell is asked: Enter keeps what stands, - empties the cell, ? says what can "
        + "be typed, stop ends the questions, and most commands can be said in between.";

    /// <summary>All commands, or one of them with what can be typed for it.</summary>
    /// <param name="text">The command; empty for all.</param>
    internal static ImmutableArray<string> Lines(string text)
    {
        if (text.Trim().Length == 0)
        {
            return [.. PlainCommands.All.Select(Line), Keys, Answers];
        }

        return PlainCommands.Of(text) is PlainCommand command
            ? [Line(command), .. CellsOf(command.Word)]
            : [$"There is no command {text.Trim()}. help alone says all of them."];
    }

    // What is typed stays as it is typed, without a capital.
    private static string Line(PlainCommand command) => $"{command.Usage}: {command.Does}.";

    private static FormBlock? BlockOf(string word) => word switch
    {
        "section" => FormBlock.Sections,
        "material" => FormBlock.Materials,
        "limits" => FormBlock.Limits,
        "bearing" => FormBlock.Bearings,
        _ => PlainNames.Block(word),
    };

    private static IEnumerable<string> CellsOf(string word) => BlockOf(word) is FormBlock block
        ? FormColumns.Of(block).Where(column => column != FormColumn.Holds).Select(column => Cell(word, block, column))
            .Concat(block == FormBlock.Combinations ? [$"{word} and the name of a case: {PlainHints.Of(AnyFactor)}."] : [])
        : [];

    private static FormPlace AnyFactor { get; } = new(FormBlock.Combinations, 0, FormColumn.Factor);

    private static string Cell(string word, FormBlock block, FormColumn column) =>
        $"{word} {PlainNames.NamesOf(block, column)[0]}: {PlainHints.Of(new FormPlace(block, 0, column))}.";
}
