using System.Collections.Immutable;

namespace FieldCheck.Screen.Painting;

/// <summary>One line of the screen.</summary>
/// <param name="Runs">Left to right; together exactly as wide as the picture.</param>
internal sealed record PictureLine(ImmutableArray<PictureRun> Runs)
{
    /// <summary>The line without its roles.</summary>
    public override string ToString() => string.Concat(Runs.Select(run => run.Text));
}
