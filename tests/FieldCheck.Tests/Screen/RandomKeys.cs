using FieldCheck.Screen.Keyboard;
using FieldCheck.Sheet.Editing;

namespace FieldCheck.Tests.Screen;

/// <summary>Keys as nobody presses them: words that read and words that do not, moves, commands, pastes, by chance.</summary>
/// <param name="seed">Decides all of them.</param>
internal sealed class RandomKeys(int seed)
{
    /// <summary>What is typed in cells.</summary>
    internal static readonly string[] Words =
    [
        "3", "12", "0.6", "5 kNm", "12/m", "3..6/m", "1.2t", "12 psf * 5 ft", "12'-6 1/2\"", "end", "joint 1",
        "A + 1", "mid 1", "B - 0.5", "pin", "r 30 deg", "spring 500", "up", "on", "dead",
        "IPE200", "C24", "x", "1,5", "kN", "½",
        "梁", "=", "\"", "#",
    ];

    /// <summary>What is pasted.</summary>
    internal static readonly string[] Pastes =
    [
        "5\n6 kN\t2\n", "3", "\u001b[31m", "a\tb\tc\td\te\tf\tg", "é\r\n\t\n梁\r\n", "\n", "12 kN\t0.5\tend\tsnow\ttwo",
    ];

    private static readonly string[] Characters = [" ", "<", ">", "/", "?", "[", "]", ".", "~", "e\u0301", "👷🏽‍♀️"];

    private readonly Random _random = new(seed);

    /// <summary>The keys of one thing that a person might do; never none.</summary>
    /// <remarks>Esc is frequent and what leaves the beam is rare, or else most keys would fall into some question.</remarks>
    /// <param name="focus">The cell that the person is on: half of what is typed there is of its kind.</param>
    internal IReadOnlyList<KeyStroke> Next(FormPlace focus) => _random.Next(60) switch
    {
        < 8 => [new KeyStroke.Named(KeyName.Escape)],
        < 22 => [new KeyStroke.Named(OneOf(Enum.GetValues<KeyName>()))],
        < 26 => [new KeyStroke.Text(OneOf(Characters))],
        < 32 => [new KeyStroke.Control(OneOf("DXZZYEL".ToCharArray()))],
        < 33 => [new KeyStroke.Control(OneOf("SSONQC".ToCharArray()))],
        < 36 => [new KeyStroke.Text("/"), new KeyStroke.Text($"{(char)('a' + _random.Next(26))}")],
        < 38 => [new KeyStroke.Text($"{(char)('a' + _random.Next(26))}")],
        < 48 => [.. Keys.Typed(Word(focus.Column)), new KeyStroke.Named(KeyName.Enter)],
        < 58 => [.. Keys.Typed(Word(focus.Column)), new KeyStroke.Named(KeyName.Tab)],
        < 59 => [new KeyStroke.Paste(OneOf(Pastes))],
        _ => [new KeyStroke.Named(OneOf([KeyName.F4, KeyName.F5, KeyName.F6, KeyName.F8, KeyName.F8]))],
    };

    private string Word(FormColumn column) => OneOf(_random.Next(3) == 0 ? Words : column switch
    {
        FormColumn.Length or FormColumn.Reading => ["3", "2.5 m", "12'-6 1/2\"", "7 ft + 1 m"],
        FormColumn.Section => ["IPE200", ""],
        FormColumn.Material => ["C24", ""],
        FormColumn.Place => ["joint 1", "1.2", "end", "mid 1", "joint 2 - 0.5"],
        FormColumn.Kind => ["pin", "roller", "r 30 deg", "spring 500", "fixed"],
        FormColumn.Settles => ["5", "1/2 in", ""],
        FormColumn.Acts => ["up", "both", ""],
        FormColumn.Label => ["P", "Q1", ""],
        FormColumn.Size => ["12/m", "5 kNm", "1.2t", "3..6/m", "-2 kN", "4"],
        FormColumn.From => ["0.6", "mid 1", "1 ft", ""],
        FormColumn.To => ["end", "2.2", ""],
        FormColumn.Case => ["dead", "wind", ""],
        FormColumn.Vertical or FormColumn.Horizontal => ["10.3", "-1.2 kN", "2250 lbf", ""],
        FormColumn.Moment => ["2", "-3 kip-ft", ""],
        FormColumn.Under => ["max", "dead", "all loads", ""],
        FormColumn.Basis => ["f", "unknown", ""],
        FormColumn.Allow => ["5", "0.5 kN", ""],
        FormColumn.Support => ["A", "b", "x"],
        FormColumn.Pattern or FormColumn.OwnWeight => ["yes", "n", ""],
        FormColumn.Name => ["1.2 dead + 1.6 live", "ULS", ""],
        FormColumn.Axles => ["12, 12 at 1.2", "8 kN", "1,5", ""],
        FormColumn.Impact => ["30", ""],
        >= FormColumn.Factor => ["1.35", "-1", "x", ""],
        _ => ["梁", "note"],
    });

    private T OneOf<T>(T[] values) => values[_random.Next(values.Length)];
}
