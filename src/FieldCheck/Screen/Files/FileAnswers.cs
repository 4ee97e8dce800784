using FieldCheck.Screen.Overlays;
using FieldCheck.Screen.Painting;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Editing;
using FieldCheck.Sheet.Presets;

namespace FieldCheck.Screen.Files;

/// <summary>What the shell answers when it was asked about files.</summary>
internal static class FileAnswers
{
    internal static ScreenStep Saved(ScreenState state, ScreenEvent.Saved saved)
    {
        SaveRequest? request = state.Saving;
        ScreenState stored = state with
        {
            Origin = BeamOrigin.File(saved.Path, saved.Text),
            Stored = request?.Document ?? state.Document,
            Saving = null,
            SavedAt = saved.At,
            Notice = SavedNotice(saved, isNew: state.Origin.Text is null || state.Origin.Path != saved.Path),
        };
        ScreenStep after = FileSteps.After(stored, request?.Then ?? new AfterSave.Stay());
        Effect remember = new Effect.Remember(saved.Path, IsFile: true);
        return stored.IsUnsaved || after.Effects.OfType<Effect.Quit>().Any()
            ? after with { Effects = [remember, .. after.Effects] }
            : after with { Effects = [remember, new Effect.DropRecovery(), .. after.Effects] };
    }

    // Told once, when the name is chosen.
    private static Notice SavedNotice(ScreenEvent.Saved saved, bool isNew) =>
        isNew && WindowsFileName.ProblemOf(Path.GetFileName(saved.Path)) is string problem
            ? new Notice($"Saved {saved.Path} {saved.At}, but: {problem}", Role.Warn)
            : new Notice($"Saved {saved.Path} {saved.At}", Role.Good);

    internal static ScreenStep SaveRefused(ScreenState state, ScreenEvent.SaveRefused refused)
    {
        ScreenState told = state with { Saving = null };
        return state.Saving is SaveRequest request && refused.Obstacle != SaveObstacle.Refused
            ? (told with { Overlay = new Overlay.SaveQuestion(request, refused.Obstacle) }).Step()
            : (told with { Notice = new Notice($"Not saved: {refused.Path}: {refused.Text}", Role.Bad) }).Step();
    }

    internal static ScreenStep PaperSaved(ScreenState state, ScreenEvent.PaperSaved saved) =>
        (state with { Notice = new Notice($"Saved {saved.Path} {saved.At}", Role.Good) }).Step();

    internal static ScreenStep PaperRefused(ScreenState state, ScreenEvent.PaperRefused refused) =>
        (refused.Obstacle == SaveObstacle.Refused
            ? state with { Notice = new Notice($"Not saved: {refused.Request.Path}: {refused.Text}", Role.Bad) }
            : state with { Overlay = new Overlay.PaperQuestion(refused.Request) }).Step();

    internal static ScreenStep Opened(ScreenState state, ScreenEvent.Opened opened) =>
        FileSteps.Show(state, opened.Document, opened.Origin).Step(new Effect.Remember(opened.Path, IsFile: true));

    internal static ScreenStep FileMissing(ScreenState state, ScreenEvent.FileMissing missing) =>
        state.Overlay is Overlay.OpenList list
            ? (state with { Overlay = new Overlay.MissingFile(missing.Path, list) }).Step()
            : (state with { Notice = new Notice($"Not opened: there is no file {missing.Path}.", Role.Bad) }).Step();

    internal static ScreenStep OpenRefused(ScreenState state, ScreenEvent.OpenRefused refused)
    {
        string first = refused.Problems is [FileProblem problem, ..] ? problem.ToString() : refused.Path;
        string more = refused.Problems.Length > 1 ? $" (and {refused.Problems.Length - 1} more)" : "";
        return (state with { Notice = new Notice($"Not opened: {first}{more}", Role.Bad) }).Step();
    }

    internal static ScreenStep BeamsFound(ScreenState state, ScreenEvent.BeamsFound found) =>
        state.Overlay is Overlay.OpenList list
            ? (state with { Overlay = OpenListKeys.Shown(state, list with { Found = found.Beams }) }).Step()
            : state.Step();

    internal static ScreenStep RecoveryFound(ScreenState state, ScreenEvent.RecoveryFound found) =>
        state.Overlay is null
        ? (state with { Overlay = new Overlay.RecoveryOffer(found.Document, found.Origin, found.Words, found.HasMore) }).Step()
        : state.Step();

    /// <summary>Takes up work of an earlier session: unsaved, whatever its origin holds.</summary>
    internal static ScreenStep TakeUp(ScreenState state, Overlay.RecoveryOffer offer)
    {
        BeamDocument stored = offer.Origin.Text is BeamFileText text
            && BeamFileText.Read(text.Name, text.Text) is BeamFileReading.Opened opened
                ? opened.Document
                : FormSheet.Empty.Document;
        ScreenState shown = FileSteps.Show(state, offer.Document, offer.Origin) with
        {
            Stored = stored,
            Notice = new Notice("Here is the work that was not saved."),
        };
        return shown.Step(FileSteps.Recovery(shown, shown.Document), new Effect.TakeRecovery());
    }
}
