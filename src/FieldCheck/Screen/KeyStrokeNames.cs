namespace FieldCheck.Screen;

/// <summary>How keys are written on the screen and in the list of keys.</summary>
internal static class KeyStrokeNames
{
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
}
