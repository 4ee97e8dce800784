using System.Collections.Immutable;
using FieldCheck.Screen.Files;
using FieldCheck.Screen.Keyboard;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.CombinationSets;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Presets;

namespace FieldCheck.Screen;

/// <summary>What happens to the screen: a key, or the answer to an effect. Closed set: the nested records.</summary>
internal abstract record ScreenEvent
{
    private ScreenEvent()
    {
    }

    /// <summary>A key was pressed.</summary>
    /// <param name="Stroke">Which.</param>
    internal sealed record Key(KeyStroke Stroke) : ScreenEvent;

    /// <summary>Something was clicked.</summary>
    /// <param name="Target">What.</param>
    internal sealed record Click(LinkTarget Target) : ScreenEvent;

    /// <summary>The window has another size.</summary>
    /// <param name="Width">Columns.</param>
    /// <param name="Height">Lines.</param>
    internal sealed record Resized(int Width, int Height) : ScreenEvent;

    /// <summary>A file was written as asked.</summary>
    /// <param name="Path">Where.</param>
    /// <param name="Text">What stands there now.</param>
    /// <param name="At">The time of day, as "09:41".</param>
    internal sealed record Saved(string Path, BeamFileText Text, string At) : ScreenEvent;

    /// <summary>A file was not written.</summary>
    /// <param name="Path">Where it was to go.</param>
    /// <param name="Obstacle">Why not.</param>
    /// <param name="Text">What the system said; may be empty.</param>
    internal sealed record SaveRefused(string Path, SaveObstacle Obstacle, string Text) : ScreenEvent;

    /// <summary>A text was written as asked.</summary>
    /// <param name="Path">Where.</param>
    /// <param name="At">The time of day, as "09:41".</param>
    internal sealed record PaperSaved(string Path, string At) : ScreenEvent;

    /// <summary>A text was not written.</summary>
    /// <param name="Request">What was asked.</param>
    /// <param name="Obstacle">Why not.</param>
    /// <param name="Text">What the system said; may be empty.</param>
    internal sealed record PaperRefused(Effect.SavePaper Request, SaveObstacle Obstacle, string Text) : ScreenEvent;

    /// <summary>A file was opened.</summary>
    /// <param name="Path">Which.</param>
    /// <param name="Document">The beam as typed.</param>
    /// <param name="Origin">Where it came from.</param>
    internal sealed record Opened(string Path, BeamDocument Document, BeamOrigin Origin) : ScreenEvent;

    /// <summary>A file that was to be opened does not exist.</summary>
    /// <param name="Path">Which.</param>
    internal sealed record FileMissing(string Path) : ScreenEvent;

    /// <summary>A file could not be opened.</summary>
    /// <param name="Path">Which.</param>
    /// <param name="Problems">What is wrong with it; at least one.</param>
    internal sealed record OpenRefused(string Path, ImmutableArray<FileProblem> Problems) : ScreenEvent;

    /// <summary>The beams that there are to open.</summary>
    /// <param name="Beams">Them.</param>
    internal sealed record BeamsFound(FoundBeams Beams) : ScreenEvent;

    /// <summary>Sets of combinations were looked for.</summary>
    /// <param name="Found">All of them.</param>
    internal sealed record SetsFound(CombinationSearch Found) : ScreenEvent;

    /// <summary>The catalogue is there.</summary>
    /// <param name="Catalogue">Shapes and grades, the person's own among them.</param>
    internal sealed record CatalogueFound(SectionCatalogue Catalogue) : ScreenEvent;

    /// <summary>Unsaved work of an earlier session was found; it is offered in one line.</summary>
    /// <param name="Document">The beam as it was left.</param>
    /// <param name="Origin">Where that beam had come from.</param>
    /// <param name="Words">What it is, as "Unsaved work from 09:37: trench-bearer (4 loads)".</param>
    /// <param name="HasMore">True: there is other such work too.</param>
    internal sealed record RecoveryFound(
        BeamDocument Document, BeamOrigin Origin, string Words, bool HasMore = false) : ScreenEvent;

    /// <summary>What was asked to be kept soon is due.</summary>
    internal sealed record KeepDue : ScreenEvent;

    /// <summary>The work could not be kept for recovery; told once.</summary>
    /// <param name="Text">What the system said.</param>
    internal sealed record RecoveryRefused(string Text) : ScreenEvent;

    /// <summary>What the person wants could not be kept for the next start.</summary>
    /// <param name="Text">Why not.</param>
    internal sealed record PreferencesRefused(string Text) : ScreenEvent;

    /// <summary>Something is to be told at the start.</summary>
    /// <param name="Text">One sentence.</param>
    internal sealed record Told(string Text) : ScreenEvent;

    /// <summary>The program is being ended from outside: work is kept and the screen left.</summary>
    internal sealed record Stopped : ScreenEvent;
}
