using System.Diagnostics;

namespace FieldCheck.Tests.Faults;

/// <summary>A disk of a quarter of a mebibyte, mounted in a folder; only the system's administrator may.</summary>
internal sealed class SmallDisk : IDisposable
{
    private static readonly Lazy<string?> Reason = new(FindReason);

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("fieldcheck-disk-");

    internal SmallDisk()
    {
        string? refusal = Run("mount", "-t", "tmpfs", "-o", "size=256k", "tmpfs", _folder.FullName);
        if (refusal is not null)
        {
            _folder.Delete();
            throw new IOException(refusal);
        }
    }

    /// <summary>Why no such disk can be had here; null where one can.</summary>
    internal static string? WhyNot => Reason.Value;

    internal string Folder => _folder.FullName;

    private string Filler => Path.Combine(Folder, "filler");

    /// <summary>Takes up all room.</summary>
    internal void Fill()
    {
        using FileStream filler = new(Filler, FileMode.Create, FileAccess.Write, FileShare.None, bufferSize: 0);
        byte[] page = new byte[4096];
        try
        {
            while (filler.Length < 1 << 20)
            {
                filler.Write(page);
            }
        }
        catch (IOException)
        {
            return;
        }

        Assert.Fail("the disk takes more than it should");
    }

    /// <summary>Gives the room back.</summary>
    internal void Free() => File.Delete(Filler);

    /// <summary>Lets nothing be written any more, and lets it again.</summary>
    internal void Protect(bool isProtected) =>
        Assert.Null(Run("mount", "-o", $"remount,{(isProtected ? "ro" : "rw")},size=256k", Folder));

    public void Dispose()
    {
        Run("umount", Folder);
        _folder.Delete();
    }

    private static string? FindReason()
    {
        if (!OperatingSystem.IsLinux())
        {
            return "Disks are mounted otherwise here than on Linux.";
        }

        try
        {
            new SmallDisk().Dispose();
            return null;
        }
        catch (Exception fault) when (fault is IOException or System.ComponentModel.Win32Exception)
        {
            return "No disk can be mounted here: " + fault.Message.Trim();
        }
    }

    private static string? Run(string program, params string[] words)
    {
        using Process process = Process.Start(new ProcessStartInfo(program, words) { RedirectStandardError = true })!;
        string error = process.StandardError.ReadToEnd();
        process.WaitForExit();
        return process.ExitCode == 0 ? null : error;
    }
}

/// <summary>A test that needs a disk of its own; where none can be mounted it is skipped, and says why.</summary>
internal sealed class SmallDiskFactAttribute : FactAttribute
{
    public SmallDiskFactAttribute() => Skip = SmallDisk.WhyNot;
}
