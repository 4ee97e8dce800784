namespace FieldCheck.Screen.Keyboard;

/// <summary>The keys that have a name, of those that every terminal sends.</summary>
internal enum KeyName
{
    Enter,
    Tab,
    ShiftTab,
    Escape,
    Backspace,
    Delete,
    Up,
    Down,
    Left,
    Right,
    Home,
    End,
    PageUp,
    PageDown,
    F1,
    F2,
    F3,
    F4,
    F5,
    F6,
    F7,
    F8,
    F9,
}
