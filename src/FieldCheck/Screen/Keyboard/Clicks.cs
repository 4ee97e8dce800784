using FieldCheck.Screen.FormGrid;
using FieldCheck.Screen.Overlays;
using FieldCheck.Sheet.Editing;

namespace FieldCheck.Screen.Keyboard;

/// <summary>What clicks do: never anything that no key does.</summary>
internal static class Clicks
{
    /// <summary>What a click does.</summary>
    /// <param name="state">The state.</param>
    /// <param name="target">What was clicked.</param>
    internal static ScreenStep Apply(ScreenState state, LinkTarget target) => target switch
    {
        LinkTarget.Key key => ScreenUpdate.Press(state, key.Stroke),
        LinkTarget.Line line => ToLine(state, line.Away),
        _ when IsAsked(state) => state.Step(),
        LinkTarget.Command command => Commands.Run(Closed(state), command.Name),
        LinkTarget.Cell cell => ToCell(Closed(state), cell.Place).Step(),
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    // A question is answered before anything else; the offer of kept work is none, for anything else declines it.
    private static bool IsAsked(ScreenState state) => state.Overlay is not (null or Overlay.Menu or Overlay.RecoveryOffer);

    private static ScreenState Closed(ScreenState state) =>
        FormEdits.Accept(state) with { Overlay = null, Notice = null };

    private static ScreenState ToCell(ScreenState state, FormPlace place) =>
        Commands.To(state, FormMoves.Within(state.Sheet, place));

    // An entry of the menu is taken at once, the line of a list when it is clicked once more.
    private static ScreenStep ToLine(ScreenState state, int away)
    {
        KeyStroke move = new KeyStroke.Named(away < 0 ? KeyName.Up : KeyName.Down);
        ScreenState moved = state;
        for (int step = 0; step < Math.Abs(away); step++)
        {
            moved = ScreenUpdate.Press(moved, move).State;
        }

        return away == 0 || state.Overlay is Overlay.Menu
            ? ScreenUpdate.Press(moved, new KeyStroke.Named(KeyName.Enter))
            : moved.Step();
    }
}
