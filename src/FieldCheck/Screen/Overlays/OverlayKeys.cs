using System.Diagnostics;
using FieldCheck.Screen.Combining;
using FieldCheck.Screen.Details;
using FieldCheck.Screen.Files;
using FieldCheck.Screen.FormGrid;
using FieldCheck.Screen.Keyboard;
using FieldCheck.Screen.Painting;
using FieldCheck.Screen.Plotting;
using FieldCheck.Screen.Sections;

namespace FieldCheck.Screen.Overlays;

/// <summary>Keys pressed while something lies over the view.</summary>
internal static class OverlayKeys
{
    /// <summary>What a key does.</summary>
    /// <param name="state">The state.</param>
    /// <param name="overlay">What lies over the view.</param>
    /// <param name="stroke">The key.</param>
    internal static ScreenStep Press(ScreenState state, Overlay overlay, KeyStroke stroke)
    {
        if (overlay is Overlay.RecoveryOffer offer)
        {
            return QuestionKeys.Press(state, offer, stroke);
        }

        return stroke switch
        {
            KeyStroke.Named { Key: KeyName.Escape } => Back(state, overlay),
            KeyStroke.Control when state.Table.Is(stroke, CommandName.Redraw) => state.Step(new Effect.Redraw()),
            KeyStroke.Control when state.Table.Is(stroke, CommandName.Quit) => Leave(state, overlay),
            _ => overlay switch
            {
                Overlay.Menu menu => MenuKeys.Press(state, menu, stroke),
                Overlay.Help help => HelpKeys.Press(state, help, stroke),
                Overlay.OpenList list => OpenListKeys.Press(state, list, stroke),
                Overlay.SetList list => SetListKeys.Press(state, list, stroke),
                Overlay.Answers answers => WhatIfPage.Press(state, answers, stroke),
                Overlay.CatalogueList list => CatalogueKeys.Press(state, list, stroke),
                Overlay.Families page => FamilyList.Press(state, page, stroke),
                Overlay.NameLine line => Named(
                    state,
                    line.Name,
                    stroke,
                    name => FileSteps.SaveAs(state, name, line.Then),
                    name => line with { Name = name }),
                Overlay.PaperName line => Named(
                    state, line.Name, stroke, name => PaperFile.Save(state, line.Kind, name), name => line with { Name = name }),
                Overlay.PlaceLine line => PlaceKeys.Press(state, line, stroke),
                Overlay.Results results => AllResults.Press(state, results, stroke),
                Overlay.Settings settings => SettingsKeys.Press(state, settings, stroke),
                Overlay.UnsavedQuestion question => QuestionKeys.Press(state, question, stroke),
                Overlay.SaveQuestion question => QuestionKeys.Press(state, question, stroke),
                Overlay.PaperQuestion question => QuestionKeys.Press(state, question, stroke),
                Overlay.MissingFile question => QuestionKeys.Press(state, question, stroke),
                Overlay.Details details => DetailKeys.Press(state, details, stroke),
                _ => throw new UnreachableException(),
            },
        };
    }

    /// <summary>A choice moved by a key through a list; the same for a key that does not move.</summary>
    /// <param name="choice">The choice, counted from 0.</param>
    /// <param name="count">How many there are.</param>
    /// <param name="stroke">The key.</param>
    internal static int Moved(int choice, int count, KeyStroke stroke)
    {
        const int page = 10;
        int moved = (stroke as KeyStroke.Named)?.Key switch
        {
            KeyName.Up => choice - 1,
            KeyName.Down => choice + 1,
            KeyName.PageUp => choice - page,
            KeyName.PageDown => choice + page,
            KeyName.Home => 0,
            KeyName.End => count - 1,
            _ => choice,
        };
        return Math.Clamp(moved, 0, Math.Max(count - 1, 0));
    }

    /// <summary>A line after a key that types in it; null for a key that does not.</summary>
    /// <param name="line">The line.</param>
    /// <param name="stroke">The key.</param>
    internal static LineText? Typed(LineText line, KeyStroke stroke) => stroke switch
    {
        KeyStroke.Text text => line.Insert(text.Grapheme),
        KeyStroke.Paste paste => line.Insert(string.Concat(paste.Content.Where(letter => !char.IsControl(letter)))),
        KeyStroke.Named named => line.After(named.Key),
        _ => null,
    };

    private static ScreenStep Back(ScreenState state, Overlay overlay) => (overlay is Overlay.Families page ? FamilyList.Back(state, page.List) : state with
    {
        Overlay = overlay switch
        {
            Overlay.Details { Draft: not null } details => details with { Draft = null },
            Overlay.Answers { Draft: not null } answers => answers with { Draft = null },
            Overlay.MissingFile question => question.List,
            _ => null,
        },
    }).Step();

    // Asked a second time the person means it: what is unsaved is kept for recovery.
    private static ScreenStep Leave(ScreenState state, Overlay overlay) =>
        overlay is Overlay.UnsavedQuestion { Then: AfterSave.Leave leave }
            ? FileSteps.After(state, leave)
            : FileSteps.Leave(state with { Overlay = null }, new AfterSave.Leave());

    private static ScreenStep Named(
        ScreenState state, LineText line, KeyStroke stroke, Func<string, ScreenStep> save, Func<LineText, Overlay> typed)
    {
        if (stroke is KeyStroke.Named { Key: KeyName.Enter })
        {
            string name = line.Text.Trim();
            return name.Length == 0
                ? (state with { Notice = new Notice("A name is needed to save under.", Role.Warn) }).Step()
                : save(name);
        }

        return Typed(line, stroke) is LineText next
            ? (state with { Overlay = typed(next) }).Step()
            : state.Step();
    }
}
