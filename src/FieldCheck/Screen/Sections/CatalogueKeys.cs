using System.Collections.Immutable;
using FieldCheck.Screen.FormGrid;
using FieldCheck.Screen.Keyboard;
using FieldCheck.Screen.Overlays;
using FieldCheck.Screen.Painting;
using FieldCheck.Sheet.Editing;

namespace FieldCheck.Screen.Sections;

/// <summary>Keys pressed in the list that a cell of the Section view is chosen from.</summary>
internal static class CatalogueKeys
{
    /// <summary>True: the cell can be chosen from a list.</summary>
    /// <param name="place">The cell.</param>
    internal static bool IsFor(FormPlace place) =>
        place.Column is FormColumn.Shape or FormColumn.Grade or FormColumn.Factors or FormColumn.Rules;

    internal static ScreenStep Open(ScreenState state) => IsFor(state.Focus)
        ? (state with { Overlay = new Overlay.CatalogueList(state.Focus, null, LineText.Empty) }).Step(new Effect.FindCatalogue())
        : (state with { Notice = new Notice("Shape, grade, factors and rules are chosen from lists; this cell is typed.") }).Step();

    internal static ScreenStep Found(ScreenState state, ScreenEvent.CatalogueFound found) => (state with
    {
        Overlay = state.Overlay is Overlay.CatalogueList list ? list with { Catalogue = found.Catalogue } : state.Overlay,
    }).Step();

    internal static ScreenStep Press(ScreenState state, Overlay.CatalogueList list, KeyStroke stroke) => (stroke switch
    {
        KeyStroke.Named { Key: KeyName.Enter } => Put(state, list),
        KeyStroke.Named { Key: KeyName.Tab } when list.Passing is not null => state with { Overlay = new Overlay.Families(list) },
        KeyStroke.Named { Key: KeyName.Up or KeyName.Down or KeyName.PageUp or KeyName.PageDown } => state with
        {
            Overlay = list with { Choice = OverlayKeys.Moved(list.Choice, CatalogueChoices.CountOf(state, list), stroke) },
        },
        _ => OverlayKeys.Typed(list.Filter, stroke) is LineText filter
            ? state with { Overlay = list with { Filter = filter, Choice = 0 } }
            : state,
    }).Step();

    private static ScreenState Put(ScreenState state, Overlay.CatalogueList list)
    {
        ImmutableArray<CatalogueChoice> shown = CatalogueChoices.Of(state, list);
        if (shown.ElementAtOrDefault(list.Choice) is not CatalogueChoice chosen)
        {
            return state;
        }

        ScreenState put = FormEdits.Make(state with { Overlay = null }, chosen.Put, list.Place, merges: false);
        return put with
        {
            Focus = list.Place,
            TabStart = null,
            SectionTop = 0,
            Notice = new Notice($"{chosen.Name} is taken; {state.Table.KeyOf(CommandName.Undo)} takes it back."),
        };
    }
}
