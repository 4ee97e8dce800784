using System.Collections.Immutable;

namespace FieldCheck.Screen;

/// <summary>All that is to be seen.</summary>
/// <param name="Lines">From the top; exactly as many as the picture is high.</param>
/// <param name="Cursor">Where the terminal's cursor stands, counted from 0; null: nowhere.</param>
internal sealed record Picture(ImmutableArray<PictureLine> Lines, (int X, int Y)? Cursor)
{
    /// <summary>The lines without their roles.</summary>
    public override string ToString() => string.Join('\n', Lines);
}
