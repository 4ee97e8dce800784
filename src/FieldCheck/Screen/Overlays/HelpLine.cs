using FieldCheck.Screen.Keyboard;

namespace FieldCheck.Screen.Overlays;

/// <summary>One line of the help.</summary>
/// <param name="Keys">The keys, or empty.</param>
/// <param name="Words">What they do, or a sentence.</param>
/// <param name="Command">The command that Enter runs; null for a sentence.</param>
internal sealed record HelpLine(string Keys, string Words, ScreenCommand? Command = null);
