using System.Text;
using FieldCheck.Screen;
using FieldCheck.Screen.Details;
using FieldCheck.Screen.Files;
using FieldCheck.Screen.Overlays;
using FieldCheck.Sheet.Editing;

namespace FieldCheck.Plain;

/// <summary>What a line makes of a conversation. Pure: files, clock and terminal are the shell's.</summary>
internal static class PlainUpdate
{
    /// <summary>Applies one event.</summary>
    /// <param name="state">The conversation before.</param>
    /// <param name="happening">The event.</param>
    internal static PlainStep Apply(PlainState state, PlainEvent happening) => happening switch
    {
        PlainEvent.Line line => Settled(state, Read(state with { Form = Untold(state.Form) }, Clean(line.Text))),
        PlainEvent.InputEnded => Settled(state, PlainFiles.End(state)),
        PlainEvent.Happened what => Settled(state, Answered(state with { Form = Untold(state.Form) }, what.What)),
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private static ScreenState Untold(ScreenState form) => form with { Notice = null };

    // Half a surrogate pair could not be saved; going through runes makes it the sign for damage.
    private static string Clean(string text) => string.Concat(text.Replace('\t', ' ').EnumerateRunes()
        .Where(rune => !Rune.IsControl(rune))
        .Select(rune => rune.ToString())).Trim();

    private static PlainStep Read(PlainState state, string line)
    {
        if (state.Form.Overlay is Overlay overlay)
        {
            return PlainAnswers.Answer(state, overlay, line);
        }

        return state.Ask switch
        {
            null => line.Length == 0 ? state.Say() : PlainCommands.Run(state, line),
            PlainAsk.Cell cell => ForCell(state, cell, line),
            PlainAsk.Size when IsCommand(line) => PlainCommands.Run(state, line),
            PlainAsk.Size size => PlainCells.Answer(state, size, line),
            PlainAsk.Key key => line switch
            {
                "" => PlainCells.GoOn(state, key, said: null),
                "stop" => PlainBeam.Stop(state),
                "?" => state.Say(PlainWords.Sentence(DetailWords.Asked(
                    Sheet.Document.DocumentCells.Find(state.Form.Document, key.Path)?.Wanted))),
                _ => PlainCells.Answer(state, key, line),
            },
            _ => throw new System.Diagnostics.UnreachableException(),
        };
    }

    private static PlainStep ForCell(PlainState state, PlainAsk.Cell ask, string line)
    {
        // Where any text may stand, only "stop" is taken for a command.
        bool isText = ask.Place.Column
            is FormColumn.Section or FormColumn.Material or FormColumn.Label or FormColumn.Case or FormColumn.Note
                or FormColumn.Name;
        bool isPlace = ask.Place.Column is FormColumn.Place or FormColumn.From or FormColumn.To;
        string answer = isPlace && PlainTokens.After(line, "at") is { Length: > 0 } place ? place : line;
        if (answer == line && (isText ? line == "stop" : IsCommand(line)))
        {
            return PlainCommands.Run(state, line);
        }

        return answer switch
        {
            "" => PlainCells.GoOn(state, ask, said: null),
            "?" => state.Say(PlainWords.Sentence(PlainHints.Of(ask.Place))),
            _ => PlainCells.Answer(state, ask, answer),
        };
    }

    private static bool IsCommand(string line) => PlainCommands.Of(line) is not null;

    private static PlainStep Answered(PlainState state, ScreenEvent what)
    {
        PlainStep step = state.With(ScreenUpdate.Apply(state.Form, what));
        return (what, step.State.Form.Overlay) switch
        {
            (ScreenEvent.BeamsFound, Overlay.OpenList list) => PlainOpening.Found(step, list),
            (ScreenEvent.SetsFound, Overlay.SetList list) => PlainSets.Found(step, list),
            (ScreenEvent.CatalogueFound, Overlay.CatalogueList list) => PlainCatalogue.Found(step, list),
            (_, Overlay overlay) when state.Form.Overlay != overlay =>
                step.Then([.. PlainAnswers.Question(step.State, overlay)]),
            _ => step,
        };
    }

    // What was changed is kept for recovery before anything else is done; what the form tells is told.
    private static PlainStep Settled(PlainState before, PlainStep step)
    {
        ScreenState form = LiveResults.Follow(before.Form, step.State.Form);
        IEnumerable<Effect> asked = step.Effects.Where(effect => effect is not Effect.KeepSoon);
        PlainStep settled = new(
            step.State with { Form = form }, step.Says, [.. Kept(before.Form, form, step), .. asked]);
        if (PlainOpening.IsShownAnew(before.Form, form))
        {
            settled = PlainOpening.Shown(settled);
        }

        PlainStep told = form.Notice is Notice notice ? settled.Then(PlainWords.Sentence(notice.Text)) : settled;
        return told.State.Ask is PlainAsk ask && !IsThere(form, ask)
            ? told with { State = told.State with { Ask = null } }
            : told;
    }

    private static bool IsThere(ScreenState form, PlainAsk ask) => ask switch
    {
        PlainAsk.Cell cell => cell.Place.Row <= form.Sheet.RowsOf(cell.Place.Block),
        PlainAsk.Size size => FormCells.IsAsked(form.Document, size.Place.Row),
        _ => true,
    };

    // A line is whole when it comes: unlike half-typed cells it is kept at once.
    private static IEnumerable<Effect> Kept(ScreenState before, ScreenState after, PlainStep step)
    {
        bool isToldAlready = step.Effects.Any(effect => effect is Effect.KeepRecovery or Effect.DropRecovery);
        Effect? effect = isToldAlready ? null : UnsavedWork.After(before, after);
        return (effect is Effect.KeepSoon ? UnsavedWork.Keeping(after) : effect) is Effect kept ? [kept] : [];
    }
}
