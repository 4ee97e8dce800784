using System.Security;

namespace FieldCheck.Sheet.Presets;

/// <summary>What a disk refused, in plain words: those of the system name files that nobody asked for.</summary>
public static class DiskFault
{
    // POSIX: EISDIR, ENOSPC and EROFS. Windows: ERROR_DISK_FULL, ERROR_HANDLE_DISK_FULL and ERROR_WRITE_PROTECT.
    private const int Folder = 21;
    private const int NoSpace = 28;
    private const int ReadOnly = 30;
    private const int WindowsFull = 112;
    private const int WindowsHandleFull = 39;
    private const int WindowsProtected = 19;
    private const string NotAllowed = "reading it is not allowed.";

    /// <summary>Why a file was not written; what stood there before still does.</summary>
    /// <param name="fault">What the system said.</param>
    /// <returns>A sentence that begins with a small letter, without the name of the file.</returns>
    public static string OfWriting(Exception fault) => OfWriting(fault, OperatingSystem.IsWindows());

    internal static string OfWriting(Exception fault, bool isWindows) => fault switch
    {
        DirectoryNotFoundException or FileNotFoundException => "there is no such folder.",
        PathTooLongException => "the name is too long.",
        _ when IsForbidden(fault) => "writing there is not allowed.",
        ArgumentException or NotSupportedException => "this cannot be the name of a file.",
        _ when IsFull(fault, isWindows) =>
            "the disk is full. Nothing was written; a file that stood there still stands.",
        _ when Is(fault, isWindows ? [WindowsProtected] : [ReadOnly]) => "the disk is write-protected.",
        _ => "it cannot be written: " + WithoutPath(fault.Message),
    };

    /// <summary>Why a file was not read.</summary>
    /// <param name="fault">What the system said.</param>
    /// <returns>A sentence that begins with a small letter, without the name of the file.</returns>
    public static string OfReading(Exception fault) =>
        IsForbidden(fault) ? NotAllowed
        : !OperatingSystem.IsWindows() && Is(fault, [Folder]) ? "it is a folder, not a file."
        : "it cannot be read: " + WithoutPath(fault.Message);

    /// <summary>Why the files of a folder were not listed.</summary>
    /// <param name="fault">What the system said.</param>
    /// <returns>A sentence that begins with a small letter, without the name of the folder.</returns>
    public static string OfFolder(Exception fault) =>
        "the folder cannot be read: " + (IsForbidden(fault) ? NotAllowed : WithoutPath(fault.Message));

    /// <summary>Why a result could not be written on; what was written of it before still stands.</summary>
    /// <param name="fault">What the system said.</param>
    /// <returns>A sentence that begins with a small letter.</returns>
    public static string OfOutput(Exception fault) => OfOutput(fault, OperatingSystem.IsWindows());

    internal static string OfOutput(Exception fault, bool isWindows) =>
        IsFull(fault, isWindows) ? "the disk is full, and what was written before may be cut short."
        : WithoutPath(fault.Message);

    private static bool IsForbidden(Exception fault) => fault is UnauthorizedAccessException or SecurityException;

    private static bool IsFull(Exception fault, bool isWindows) =>
        Is(fault, isWindows ? [WindowsFull, WindowsHandleFull] : [NoSpace]);

    private static bool Is(Exception fault, int[] codes) => codes.Contains(fault.HResult & 0xFFFF);

    // "Input/output error : '/somewhere'."
    private static string WithoutPath(string message) =>
        message.IndexOf(" : '", StringComparison.Ordinal) is > 0 and int end ? message[..end] + "." : message;
}
