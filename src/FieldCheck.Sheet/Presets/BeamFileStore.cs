using System.Security;

namespace FieldCheck.Sheet.Presets;

/// <summary>Puts beam files on a disk so that at no moment half a file stands there. <see cref="BeamFileOnDisk"/> reads them.</summary>
public static class BeamFileStore
{
    /// <summary>Saves a file.</summary>
    /// <param name="path">Where; a link is followed, and stays a link.</param>
    /// <param name="text">What it shall hold; at most <see cref="BeamFileText.MostBytes"/>.</param>
    /// <param name="known">What was read from there or last saved there; null where no file should stand.</param>
    /// <param name="overwrite">True: write whatever stands there; the person has agreed to it.</param>
    /// <returns>What came of it. A file that is gone meanwhile is written again; a write-protected one is left.</returns>
    public static BeamFileSaving Save(string path, BeamFileText text, BeamFileText? known, bool overwrite)
    {
        byte[] bytes = text.ToBytes();
        if (bytes.Length > BeamFileText.MostBytes)
        {
            return new BeamFileSaving.Failed("the beam takes more than 1 MiB, the most that can be read again.");
        }

        return Write(path, text, bytes, known, overwrite);
    }

    /// <summary>Saves what is no beam file, in the same way.</summary>
    /// <param name="path">Where; a link is followed, and stays a link.</param>
    /// <param name="bytes">All that the file shall hold.</param>
    /// <param name="overwrite">True: write whatever stands there; the person has agreed to it.</param>
    /// <returns>What came of it, never that it was changed on disk; where it was saved, with an empty text.</returns>
    public static BeamFileSaving SaveBytes(string path, byte[] bytes, bool overwrite) =>
        Write(path, new BeamFileText(path, ""), bytes, known: null, overwrite);

    /// <summary>Why no file of this name is written; null: nothing speaks against it.</summary>
    /// <param name="path">Where it would stand.</param>
    /// <param name="isWindows">True: on Windows.</param>
    internal static string? RefusedName(string path, bool isWindows) =>
        isWindows ? WindowsFileName.ProblemOf(Path.GetFileName(path)) : null;

    private static BeamFileSaving Write(
        string path, BeamFileText text, byte[] bytes, BeamFileText? known, bool overwrite)
    {
        if (RefusedName(path, OperatingSystem.IsWindows()) is string refusal)
        {
            return new BeamFileSaving.Failed(refusal);
        }

        try
        {
            FileInfo file = LinkedFile.At(path);
            if (ObstacleAt(file, known, overwrite) is BeamFileSaving obstacle)
            {
                return obstacle;
            }

            WholeFile.Write(file, bytes);
            return new BeamFileSaving.Saved(text);
        }
        catch (Exception fault) when (IsOfTheDisk(fault))
        {
            return new BeamFileSaving.Failed(DiskFault.OfWriting(fault));
        }
    }

    /// <summary>Whether two paths lead to one file, links followed.</summary>
    /// <param name="path">The one, whole.</param>
    /// <param name="other">The other, whole.</param>
    /// <returns>False too where they lead nowhere.</returns>
    public static bool IsSame(string path, string other)
    {
        bool anyCase = OperatingSystem.IsWindows() || OperatingSystem.IsMacOS();
        try
        {
            return string.Equals(
                LinkedFile.At(path).FullName,
                LinkedFile.At(other).FullName,
                anyCase ? StringComparison.OrdinalIgnoreCase : StringComparison.Ordinal);
        }
        catch (Exception fault) when (IsOfTheDisk(fault))
        {
            return false;
        }
    }

    private static BeamFileSaving? ObstacleAt(FileInfo file, BeamFileText? known, bool overwrite)
    {
        if (Directory.Exists(file.FullName))
        {
            return new BeamFileSaving.Failed("it is a folder, not a file.");
        }

        if (!file.Exists)
        {
            return null;
        }

        // Replacing a file needs no right to write to it, only to its folder; what was protected by hand stays so.
        if (file.IsReadOnly)
        {
            return new BeamFileSaving.Failed("it is write-protected.");
        }

        if (file.Length == 0 && !LinkedFile.IsOrdinary(file))
        {
            return new BeamFileSaving.Failed("it is no ordinary file.");
        }

        if (overwrite)
        {
            return null;
        }

        return known is null ? new BeamFileSaving.Exists() : Holds(file, known) ? null : new BeamFileSaving.ChangedOnDisk();
    }

    private static bool Holds(FileInfo file, BeamFileText known)
    {
        byte[] bytes = known.ToBytes();
        return file.Length == bytes.Length && File.ReadAllBytes(file.FullName).AsSpan().SequenceEqual(bytes);
    }

    private static bool IsOfTheDisk(Exception fault) => fault
        is IOException or UnauthorizedAccessException or SecurityException or ArgumentException or NotSupportedException;
}
