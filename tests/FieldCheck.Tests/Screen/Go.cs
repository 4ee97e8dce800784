using FieldCheck.Screen;
using FieldCheck.Screen.FormGrid;
using FieldCheck.Screen.Keyboard;
using FieldCheck.Sheet.Editing;

namespace FieldCheck.Tests.Screen;

/// <summary>The keys from one cell to another.</summary>
internal static class Go
{
    internal static IEnumerable<KeyStroke> To(ScreenState state, FormPlace place)
    {
        ScreenView view = FormMoves.ViewOf(place.Block);
        FormPlace here = (state with { View = view }).Focus;
        here = here with { Column = FormMoves.ColumnsOf(state.Sheet, here)[0] };
        if (view != state.View)
        {
            yield return state.Table[ScreenViews.Of(view).Command].Keys[0];
        }

        yield return new KeyStroke.Named(KeyName.Home);
        while ((here.Block, here.Row).CompareTo((place.Block, place.Row)) > 0)
        {
            here = FormMoves.Vertical(state.Sheet, here, down: false);
            yield return new KeyStroke.Named(KeyName.Up);
        }

        while ((here.Block, here.Row) != (place.Block, place.Row))
        {
            FormPlace next = FormMoves.Vertical(state.Sheet, here, down: true);
            Assert.NotEqual(here, next);
            here = next;
            yield return new KeyStroke.Named(KeyName.Down);
        }

        int column = FormMoves.ColumnsOf(state.Sheet, place).IndexOf(place.Column);
        for (int index = 0; index < column; index++)
        {
            yield return new KeyStroke.Named(KeyName.Right);
        }
    }
}
