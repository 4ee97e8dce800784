using FieldCheck.Screen;
using Terminal.Gui.Drawing;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace FieldCheck.Views;

/// <summary>How the roles of a picture look: the terminal's own colours, and none at all where colour is unwanted.</summary>
/// <remarks>A role never speaks by colour alone: verdicts are words, the focused cell wears brackets.</remarks>
internal sealed class Palette(bool hasColour)
{
    internal Attribute Of(Role role) => role switch
    {
        Role.Focus => new Attribute(Color.None, Color.None, TextStyle.Reverse),
        Role.Faint => hasColour ? Coloured(ColorName16.DarkGray, TextStyle.None) : Plain(TextStyle.None),
        Role.Good => Plain(TextStyle.Bold),
        Role.Warn => hasColour ? Coloured(ColorName16.BrightYellow, TextStyle.Bold) : Plain(TextStyle.Bold),
        Role.Bad => hasColour
            ? Coloured(ColorName16.BrightYellow, TextStyle.Bold | TextStyle.Reverse)
            : Plain(TextStyle.Bold | TextStyle.Reverse),
        Role.Accent => hasColour ? Coloured(ColorName16.BrightCyan, TextStyle.None) : Plain(TextStyle.None),
        _ => Plain(TextStyle.None),
    };

    private static Attribute Plain(TextStyle style) => new(Color.None, Color.None, style);

    private static Attribute Coloured(ColorName16 name, TextStyle style) => new(new Color(name), Color.None, style);
}
