namespace FieldCheck.Sheet.Presets;

/// <summary>Finds the beam files of one folder, not deeper, whether they read or not.</summary>
public static class BeamFolder
{
    private const string Pattern = "*.toml";

    /// <summary>
    /// The files by path; TOML of something else is passed over, what cannot be read is among them with the reason.
    /// </summary>
    /// <param name="folder">Which; one that does not exist holds none.</param>
    /// <param name="most">How many files are read at most, the newest of them.</param>
    public static BeamFolderSearch Search(string folder, int most)
    {
        if (!Directory.Exists(folder))
        {
            return new([], 0);
        }

        try
        {
            // An empty file is no beam; nor is a pipe, which would have to be waited for.
            FileInfo[] files = [.. new DirectoryInfo(folder).EnumerateFiles(Pattern, new EnumerationOptions()).Where(HasContent)];
            IEnumerable<FoundBeam> read = files
                .OrderByDescending(file => file.LastWriteTimeUtc)
                .Take(most)
                .Select(file => FoundBeam.BeamAt(file.FullName))
                .OfType<FoundBeam>()
                .OrderBy(found => found.Path, StringComparer.Ordinal);
            return new([.. read], Math.Max(files.Length - most, 0));
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return new([FoundBeam.Refused(folder, DiskFault.OfFolder(fault))], 0);
        }
    }

    // A link whose file is gone is told of.
    private static bool HasContent(FileInfo file) => file.Exists && !BeamFileOnDisk.HoldsNothing(file.FullName);
}
