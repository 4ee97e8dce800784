namespace FieldCheck.Sheet.Presets;

/// <summary>Follows links to the file that is meant.</summary>
internal static class LinkedFile
{
    /// <summary>The file at a path, or the one at the end of the links that begin there; it need not exist.</summary>
    /// <param name="path">The path.</param>
    /// <exception cref="IOException">The links lead round in a ring.</exception>
    internal static FileInfo At(string path)
    {
        FileInfo file = new(path);
        return file.LinkTarget is null ? file : (FileInfo)file.ResolveLinkTarget(returnFinalTarget: true)!;
    }

    /// <summary>True: a file without length is one that can be written in place of, and no pipe or device.</summary>
    /// <param name="file">A file that stands and has no length.</param>
    internal static bool IsOrdinary(FileInfo file)
    {
        try
        {
            // Opened to be read and written, a pipe need not be waited for; and only a file has an end that can be set.
            using FileStream stream = new(file.FullName, FileMode.Open, FileAccess.ReadWrite, FileShare.ReadWrite);
            stream.SetLength(0);
            return true;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or NotSupportedException)
        {
            return false;
        }
    }
}
