using System.Collections.Immutable;
using FieldCheck.Screen.FormGrid;
using FieldCheck.Screen.Keyboard;
using FieldCheck.Screen.Overlays;
using FieldCheck.Screen.Painting;
using FieldCheck.Sheet.Editing;

namespace FieldCheck.Screen.Details;

/// <summary>
/// Keys pressed in a list of keys without a column: as in the form, typing replaces and Enter goes down.
/// </summary>
internal static class DetailKeys
{
    internal static ScreenStep Press(ScreenState state, Overlay.Details details, KeyStroke stroke)
    {
        ImmutableArray<DetailLine> lines = DetailLines.Of(state.Document, details.Page);
        int choice = Math.Min(details.Choice, lines.Length - 1);
        DetailLine line = lines[choice];
        return (stroke, details.Draft) switch
        {
            (_, null) when state.Table.Is(stroke, CommandName.EditCell) =>
                With(state, details with { Draft = LineText.Of(line.Text ?? "") }),
            (KeyStroke.Named { Key: KeyName.Backspace or KeyName.Delete }, null) =>
                Type(state, details, line, "").Step(),
            (KeyStroke.Control, null) when state.Table.Of(stroke, state.View) is
            { Name: CommandName.Undo or CommandName.Redo or CommandName.Save } command =>
                Commands.Run(state with { Overlay = null }, command.Name, stroke),
            (KeyStroke.Text or KeyStroke.Paste, _) =>
                With(state, details with { Draft = OverlayKeys.Typed(details.Draft ?? LineText.Empty, stroke) }),
            (KeyStroke.Named { Key: KeyName.Enter or KeyName.Tab } named, _) => Next(
                details.Draft is LineText draft ? Type(state, details, line, draft.Text) : state, details, choice, named.Key),
            (KeyStroke.Named { Key: KeyName.Up or KeyName.Down or KeyName.PageUp or KeyName.PageDown },
                LineText draft) =>
                Moved(Type(state, details, line, draft.Text), details, choice, stroke),
            (KeyStroke.Named named, LineText draft) when draft.After(named.Key) is LineText typed =>
                With(state, details with { Draft = typed }),
            (_, null) => Moved(state, details, choice, stroke),
            _ => state.Step(),
        };
    }

    /// <summary>The state with what is being typed in the list accepted; the same where nothing is.</summary>
    /// <param name="state">The state.</param>
    internal static ScreenState Accept(ScreenState state)
    {
        if (state.Overlay is not Overlay.Details { Draft: LineText draft } details)
        {
            return state;
        }

        ImmutableArray<DetailLine> lines = DetailLines.Of(state.Document, details.Page);
        return Type(state, details, lines[Math.Min(details.Choice, lines.Length - 1)], draft.Text);
    }

    private static ScreenStep With(ScreenState state, Overlay.Details details) =>
        (state with { Overlay = details }).Step();

    private static ScreenState Type(ScreenState state, Overlay.Details details, DetailLine line, string text) =>
        FormEdits.Make(state, new Edit.TypeKey(line.Key, text), state.Focus) with
        {
            Overlay = details with { Draft = null },
        };

    private static ScreenStep Next(ScreenState state, Overlay.Details details, int choice, KeyName key) =>
        key == KeyName.Enter && state.IsAsking && Asked.IsOnOne(state)
            ? Asked.Next(state) is AskedCell next
                ? Asked.At(state, next).Step()
                : (state with { Overlay = null, IsAsking = false }).Step()
            : Moved(state, details, choice, new KeyStroke.Named(KeyName.Down));

    private static ScreenStep Moved(ScreenState state, Overlay.Details details, int choice, KeyStroke stroke)
    {
        int count = DetailLines.Of(state.Document, details.Page).Length;
        return With(state, details with { Draft = null, Choice = OverlayKeys.Moved(choice, count, stroke) });
    }
}
