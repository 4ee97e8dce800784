using System.Collections.Immutable;
using FieldCheck.Screen.Keyboard;
using FieldCheck.Screen.Painting;

namespace FieldCheck.Screen.Overlays;

/// <summary>Keys pressed in the help.</summary>
internal static class HelpKeys
{
    internal static ScreenStep Press(ScreenState state, Overlay.Help help, KeyStroke stroke)
    {
        ImmutableArray<HelpLine> lines = HelpLines.Of(state.Table, state.View, help.Filter.Text);
        switch (stroke)
        {
            case KeyStroke.Text { Grapheme: "?" }:
                return (state with { Overlay = null }).Step();
            case KeyStroke.Named { Key: KeyName.Enter }:
                return lines[help.Choice].Command is { Name: not CommandName.Type } command
                    ? Commands.Run(state with { Overlay = null }, command.Name)
                    : state.Step();
            case KeyStroke.Named
            {
                Key: KeyName.Up or KeyName.Down or KeyName.PageUp or KeyName.PageDown
                or KeyName.Home or KeyName.End
            }:
                int choice = OverlayKeys.Moved(help.Choice, lines.Length, stroke);
                return (state with { Overlay = help with { Choice = choice } }).Step();
            default:
                return OverlayKeys.Typed(help.Filter, stroke) is LineText filter
                    ? (state with { Overlay = new Overlay.Help(filter) }).Step()
                    : state.Step();
        }
    }
}
