using System.Globalization;
using System.Text;
using FieldCheck.CommandLine;
using FieldCheck.Recovery;
using FieldCheck.Screen;
using FieldCheck.Screen.Files;
using FieldCheck.Screen.FormGrid;
using FieldCheck.Settings;
using FieldCheck.Sheet.Presets;
using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Settings;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Views;

/// <summary>Performs what the screen asks of the disk, and answers in the screen's own terms.</summary>
/// <param name="start">Where presets and unsaved work lie, and the clock.</param>
internal sealed class ScreenEffects(StartRequest start)
{
    private readonly RecoveryFolder _recovery = new(Path.Combine(start.Folders.State, "recover"), start.Clock);
    private readonly BeamSearch _beams = new(start);
    private KeptWork? _leftBehind;
    private int _offered;
    private bool _refusalIsTold;

    /// <summary>Performs one effect.</summary>
    /// <returns>Its answer, for those that have one.</returns>
    internal ScreenEvent? Perform(Effect effect)
    {
        switch (effect)
        {
            case Effect.Save save:
                return Save(save);
            case Effect.SavePaper save:
                return SavePaper(save);
            case Effect.Open open:
                return Open(open);
            case Effect.FindBeams find:
                return new ScreenEvent.BeamsFound(_beams.Find(find.OpenFile is string path ? Full(path) : null));
            case Effect.FindSets:
                return new ScreenEvent.SetsFound(start.Folders.Combinations.Search());
            case Effect.FindCatalogue:
                return new ScreenEvent.CatalogueFound(start.Catalogue);
            case Effect.Remember remember:
                _beams.Remember(remember.IsFile ? Full(remember.Name) : remember.Name, remember.IsFile);
                return null;
            case Effect.KeepRecovery keep:
                return Keep(keep);
            case Effect.TakeRecovery:
                Forget(ref _leftBehind);
                return null;
            case Effect.KeepPreferences keep:
                return new SettingsFile(start.Folders.Settings).Change(
                    settings => PreferencesText.Write(settings, keep.Preferences)) is string refusal
                        ? new ScreenEvent.PreferencesRefused(refusal)
                        : null;
            case Effect.DropRecovery:
                _recovery.Drop();
                return null;
            case Effect.SetRecoveryAside:
                _recovery.SetAside();
                return null;
            case Effect.OfferNextRecovery:
                _offered++;
                return FindLeftBehind();
            default:
                throw new System.Diagnostics.UnreachableException();
        }
    }

    /// <summary>Remembers the file that the program was started with, if there is one.</summary>
    internal void RememberStart()
    {
        if (start is { Path: string path, Origin: not null })
        {
            _beams.Remember(Full(path), isFile: true);
        }
    }

    /// <summary>Unsaved work of an earlier session, to be offered; null when there is none that can be opened.</summary>
    internal ScreenEvent? FindLeftBehind()
    {
        (KeptWork Work, BeamFileReading.Opened Opened)[] all =
        [
            .. _recovery.FindLeftBehind()
                .Select(work => (work, BeamFileText.Read(work.Path ?? work.Name, work.Text) as BeamFileReading.Opened))
                .Where(pair => pair.Item2 is not null)
                .Select(pair => (pair.work, pair.Item2!)),
        ];
        if (all.Length == 0)
        {
            return null;
        }

        (KeptWork work, BeamFileReading.Opened opened) = all[_offered % all.Length];
        _leftBehind = work;
        string which = all.Length == 1 ? "" : $" {_offered % all.Length + 1} of {all.Length}";
        string at = work.KeptAt.ToLocalTime().ToString("d MMM HH:mm", CultureInfo.InvariantCulture);
        return new ScreenEvent.RecoveryFound(
            opened.Document,
            new BeamOrigin(work.Name, work.Path, OnDisk(work.Path)),
            $"Unsaved work{which} from {at}: {work.Name} ({FormWords.Count(opened.Document.Loads.Count, "load")}).",
            HasMore: all.Length > 1);
    }

