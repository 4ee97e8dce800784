using FieldCheck.Mechanics.Solving;
using FieldCheck.Reporting.Pages;
using FieldCheck.Screen.Overlays;
using FieldCheck.Screen.Painting;

namespace FieldCheck.Screen.Files;

/// <summary>Puts the working, or the record of the check, into a file to be printed.</summary>
internal static class PaperFile
{
    private const string OfBeam = ".toml";
    private const string OfWorking = ".txt";
    private const string OfRecord = ".pdf";
    private const int Width = 80;

    /// <summary>Asks for the file's name; one beside the beam is proposed.</summary>
    /// <param name="state">The state.</param>
    /// <param name="kind">What is to be saved.</param>
    internal static ScreenState Ask(ScreenState state, PaperKind kind) => kind switch
    {
        PaperKind.Record when state.Shown.Beam is null => Refused(state, "There is no beam to record yet: see the results."),
        PaperKind.Working when state.Shown.Outcome is not BeamOutcome.Stands =>
            Refused(state, "There is nothing to work yet: see the results."),
        _ => state with { Overlay = new Overlay.PaperName(kind, LineText.Of(Proposed(state.Origin, kind))) },
    };

    /// <summary>Saves under a name, where no file of that name stands.</summary>
    /// <param name="state">The state.</param>
    /// <param name="kind">What is to be saved.</param>
    /// <param name="name">
    /// The name; an ending is added where one is missing, so that no beam is ever written over.
    /// </param>
    internal static ScreenStep Save(ScreenState state, PaperKind kind, string name)
    {
        (string path, Paper paper) = kind == PaperKind.Working ? Working(state, name) : Record(state, name);
        return (state with { Overlay = null }).Step(new Effect.SavePaper(path, paper, Overwrite: false));
    }

    private static (string Path, Paper Paper) Working(ScreenState state, string name) => (
        name.EndsWith(OfWorking, StringComparison.OrdinalIgnoreCase) ? name : name + OfWorking,
        new Paper.Working(state.Worked.Page(state.Origin.Path ?? "", Width)));

    private static (string Path, Paper Paper) Record(ScreenState state, string name)
    {
        RecordFormat? asked = RecordFile.FormatOf(name);
        RecordRequest request = new(FileOf(state), FileSteps.TextOf(state).Digest(), Program.Version)
        {
            IsWorkingShort = state.Preferences.Working.IsShort,
        };
        return (
            asked is null ? name + OfRecord : name,
            new Paper.Record(state.Shown, request, asked ?? RecordFormat.Pdf));
    }

    // Of unsaved work the digest is that of the file which saving it would write.
    private static string FileOf(ScreenState state) => state.Origin.Path is not string path
        ? state.Origin.Text is null ? "" : $"none: {state.Origin.Name}{(state.IsUnsaved ? " with changes" : "")}, not saved"
        : state.IsUnsaved ? $"{Path.GetFileName(path)}, with changes that are not saved"
        : Path.GetFileName(path);

    private static ScreenState Refused(ScreenState state, string why) => state with { Notice = new Notice(why, Role.Warn) };

    private static string Proposed(BeamOrigin origin, PaperKind kind)
    {
        (string name, string ending) = kind == PaperKind.Working ? ("working", OfWorking) : ("record", OfRecord);
        return origin.Path is string path
            ? $"{(path.EndsWith(OfBeam, StringComparison.OrdinalIgnoreCase) ? path[..^OfBeam.Length] : path)}-{name}{ending}"
            : name + ending;
    }
}
