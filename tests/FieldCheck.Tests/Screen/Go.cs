using FieldCheck.Screen;
using FieldCheck.Sheet.Editing;

namespace FieldCheck.Tests.Screen;

/// <summary>The keys from one cell to another.</summary>
internal static class Go
{
    internal static IEnumerable<KeyStroke> To(ScreenState state, FormPlace place)
    {
        ScreenView view = FormMoves.ViewOf(place.Block);
        FormPlace here = (state with { View = view }).Focus;
        here = here with { Column = FormMoves.ColumnsOf(here)[0] };
        if (view != state.View)
        {
            yield return new KeyStroke.Named(view == ScreenView.Stated ? KeyName.F6 : KeyName.F3);
        }

        yield return new KeyStroke.Named(KeyName.Home);
        while (here.Block == FormBlock.Stated && here.Row > place.Row)
        {
            here = here with { Row = here.Row - 1 };
            yield return new KeyStroke.Named(KeyName.Up);
        }

        while ((here.Block, here.Row) != (place.Block, place.Row))
        {
            FormPlace next = FormMoves.Vertical(state.Sheet, here, down: true);
            Assert.NotEqual(here, next);
            here = next;
            yield return new KeyStroke.Named(KeyName.Down);
        }

        int column = FormMoves.ColumnsOf(place).IndexOf(place.Column);
        for (int index = 0; index < column; index++)
        {
            yield return new KeyStroke.Named(KeyName.Right);
        }
    }
}
