using FieldCheck.Mechanics.Solving;
using FieldCheck.Screen.Details;
using FieldCheck.Screen.Files;
using FieldCheck.Screen.FormGrid;
using FieldCheck.Screen.Overlays;
using FieldCheck.Screen.Painting;
using FieldCheck.Screen.Plotting;
using FieldCheck.Screen.Sections;
using FieldCheck.Sheet.Editing;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Screen.Keyboard;

/// <summary>Does what commands say, however they were reached.</summary>
internal static class Commands
{
    /// <summary>Runs a command.</summary>
    /// <param name="state">The state, with nothing being typed and nothing over the view.</param>
    /// <param name="name">The command.</param>
    /// <param name="stroke">The key it was reached by; null: by the menu.</param>
    internal static ScreenStep Run(ScreenState state, CommandName name, KeyStroke? stroke = null) => name switch
    {
        CommandName.Save => FileSteps.Save(state, new AfterSave.Stay()),
        CommandName.SaveAs =>
            (state with { Overlay = new Overlay.NameLine(LineText.Empty, new AfterSave.Stay()) }).Step(),
        CommandName.Open => FileSteps.Leave(state, new AfterSave.Choose()),
        CommandName.NewBeam => FileSteps.Leave(state, new AfterSave.Begin()),
        CommandName.Quit => FileSteps.Leave(state, new AfterSave.Leave()),
        CommandName.StandardCombinations =>
            (state with { Overlay = new Overlay.SetList(null, LineText.Empty) }).Step(new Effect.FindSets()),
        CommandName.WhatIf => WhatIfPage.Ask(state).Step(),
        CommandName.SectionsThatDo => WhatIfPage.Sections(state),
        CommandName.HeaviestHere => WhatIfPage.AtReadingLine(state).Step(),
        CommandName.ChooseFromCatalogue => CatalogueKeys.Open(state),
        CommandName.NextChoice when CatalogueKeys.IsFor(state.Focus) && FormCells.ChoicesOf(state.Focus).IsEmpty =>
            CatalogueKeys.Open(state),
        CommandName.Redraw => state.Step(new Effect.Redraw()),
        CommandName.SaveWorking => PaperFile.Ask(state, PaperKind.Working).Step(),
        CommandName.SaveRecord => PaperFile.Ask(state, PaperKind.Record).Step(),
        CommandName.InfluenceLine => PlaceKeys.Ask(state, LineText.Empty, PlaceUse.Influence).Step(),
        CommandName.ReadAt => PlaceKeys.Ask(state, LineText.Empty, PlaceUse.ReadOff).Step(),
        _ => Change(state, name, (stroke as KeyStroke.Named)?.Key).Step(),
    };

    /// <summary>Down by Enter: to the next cell that the preset asks for, while there is one.</summary>
    /// <param name="state">The state.</param>
    internal static ScreenState Enter(ScreenState state)
    {
        if (state.IsAsking)
        {
            return Asked.Next(state) is AskedCell next
                ? Asked.At(state, next)
                : Enter(state with { IsAsking = false });
        }

        FormColumn back = state.TabStart ?? state.Focus.Column;
        return state with { Focus = FormMoves.Enter(state.Sheet, state.Focus, back), TabStart = null };
    }

    private static ScreenState Change(ScreenState state, CommandName name, KeyName? key) => name switch
    {
        CommandName.Undo => Undo(state),
        CommandName.Redo => Redo(state),
        CommandName.OtherUnits => OtherUnits(state),
        CommandName.NextCombination => NextCombination(state),
        CommandName.Menu => state with { Overlay = new Overlay.Menu(MenuPage.Actions) },
        CommandName.Views => state with { Overlay = new Overlay.Menu(MenuPage.Views) },
        CommandName.Help => state with { Overlay = new Overlay.Help(LineText.Empty) },
        CommandName.Drop when state is { View: ScreenView.Plots, Influence: not null } => state with { Influence = null },
        CommandName.Drop => state with { View = ScreenView.Beam },
        CommandName.PreviousView => state with { View = ScreenViews.Next(state.View, -1) },
        CommandName.NextView => state with { View = ScreenViews.Next(state.View, 1) },
        CommandName.AllResults => state with { Overlay = new Overlay.Results() },
        CommandName.Settings => state with { Overlay = new Overlay.Settings() },
        CommandName.MoreOfBeam => state with { Overlay = new Overlay.Details(new DetailPage(null)) },
        _ when ScreenViews.ShownBy(name) is ViewTraits shown => state with { View = shown.View },
        _ => ScreenViews.Of(state.View).Change(state, name, key),
    };

