using FieldCheck.Screen.Keyboard;

namespace FieldCheck.Screen.Overlays;

/// <summary>One line of the menu.</summary>
/// <param name="Command">What it does.</param>
/// <param name="Letter">The letter that takes it.</param>
/// <param name="Words">What stands in it.</param>
/// <param name="Keys">The keys that do the same; empty where there are none.</param>
internal sealed record MenuEntry(CommandName Command, char Letter, string Words, string Keys);
