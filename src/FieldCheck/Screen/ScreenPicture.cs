namespace FieldCheck.Screen;

/// <summary>Draws the screen as text of a given size.</summary>
internal static class ScreenPicture
{
    /// <summary>Draws a state of the screen.</summary>
    /// <param name="state">The screen.</param>
    /// <param name="width">Columns; 1 or more.</param>
    /// <param name="height">Lines; 1 or more.</param>
    internal static Picture Of(ScreenState state, int width, int height) => new([.. Enumerable.Range(0, height)
        .Select(_ => new PictureLine([new PictureRun(new string(' ', width), Role.Text)]))], null);
}