    /// <summary>Keeps what is unsaved, the typing included, whatever else fails; may be called from any thread.</summary>
    /// <param name="state">The screen as it was last whole.</param>
    internal void KeepAtOnce(ScreenState state)
    {
        try
        {
            if (UnsavedWork.Keeping(state) is Effect.KeepRecovery keep)
            {
                _recovery.Keep(keep.Origin, keep.Text);
            }
        }
        catch (Exception)
        {
            // The program is ending over another fault, which is the one to be told; what was kept before stays.
        }
    }

    /// <summary>Says where unsaved work of this session is kept, if any is.</summary>
    internal void SayWhereWorkIs()
    {
        if (_recovery.OwnFile is string file)
        {
            Console.Error.WriteLine(TextSafety.ForTerminal($"Unsaved work is kept in {file}; the next start offers it."));
        }
    }

    private ScreenEvent Open(Effect.Open open)
    {
        string path = Path.Exists(Full(open.Path)) ? open.Path : FileSteps.WithExtension(open.Path);
        return !Path.Exists(Full(path)) ? new ScreenEvent.FileMissing(path) : BeamFileOnDisk.OpenFound(path, Full(path)) switch
        {
            BeamFileReading.Opened opened =>
                new ScreenEvent.Opened(path, opened.Document, BeamOrigin.File(path, opened.Origin).As(open.As)),
            BeamFileReading.Refused refused => new ScreenEvent.OpenRefused(path, refused.Problems),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
    }

    // What no file can be called is left as it is: what is done with it is refused by name.
    private string Full(string path) => path.Contains('\0', StringComparison.Ordinal) ? path : Path.GetFullPath(
        path.StartsWith("~/", StringComparison.Ordinal) ? Path.Combine(start.HomeFolder, path[2..]) : path,
        start.CurrentFolder);

    private BeamFileText? OnDisk(string? path) =>
        path is not null && BeamFileOnDisk.FoundBytes(Full(path)) is Reading<byte[]>.Accepted bytes
            ? new BeamFileText(path, Encoding.UTF8.GetString(bytes.Value))
            : null;

    private static void Forget(ref KeptWork? work)
    {
        if (work is not null)
        {
            RecoveryFolder.Delete(work.File);
            work = null;
        }
    }

    // The refusal is told once; the next change tries again in silence.
    private ScreenEvent.RecoveryRefused? Keep(Effect.KeepRecovery keep)
    {
        if (_recovery.Keep(keep.Origin, keep.Text) is not string refusal || _refusalIsTold)
        {
            return null;
        }

        _refusalIsTold = true;
        return new ScreenEvent.RecoveryRefused(refusal);
    }

    private ScreenEvent Save(Effect.Save save) =>
        BeamFileStore.Save(Full(save.Path), save.Text, save.Known, save.Overwrite) switch
        {
            BeamFileSaving.Saved saved => new ScreenEvent.Saved(save.Path, saved.Text, TimeOfDay()),
            BeamFileSaving.Exists => new ScreenEvent.SaveRefused(save.Path, SaveObstacle.Exists, ""),
            BeamFileSaving.ChangedOnDisk => new ScreenEvent.SaveRefused(save.Path, SaveObstacle.ChangedOnDisk, ""),
            BeamFileSaving.Failed failed => new ScreenEvent.SaveRefused(save.Path, SaveObstacle.Refused, failed.Text),
            _ => throw new System.Diagnostics.UnreachableException(),
        };

    private ScreenEvent SavePaper(Effect.SavePaper save) =>
        BeamFileStore.SaveBytes(Full(save.Path), save.Paper.Bytes(start.Catalogue), save.Overwrite) switch
        {
            BeamFileSaving.Saved => new ScreenEvent.PaperSaved(save.Path, TimeOfDay()),
            BeamFileSaving.Failed failed => new ScreenEvent.PaperRefused(save, SaveObstacle.Refused, failed.Text),
            _ => new ScreenEvent.PaperRefused(save, SaveObstacle.Exists, ""),
        };

    private string TimeOfDay() => start.Clock.GetLocalNow().ToString("HH:mm", CultureInfo.InvariantCulture);
}
