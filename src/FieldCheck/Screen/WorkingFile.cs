using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Screen;

/// <summary>Puts the working into a text file.</summary>
internal static class WorkingFile
{
    private const string Extension = ".txt";
    private const int Width = 80;

    /// <summary>Asks for the file's name; one beside the beam is proposed.</summary>
    /// <param name="state">The state.</param>
    internal static ScreenState Ask(ScreenState state) => state.Shown.Outcome is not BeamOutcome.Stands
        ? state with { Notice = new Notice("There is nothing to work yet: see the results.", Role.Warn) }
        : state with { Overlay = new Overlay.WorkingName(LineText.Of(Proposed(state.Origin))) };

    /// <summary>Saves under a name, where no file of that name stands.</summary>
    /// <param name="state">The state.</param>
    /// <param name="name">The name; ".txt" is added where it is missing, so that no beam is ever written over.</param>
    internal static ScreenStep Save(ScreenState state, string name)
    {
        string path = name.EndsWith(Extension, StringComparison.OrdinalIgnoreCase) ? name : name + Extension;
        string text = state.Worked.Page(state.Origin.Path ?? "", Width);
        return (state with { Overlay = null }).Step(new Effect.SaveText(path, text, Overwrite: false));
    }

    private static string Proposed(BeamOrigin origin) => origin.Path is string path
        ? $"{(path.EndsWith(".toml", StringComparison.OrdinalIgnoreCase) ? path[..^5] : path)}-working{Extension}"
        : $"working{Extension}";
}
