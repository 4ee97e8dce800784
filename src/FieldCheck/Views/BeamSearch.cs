using FieldCheck.CommandLine;
using FieldCheck.Screen.Files;
using FieldCheck.Sheet.Presets;

namespace FieldCheck.Views;

/// <summary>Finds the beams that may be opened: files here and beside the open one, files used before, presets.</summary>
/// <param name="start">The folders and the clock.</param>
internal sealed class BeamSearch(StartRequest start)
{
    /// <summary>How many files of one folder are read at most, the newest of them.</summary>
    internal const int MostOfAFolder = 500;

    private readonly string _memory = Path.Combine(start.Folders.State, "opened.toml");

    /// <summary>Remembers that a beam was opened or saved; where that cannot be written, it is done without.</summary>
    /// <param name="name">The full path of a file, or the name of a preset that ships with the program.</param>
    /// <param name="isFile">True: it is a file.</param>
    internal void Remember(string name, bool isFile) =>
        OpenedBeams.Remember(_memory, new OpenedBeam(name, isFile, start.Clock.GetUtcNow()));

    /// <summary>Looks for the beams.</summary>
    /// <param name="openFile">The full path of the file that is open; null for none.</param>
    internal FoundBeams Find(string? openFile)
    {
        Dictionary<string, BeamChoice> files = new(
            OperatingSystem.IsWindows() ? StringComparer.OrdinalIgnoreCase : StringComparer.Ordinal);
        Add(files, start.Folders.PersonalPresets, BeamPlace.Personal);
        foreach (string folder in start.Folders.SitePresets)
        {
            Add(files, folder, BeamPlace.Site);
        }

        int leftOut = Add(files, start.CurrentFolder, BeamPlace.Here);
        if (Path.GetDirectoryName(openFile) is string beside && beside != start.CurrentFolder)
        {
            leftOut += Add(files, beside, BeamPlace.Elsewhere);
        }

        Dictionary<string, BeamChoice> shipped = PresetLibrary.BuiltIn().ToDictionary(preset => preset.Name, Shipped);
        foreach (OpenedBeam opened in OpenedBeams.Read(_memory))
        {
            MarkUsed(opened.IsFile ? files : shipped, opened);
        }

        DateOnly today = DateOnly.FromDateTime(start.Clock.GetLocalNow().DateTime);
        return FoundBeams.Of(files.Values.Concat(shipped.Values), leftOut, today);
    }

    private static int Add(Dictionary<string, BeamChoice> files, string folder, BeamPlace place)
    {
        BeamFolderSearch search = BeamFolder.Search(folder, MostOfAFolder);
        foreach (FoundBeam found in search.Files)
        {
            files.TryAdd(found.Path, Choice(found, place));
        }

        return search.LeftOut;
    }

    private void MarkUsed(Dictionary<string, BeamChoice> choices, OpenedBeam opened)
    {
        if (!choices.TryGetValue(opened.Name, out BeamChoice? choice) && opened.IsFile && File.Exists(opened.Name))
        {
            choice = Choice(FoundBeam.At(opened.Name), BeamPlace.Elsewhere);
        }

        if (choice is not null)
        {
            choices[opened.Name] = choice with { UsedAt = TimeZoneInfo.ConvertTime(opened.At, start.Clock.LocalTimeZone) };
        }
    }

    private static BeamChoice Choice(FoundBeam found, BeamPlace place) => new(
        BeamOrigin.NameOf(found.Path),
        place,
        place == BeamPlace.Here ? Path.GetFileName(found.Path) : found.Path,
        new(() => found.Reading),
        null);

    private static BeamChoice Shipped(Preset preset) =>
        new(preset.Name, BeamPlace.BuiltIn, null, new(() => BeamFileText.Read(preset.Text.Name, preset.Text.Text)), null);
}