    /// <summary>Does what a command of the form says.</summary>
    /// <param name="state">The state.</param>
    /// <param name="name">The command.</param>
    /// <param name="key">The key it was reached by; null: another, or the menu.</param>
    internal static ScreenState InForm(ScreenState state, CommandName name, KeyName? key) => name switch
    {
        CommandName.EditCell => FormKeys.Edit(state),
        CommandName.Enter => Enter(state),
        CommandName.Right => To(state, FormMoves.Horizontal(state.Sheet, state.Focus, right: true)) with
        {
            TabStart = state.TabStart ?? state.Focus.Column,
        },
        CommandName.Left => To(state, FormMoves.Horizontal(state.Sheet, state.Focus, right: false)) with
        {
            TabStart = state.TabStart,
        },
        CommandName.Move or CommandName.RowEnds or CommandName.Blocks => To(state, Moved(state, key)),
        CommandName.Clear => FormEdits.Type(state, ""),
        CommandName.NextChoice => FormKeys.NextChoice(state),
        _ => RowCommands.Run(state, name),
    };

    /// <summary>To a cell, outside any run of Tabs or of cells asked for.</summary>
    /// <param name="state">The state.</param>
    /// <param name="place">The cell.</param>
    internal static ScreenState To(ScreenState state, FormPlace place) =>
        state with { Focus = place, TabStart = null, IsAsking = false };

    private static FormPlace Moved(ScreenState state, KeyName? key) => key switch
    {
        KeyName.Up => FormMoves.Vertical(state.Sheet, state.Focus, down: false),
        KeyName.Down => FormMoves.Vertical(state.Sheet, state.Focus, down: true),
        KeyName.Left => FormMoves.Horizontal(state.Sheet, state.Focus, right: false),
        KeyName.Right => FormMoves.Horizontal(state.Sheet, state.Focus, right: true),
        KeyName.Home => FormMoves.RowEnd(state.Sheet, state.Focus, last: false),
        KeyName.End => FormMoves.RowEnd(state.Sheet, state.Focus, last: true),
        KeyName.PageUp => FormMoves.Block(state.Sheet, state.Focus, down: false),
        KeyName.PageDown => FormMoves.Block(state.Sheet, state.Focus, down: true),
        _ => state.Focus,
    };

    private static ScreenState Undo(ScreenState state)
    {
        if (state.Dropped is CellDraft dropped)
        {
            return state with
            {
                Draft = dropped with { WasOffered = true },
                Focus = dropped.Place,
                View = FormMoves.ViewOf(dropped.Place.Block),
            };
        }

        return state.History.ToUndo is HistoryStep step
            ? Shown(state with { History = state.History.Undo() }, step, "Undone")
            : state with { Notice = new Notice("Nothing to undo.") };
    }

    private static ScreenState Redo(ScreenState state) => state.History.ToRedo is HistoryStep step
        ? Shown(state with { History = state.History.Redo() }, step, "Done again")
        : state with { Notice = new Notice("Nothing to do again.") };

    // A view with cells gives way to the one with the cell that changed.
    private static ScreenState Shown(ScreenState state, HistoryStep step, string what) => state with
    {
        Focus = FormMoves.Within(state.Sheet, step.Place ?? state.Focus),
        View = step.Place is FormPlace place && state.View == FormMoves.ViewOf(state.Focus.Block)
            ? FormMoves.ViewOf(place.Block)
            : state.View,
        TabStart = null,
        Notice = new Notice($"{what}: {step.Name}."),
    };

    private static ScreenState NextCombination(ScreenState state)
    {
        if (state.CombinationCount < 2)
        {
            return state with { Notice = new Notice("There are no other combinations.") };
        }

        int next = (state.CombinationShown + 1) % state.CombinationCount;
        return state with
        {
            Combination = next,
            Notice = new Notice($"Combination {next + 1} of {state.CombinationCount}: {NameOf(state, next)}."),
        };
    }

    private static string NameOf(ScreenState state, int combination) =>
        state.Shown.Outcome is BeamOutcome.Stands stands ? stands.Combinations[combination].Combination.Name : "";

    private static ScreenState OtherUnits(ScreenState state)
    {
        string other = state.Document.Units == UnitSystem.Us ? "si" : "us";
        return FormEdits.Make(state, new Edit.ShowUnits(other), state.Focus) with
        {
            Notice = new Notice(other == "us"
                ? "Results in US units; a number without unit is now in feet and pounds. What was typed stays."
                : "Results in SI units; a number without unit is now in metres and kilonewtons. What was typed stays."),
        };
    }
}
