using System.Collections.Immutable;
using FieldCheck.Screen.Keyboard;

namespace FieldCheck.Screen.Overlays;

/// <summary>Keys pressed in the settings.</summary>
internal static class SettingsKeys
{
    internal static ScreenStep Press(ScreenState state, Overlay.Settings settings, KeyStroke stroke)
    {
        ImmutableArray<SettingsLine> lines = SettingsLines.Of(state.Preferences);
        return stroke switch
        {
            KeyStroke.Named { Key: KeyName.Enter } or KeyStroke.Text { Grapheme: " " } =>
                (state with { Preferences = lines[settings.Choice].Next }).Step(),
            _ => (state with
            {
                Overlay = new Overlay.Settings(OverlayKeys.Moved(settings.Choice, lines.Length, stroke)),
            }).Step(),
        };
    }
}
