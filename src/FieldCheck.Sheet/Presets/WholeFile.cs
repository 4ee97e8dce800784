using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Presets;

/// <summary>Writes a file as a whole or not at all.</summary>
internal static class WholeFile
{
    // A name may be as long as the system takes, and the name beside it is longer; four bytes a sign at most.
    private const int LongestName = 50;

    /// <summary>Writes a file beside the old one, brings it safely onto the disk, and only then puts it in its place.</summary>
    /// <param name="file">The file; its permissions are kept where it stands already.</param>
    /// <param name="bytes">All that it shall hold.</param>
    /// <remarks>The folder's own entry is left to the system to bring onto the disk: after a power cut the old file may stand.</remarks>
    internal static void Write(FileInfo file, ReadOnlySpan<byte> bytes)
    {
        string name = file.Name.Length <= LongestName ? file.Name : Found.Cut(file.Name, LongestName);
        string next = Path.Combine(file.DirectoryName!, $".{name}.{Path.GetRandomFileName()}");
        FileStreamOptions options = new() { Mode = FileMode.CreateNew, Access = FileAccess.Write, Share = FileShare.None };
        if (file.Exists && !OperatingSystem.IsWindows())
        {
            // Nobody else may look into it before it has the old one's permissions.
            options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        }

        try
        {
            using (FileStream stream = new(next, options))
            {
                stream.Write(bytes);
                stream.Flush(flushToDisk: true);
            }

            if (file.Exists && !OperatingSystem.IsWindows())
            {
                File.SetUnixFileMode(next, file.UnixFileMode);
            }

            File.Move(next, file.FullName, overwrite: true);
        }
        finally
        {
            // After the move there is nothing of that name, and deleting nothing is no fault.
            if (File.Exists(next))
            {
                File.Delete(next);
            }
        }
    }
}
