using System.Globalization;
using FieldCheck.Screen.FormGrid;
using FieldCheck.Screen.Overlays;
using FieldCheck.Screen.Painting;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Editing;
using FieldCheck.Sheet.Presets;

namespace FieldCheck.Screen.Files;

/// <summary>Saving, opening and leaving.</summary>
internal static class FileSteps
{
    private const string Extension = ".toml";

    /// <summary>Saves the beam where it came from; asks for a name where that cannot be written.</summary>
    /// <param name="state">The state.</param>
    /// <param name="then">What comes after it.</param>
    internal static ScreenStep Save(ScreenState state, AfterSave then)
    {
        if (state.Origin.Path is not string path)
        {
            return (state with { Overlay = new Overlay.NameLine(LineText.Empty, then) }).Step();
        }

        return state.IsUnsaved || state.Origin.Text is null
            ? Ask(state, path, state.Origin.Text, overwrite: false, then)
            : After(state with { Notice = new Notice("Nothing has changed since it was saved.") }, then);
    }

    /// <summary>Saves the beam under a name that was typed.</summary>
    /// <param name="state">The state.</param>
    /// <param name="name">The name; ".toml" is added where it is missing.</param>
    /// <param name="then">What comes after it.</param>
    internal static ScreenStep SaveAs(ScreenState state, string name, AfterSave then)
    {
        string path = WithExtension(name);
        return Ask(state, path, path == state.Origin.Path ? state.Origin.Text : null, overwrite: false, then);
    }

    /// <summary>The screen with an empty beam on it.</summary>
    /// <param name="state">The state.</param>
    /// <param name="origin">Where saving will put it.</param>
    internal static ScreenState Begin(ScreenState state, BeamOrigin origin) =>
        Show(state, FormSheet.Empty.Document with { Display = state.Document.Display }, origin);

    /// <summary>A name with ".toml" at its end.</summary>
    /// <param name="name">The name.</param>
    internal static string WithExtension(string name) =>
        name.EndsWith(Extension, StringComparison.OrdinalIgnoreCase) ? name : name + Extension;

    /// <summary>Saves once more what was refused, whatever stands there.</summary>
    /// <param name="state">The state.</param>
    /// <param name="request">The save that was refused.</param>
    internal static ScreenStep Overwrite(ScreenState state, SaveRequest request) =>
        Ask(state, request.Save.Path, request.Save.Known, overwrite: true, request.Then);

    /// <summary>Leaves the beam for something else; asks first where work would be lost.</summary>
    /// <param name="state">The state.</param>
    /// <param name="then">What comes after it.</param>
    internal static ScreenStep Leave(ScreenState state, AfterSave then) => state.IsUnsaved
        ? (state with { Overlay = new Overlay.UnsavedQuestion(then) }).Step()
        : After(state, then);

    /// <summary>Does what was wanted, saved or not.</summary>
    /// <param name="state">The state.</param>
    /// <param name="then">What was wanted.</param>
    internal static ScreenStep After(ScreenState state, AfterSave then) => then switch
    {
        AfterSave.Leave when state.IsUnsaved =>
            (state with { Overlay = null }).Step(Recovery(state, state.Document), new Effect.Quit()),
        AfterSave.Leave => (state with { Overlay = null }).Step(new Effect.DropRecovery(), new Effect.Quit()),
        AfterSave.Begin => Begin(state, BeamOrigin.NewBeam).Step(),
        AfterSave.Choose => (state with { Overlay = Overlay.OpenList.Empty })
            .Step(new Effect.FindBeams(state.Origin.Path)),
        _ => state.Step(),
    };

    /// <summary>The screen with another beam on it; the cursor stands on the first cell that it asks for.</summary>
    /// <param name="state">The state.</param>
    /// <param name="document">The beam.</param>
    /// <param name="origin">Where it came from.</param>
    internal static ScreenState Show(ScreenState state, BeamDocument document, BeamOrigin origin)
    {
        ScreenState shown = new()
        {
            Origin = origin,
            History = History.Start(new FormSheet(document)),
            Stored = document,
            Calculate = state.Calculate,
            Settled = state.Settled,
            Preferences = state.Preferences,
            Families = state.Families,
            IsAsciiOnly = state.IsAsciiOnly,
            Size = state.Size,
            Worked = state.Worked,
            Focus = FormMoves.First,
        };
        return Asked.Of(document) is [AskedCell first, ..] asked
            ? Asked.At(shown, first) with { IsAsking = true, Notice = NoticeOf(asked.Length) }
            : shown;
    }

    /// <summary>Work as it is to be kept for recovery.</summary>
    /// <param name="state">The state.</param>
    /// <param name="work">The beam to keep.</param>
    internal static Effect.KeepRecovery Recovery(ScreenState state, BeamDocument work) =>
        new(state.Origin, TextOf(state, work, state.Origin.Name).Text);

    private static Notice NoticeOf(int asked) => new(asked == 1
        ? "This beam asks for the cell here."
        : string.Create(CultureInfo.InvariantCulture, $"This beam asks for {asked} cells: Enter leads from one to the next."));

    private static ScreenStep Ask(ScreenState state, string path, BeamFileText? known, bool overwrite, AfterSave then)
    {
        Effect.Save save = new(path, TextOf(state, state.Document, path), known, overwrite);
        return (state with { Overlay = null, Saving = new SaveRequest(state.Document, save, then) }).Step(save);
    }

    /// <summary>The beam as a file would hold it; unchanged, the very text that it was read from.</summary>
    internal static BeamFileText TextOf(ScreenState state) => state is { IsUnsaved: false, Origin.Text: BeamFileText text }
        ? text
        : TextOf(state, state.Document, state.Origin.Name);

    private static BeamFileText TextOf(ScreenState state, BeamDocument document, string name) =>
        state.Origin.Text is BeamFileText text
            ? text.With(document) with { Name = name }
            : BeamFileText.New(name, document);
}
