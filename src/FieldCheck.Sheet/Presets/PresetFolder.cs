using System.Collections.Immutable;

namespace FieldCheck.Sheet.Presets;

/// <summary>Reads the beam files of one folder, not deeper.</summary>
internal static class PresetFolder
{
    private const string Pattern = "*.toml";

    /// <summary>The folder's presets by name; a folder that does not exist holds none.</summary>
    /// <param name="folder">Which.</param>
    /// <param name="place">What kind of folder it is.</param>
    internal static PresetSearch Search(string folder, PresetPlace place)
    {
        var presets = ImmutableArray.CreateBuilder<Preset>();
        var unreadable = ImmutableArray.CreateBuilder<FileProblem>();
        if (!Directory.Exists(folder))
        {
            return new([], []);
        }

        try
        {
            foreach (string path in Directory.GetFiles(folder, Pattern).Order(StringComparer.Ordinal))
            {
                Sort(path, place, presets, unreadable);
            }
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            unreadable.Add(FileProblem.OfWhole(folder, DiskFault.OfFolder(problem)));
        }

        return new(presets.ToImmutable(), unreadable.ToImmutable());
    }

    private static void Sort(
        string path,
        PresetPlace place,
        ImmutableArray<Preset>.Builder presets,
        ImmutableArray<FileProblem>.Builder unreadable)
    {
        switch (BeamFileOnDisk.OpenFound(path, path))
        {
            case BeamFileReading.Refused refused:
                unreadable.AddRange(refused.Problems);
                break;
            case BeamFileReading.Opened opened:
                presets.Add(new(Path.GetFileNameWithoutExtension(path), place, path, opened.Origin));
                break;
        }
    }
}
