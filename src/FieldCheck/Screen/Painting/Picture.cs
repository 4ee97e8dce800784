using System.Collections.Immutable;

namespace FieldCheck.Screen.Painting;

/// <summary>All that is to be seen.</summary>
/// <param name="Lines">From the top; exactly as many as the picture is high.</param>
/// <param name="Cursor">Where the terminal's cursor stands, counted from 0; null: nowhere.</param>
internal sealed record Picture(ImmutableArray<PictureLine> Lines, (int X, int Y)? Cursor)
{
    /// <summary>What a click does.</summary>
    /// <param name="x">The column, counted from 0.</param>
    /// <param name="y">The line, counted from 0.</param>
    /// <returns>Null where it does nothing.</returns>
    internal LinkTarget? TargetAt(int x, int y)
    {
        if (y < 0 || y >= Lines.Length)
        {
            return null;
        }

        int end = 0;
        return Lines[y].Runs.FirstOrDefault(run => (end += TextColumns.Of(run.Text)) > x)?.Target;
    }

    /// <summary>The lines without their roles.</summary>
    public override string ToString() => string.Join('\n', Lines);
}
