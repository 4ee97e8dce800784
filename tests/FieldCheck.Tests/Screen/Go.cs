using FieldCheck.Screen;
using FieldCheck.Sheet.Editing;

namespace FieldCheck.Tests.Screen;

/// <summary>The keys from one cell to another.</summary>
internal static class Go
{
    internal static IEnumerable<KeyStroke> To(ScreenState state, FormPlace place)
    {
        FormPlace here = state.Focus with { Column = FormMoves.ColumnsOf(state.Focus)[0] };
        yield return new KeyStroke.Named(KeyName.Home);
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
