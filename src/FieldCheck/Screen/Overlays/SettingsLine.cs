namespace FieldCheck.Screen.Overlays;

/// <summary>One line of the settings.</summary>
/// <param name="Words">What it decides.</param>
/// <param name="Value">What is decided now.</param>
/// <param name="Next">What a person wants after it is changed.</param>
internal sealed record SettingsLine(string Words, string Value, Preferences Next);
