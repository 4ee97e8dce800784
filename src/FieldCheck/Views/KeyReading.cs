using System.Text;
using FieldCheck.Screen.Keyboard;
using Terminal.Gui.Drivers;
using Terminal.Gui.Input;

namespace FieldCheck.Views;

/// <summary>Says in the screen's own terms which key the toolkit delivered.</summary>
internal static class KeyReading
{
    /// <summary>The key, or null for one that the program has no use for.</summary>
    internal static KeyStroke? Of(Key key)
    {
        if (key.IsAlt)
        {
            return null;
        }

        if (key.IsCtrl)
        {
            KeyCode letter = key.NoCtrl.NoShift.KeyCode;
            return letter is >= KeyCode.A and <= KeyCode.Z ? new KeyStroke.Control((char)letter) : null;
        }

        if (Name(key) is KeyName name)
        {
            return new KeyStroke.Named(name);
        }

        string text = key.AsGrapheme;
        return text.Length > 0 && !text.EnumerateRunes().Any(Rune.IsControl) ? new KeyStroke.Text(text) : null;
    }

    private static KeyName? Name(Key key) => key.NoShift.KeyCode switch
    {
        KeyCode.Enter => KeyName.Enter,
        KeyCode.Tab => key.IsShift ? KeyName.ShiftTab : KeyName.Tab,
        KeyCode.Esc => KeyName.Escape,
        KeyCode.Backspace => KeyName.Backspace,
        KeyCode.Delete => KeyName.Delete,
        KeyCode.CursorUp => KeyName.Up,
        KeyCode.CursorDown => KeyName.Down,
        KeyCode.CursorLeft => KeyName.Left,
        KeyCode.CursorRight => KeyName.Right,
        KeyCode.Home => KeyName.Home,
        KeyCode.End => KeyName.End,
        KeyCode.PageUp => KeyName.PageUp,
        KeyCode.PageDown => KeyName.PageDown,
        >= KeyCode.F1 and <= KeyCode.F9 => KeyName.F1 + (int)(key.NoShift.KeyCode - KeyCode.F1),
        _ => null,
    };
}
