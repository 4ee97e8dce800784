using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;
using System.Text;
using FieldCheck.Screen.Files;
using FieldCheck.Sheet.Presets;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Recovery;

/// <summary>Keeps unsaved work, one file a session, so that a crash, a kill or a dropped line costs none of it.</summary>
/// <remarks>
/// A kept file is the beam file itself under one line that names where it came from. A session's file carries the number
/// of its process; a file whose process is gone is work left behind. Files stay for seven days.
/// </remarks>
/// <param name="folder">Where the files go; made when first needed.</param>
/// <param name="clock">Tells how old a file is.</param>
internal sealed class RecoveryFolder(string folder, TimeProvider clock)
{
    private const string Mark = "#kept\t";
    private const int LongestHead = 1 << 16;
    private static readonly TimeSpan KeptFor = TimeSpan.FromDays(7);

    private readonly string _own = Path.Combine(
        folder, string.Create(CultureInfo.InvariantCulture, $"{Environment.ProcessId}.toml"));

    private readonly Lock _writing = new();

    /// <summary>The file that holds the work of this session; null while none is kept.</summary>
    internal string? OwnFile => File.Exists(_own) ? _own : null;

    /// <summary>Keeps the work of this session in place of what was kept before.</summary>
    /// <remarks>A reader finds the one or the other whole, never a part. May be called from any thread.</remarks>
    /// <returns>Why not, in plain words; null when the work is kept.</returns>
    internal string? Keep(BeamOrigin origin, string text)
    {
        string next = _own + ".next";
        try
        {
            lock (_writing)
            {
                Make(folder);
                // No room is asked for beforehand: of that the runtime tells a full disk in words of its own, and with no number.
                using (StreamWriter file = File.CreateText(next))
                {
                    file.Write($"{Mark}{OneLine(origin.Name)}\t{OneLine(origin.Path ?? "")}\n{text}");
                }

                File.Move(next, _own, overwrite: true);
                return null;
            }
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            // What was kept before stays; half a file beside it would only take room on a full disk.
            Delete(next);
            return DiskFault.OfWriting(fault);
        }
    }

    /// <summary>Forgets the work of this session: nothing of it is unsaved.</summary>
    internal void Drop() => Delete(_own);

    /// <summary>Leaves the work of this session to be found at the next start; what is kept next has a file of its own.</summary>
    internal void SetAside()
    {
        try
        {
            lock (_writing)
            {
                string at = clock.GetUtcNow().ToString("yyyyMMddHHmmssfffffff", CultureInfo.InvariantCulture);
                File.Move(_own, Path.ChangeExtension(_own, null) + $"-{at}.toml");
            }
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            // Not kept was told when it could not be written.
        }
    }

    /// <summary>Forgets work left behind: it was taken up.</summary>
    internal static void Delete(string file)
    {
        try
        {
            File.Delete(file);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            // It is offered once more at the next start, which loses nothing.
        }
    }

    /// <summary>Work that was set aside, or that a session which is gone left behind, newest first; older than seven days goes.</summary>
    internal ImmutableArray<KeptWork> FindLeftBehind()
    {
        try
        {
            return !Directory.Exists(folder)
                ? []
                : [.. Directory.EnumerateFiles(folder, "*.toml").Where(IsLeftBehind).Select(Read).OfType<KeptWork>()
                    .OrderByDescending(work => work.KeptAt)
                    .ThenByDescending(work => work.File, StringComparer.Ordinal)];
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return [];
        }
    }

    private bool IsLeftBehind(string file)
    {
        if (clock.GetUtcNow() - File.GetLastWriteTimeUtc(file) > KeptFor)
        {
            Delete(file);
            return false;
        }

        return !int.TryParse(Path.GetFileNameWithoutExtension(file), CultureInfo.InvariantCulture, out int process)
            || !IsRunning(process);
    }

    private static bool IsRunning(int process)
    {
        try
        {
            using Process running = Process.GetProcessById(process);
            return !running.HasExited;
        }
        catch (ArgumentException)
        {
            return false;
        }
    }

    private static KeptWork? Read(string file)
    {
        // Half of it would be worse than none: it would be taken up, and the whole forgotten.
        if (BeamFileOnDisk.FoundBytes(file, LongestHead) is not Reading<byte[]>.Accepted bytes
            || bytes.Value.Length > BeamFileText.MostBytes + LongestHead)
        {
            return null;
        }

        string text = Encoding.UTF8.GetString(bytes.Value);
        int end = text.IndexOf('\n', StringComparison.Ordinal);
        string[] head = end < 0 ? [] : text[..end].Split('\t');
        return head.Length == 3 && head[0] + "\t" == Mark
            ? new KeptWork(file, head[1], head[2].Length > 0 ? head[2] : null, text[(end + 1)..], File.GetLastWriteTimeUtc(file))
            : null;
    }

    // As the XDG base directory specification 0.8 has it: nobody else looks into what was typed and not saved.
    private static void Make(string folder)
    {
        if (OperatingSystem.IsWindows())
        {
            Directory.CreateDirectory(folder);
        }
        else
        {
            Directory.CreateDirectory(folder, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        }
    }

    private static string OneLine(string text) => text.ReplaceLineEndings(" ").Replace('\t', ' ');
}
