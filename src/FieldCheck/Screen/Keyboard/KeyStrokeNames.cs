using System.Globalization;

namespace FieldCheck.Screen.Keyboard;

/// <summary>How keys are written on the screen, in the list of keys and in the settings file.</summary>
internal static class KeyStrokeNames
{
    private static readonly Dictionary<string, KeyStroke> Named = Enum.GetValues<KeyName>()
        .Select(name => (KeyStroke)new KeyStroke.Named(name))
        .Append(new KeyStroke.Text(" "))
        .ToDictionary(Of, StringComparer.OrdinalIgnoreCase);

    /// <summary>The short name of a key, as "^D", "F2" or "Shift+Tab".</summary>
    /// <param name="stroke">The key.</param>
    internal static string Of(KeyStroke stroke) => stroke switch
    {
        KeyStroke.Control control => $"^{control.Letter}",
        KeyStroke.Text text => text.Grapheme == " " ? "Space" : text.Grapheme,
        KeyStroke.Named { Key: KeyName.ShiftTab } => "Shift+Tab",
        KeyStroke.Named { Key: KeyName.Escape } => "Esc",
        KeyStroke.Named { Key: KeyName.PageUp } => "PgUp",
        KeyStroke.Named { Key: KeyName.PageDown } => "PgDn",
        KeyStroke.Named named => named.Key.ToString(),
        _ => "paste",
    };

    /// <summary>The key of a name; null where there is none of that name.</summary>
    /// <param name="name">The name, as "^D", "F2", "Shift+Tab", "Space", or one character.</param>
    internal static KeyStroke? Read(string name) => name switch
    {
        ['^', char letter] when char.IsAsciiLetter(letter) => new KeyStroke.Control(char.ToUpperInvariant(letter)),
        _ when Named.TryGetValue(name, out KeyStroke? named) => named,
        _ => new StringInfo(name).LengthInTextElements == 1 ? new KeyStroke.Text(name) : null,
    };
}
