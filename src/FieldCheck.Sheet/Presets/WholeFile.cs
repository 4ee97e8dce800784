namespace FieldCheck.Sheet.Presets;

/// <summary>Writes a file as a whole or not at all.</summary>
internal static class WholeFile
{
    /// <summary>Writes a file beside the old one, brings it safely onto the disk, and only then puts it in its place.</summary>
    /// <param name="file">The file; its permissions are kept where it stands already.</param>
    /// <param name="bytes">All that it shall hold.</param>
    /// <remarks>The folder's own entry is left to the system to bring onto the disk: after a power cut the old file may stand.</remarks>
    internal static void Write(FileInfo file, ReadOnlySpan<byte> bytes)
    {
        string next = Path.Combine(file.DirectoryName!, $".{file.Name}.{Path.GetRandomFileName()}");
        try
        {
            using (FileStream stream = new(next, FileMode.CreateNew, FileAccess.Write, FileShare.None))
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
