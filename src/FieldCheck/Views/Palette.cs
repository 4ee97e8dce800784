using FieldCheck.Screen.Painting;
using Terminal.Gui.Drawing;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace FieldCheck.Views;

/// <summary>How a picture looks on the terminal at hand: its roles in colours or without, its text in full or in ASCII.</summary>
/// <remarks>A role never speaks by colour alone: verdicts are words, the focused cell wears brackets.</remarks>
/// <param name="Theme">The looks asked for.</param>
/// <param name="HasColour">False: no colour, whatever the theme.</param>
/// <param name="IsUtf8">False: the terminal shows ASCII only.</param>
internal sealed record Palette(Theme Theme, bool HasColour = true, bool IsUtf8 = true)
{
    /// <summary>The looks of a role.</summary>
    internal Attribute Of(Role role) => HasColour ? InTheme(role) : Mono(role);

    /// <summary>A text as the terminal can show it; as wide as it was.</summary>
    internal string Text(string text) => IsUtf8 ? text : AsciiText.Of(text);

    private static Attribute Mono(Role role) => role switch
    {
        Role.Focus => Plain(TextStyle.Reverse),
        Role.Heading => Plain(TextStyle.Bold | TextStyle.Underline),
        Role.Good or Role.Warn => Plain(TextStyle.Bold),
        Role.Bad => Plain(TextStyle.Bold | TextStyle.Reverse),
        _ => Plain(TextStyle.None),
    };

    private static Attribute Plain(TextStyle style) => new(Color.None, Color.None, style);

    private static Attribute Coloured(ColorName16 name, TextStyle style) => new(new Color(name), Color.None, style);

    // Both colours are named, so that it is as strong on a light terminal.
    private static Attribute OnBlack(ColorName16 name, TextStyle style) =>
        new(new Color(name), new Color(ColorName16.Black), style);

    private Attribute InTheme(Role role) => (Theme, role) switch
    {
        (Theme.Mono, _) => Mono(role),
        (Theme.HighContrast, Role.Focus) => OnBlack(ColorName16.White, TextStyle.Bold | TextStyle.Reverse),
        (Theme.HighContrast, Role.Heading) => OnBlack(ColorName16.White, TextStyle.Bold | TextStyle.Underline),
        (Theme.HighContrast, Role.Good) => OnBlack(ColorName16.White, TextStyle.Bold),
        (Theme.HighContrast, Role.Warn) => OnBlack(ColorName16.BrightYellow, TextStyle.Bold),
        (Theme.HighContrast, Role.Bad) => OnBlack(ColorName16.BrightYellow, TextStyle.Bold | TextStyle.Reverse),
        (Theme.HighContrast, _) => OnBlack(ColorName16.White, TextStyle.None),
        (_, Role.Faint) => Coloured(ColorName16.DarkGray, TextStyle.None),
        (_, Role.Warn) => Coloured(ColorName16.BrightYellow, TextStyle.Bold),
        (_, Role.Bad) => Coloured(ColorName16.BrightYellow, TextStyle.Bold | TextStyle.Reverse),
        (_, Role.Heading) => Coloured(ColorName16.BrightCyan, TextStyle.Bold | TextStyle.Underline),
        (_, Role.Accent) => Coloured(ColorName16.BrightCyan, TextStyle.None),
        _ => Mono(role),
    };
}
