using System.Diagnostics;
using FieldCheck.Recovery;
using FieldCheck.Screen.Files;
using FieldCheck.Screen.Overlays;
using FieldCheck.Sheet.Settings;
using FieldCheck.Tests.CommandLine;

namespace FieldCheck.Tests.Faults;

/// <summary>Disks that are full, protected or gone: nothing is lost, and it is said plainly, in the form and on the command line.</summary>
public sealed class FaultTests : IDisposable
{
    private const string Beam = """
        format = 1
        title = "Bench" # mine
        [[span]]
        length = "4 m"
        [[support]]
        joint = 0
        kind = "pin"
        [[support]]
        joint = 1
        kind = "roller"
        [[load]]
        kind = "point"
        at = "1 m"
        force = "10 kN"

        """;

    private const string Full = "the disk is full. Nothing was written; a file that stood there still stands.";
    private const string Protected = "the disk is write-protected.";

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("fieldcheck-");

    public void Dispose() => _folder.Delete(recursive: true);

    [SmallDiskFact]
    public void FullDisk_InTheForm() => InTheForm(disk => disk.Fill(), disk => disk.Free(), Full);

    [SmallDiskFact]
    public void ProtectedDisk_InTheForm() => InTheForm(disk => disk.Protect(true), disk => disk.Protect(false), Protected);

    [SmallDiskFact]
    public void FullDisk_OfTheReport() => OfTheReport(disk => disk.Fill(), Full);

    [SmallDiskFact]
    public void ProtectedDisk_OfTheReport() => OfTheReport(disk => disk.Protect(true), Protected);

    [SmallDiskFact]
    public void FullDisk_OfUnsavedWork_LeavesWhatWasKept()
    {
        using SmallDisk disk = new();
        RecoveryFolder kept = new(Path.Combine(disk.Folder, "recover"), TimeProvider.System);
        Assert.Null(kept.Keep(BeamOrigin.NewBeam, Beam));
        string before = File.ReadAllText(kept.OwnFile!);
        disk.Fill();

        Assert.StartsWith("the disk is full.", kept.Keep(BeamOrigin.NewBeam, Large), StringComparison.Ordinal);

        Assert.Equal(before, File.ReadAllText(kept.OwnFile!));
        Assert.Equal([kept.OwnFile!], Directory.GetFiles(Path.Combine(disk.Folder, "recover")));
        disk.Free();
        Assert.Null(kept.Keep(BeamOrigin.NewBeam, Large));
        Assert.EndsWith(Large, File.ReadAllText(kept.OwnFile!), StringComparison.Ordinal);
    }

    [SmallDiskFact]
    public void FullDisk_OfSettings_LeavesThemAsTheyStood()
    {
        using SmallDisk disk = new();
        SettingsFile settings = new(Path.Combine(disk.Folder, "settings.toml"));
        File.WriteAllText(settings.Path, "# mine\ntheme = \"mono\"\n");
        disk.Fill();

        Assert.StartsWith(
            "the disk is full.", settings.Change(old => old with { Theme = "terminal" }), StringComparison.Ordinal);

        Assert.Equal("# mine\ntheme = \"mono\"\n", File.ReadAllText(settings.Path));
        Assert.Equal(["filler", "settings.toml"], NamesIn(disk.Folder));
    }

    [Fact]
    public void FolderThatIsGone_IsToldInTheForm_WhichKeepsTheWork()
    {
        DirectoryInfo share = _folder.CreateSubdirectory("share");
        File.WriteAllText(Path.Combine(share.FullName, "beam.toml"), Beam);
        FormOnDisk form = new(share.FullName, "beam.toml", Path.Combine(_folder.FullName, "state"));
        form.Press("5 Enter");
        share.Delete(recursive: true);

        form.Press("^S");

        Assert.Equal("Not saved: beam.toml: there is no such folder.", form.Says);
        Assert.True(form.State.IsUnsaved);
        form.Keep();
        Assert.Contains("length = \"5 m\"", File.ReadAllText(Assert.Single(Directory.GetFiles(form.Kept))), StringComparison.Ordinal);

        // The line is back.
        share.Create();
        form.Press("^S");
        Assert.StartsWith("Saved beam.toml ", form.Says, StringComparison.Ordinal);
        Assert.Equal(
            Beam.Replace("\"4 m\"", "\"5 m\"", StringComparison.Ordinal), File.ReadAllText(Path.Combine(share.FullName, "beam.toml")));
    }

    [Fact]
    public void FolderThatIsGone_IsToldOnTheCommandLine()
    {
        using Surroundings around = new();
        around.Write("beam.toml", Beam);

        Assert.Equal(2, around.Run("check", "share/beam.toml"));
        Assert.Equal(2, around.Run("report", "beam.toml", "--output", "share/beam.txt"));
        Assert.Equal(
            "share/beam.toml: there is no such file.\nshare/beam.txt: there is no such folder.\n", around.Complaints);
    }

    [Fact]
    public void CurrentFolderThatIsGone_IsNoFaultOfTheProgram()
    {
        if (OperatingSystem.IsWindows())
        {
            // A folder that a program works in cannot be taken away there.
            return;
        }

        string gone = Path.Combine(_folder.FullName, "gone");
        (int status, string output, string error) = Executable.StartFromShell(
            $"mkdir '{gone}' && cd '{gone}' && rmdir '{gone}' && exec \"$0\" check beam.toml").Finish();

        Assert.Equal((2, "", "beam.toml: there is no such file.\n"), (status, output, error));
    }

    [Fact]
    public async Task PipeInAFolder_IsToldByTheBatch_WhichGoesOn()
    {
        if (OperatingSystem.IsWindows())
        {
            // No pipe lies among the files of a folder there.
            return;
        }

        using Surroundings around = new();
        around.Write("job/b.toml", Beam);
        using Process made = Process.Start("mkfifo", [Path.Combine(around.Folder.FullName, "job", "a.toml")]);
        await made.WaitForExitAsync();

        // Nobody ever writes to the pipe: who waits for it waits for ever.
        int status = await Task.Run(() => around.Run("batch", "job")).WaitAsync(TimeSpan.FromMinutes(1));

        Assert.Equal(2, status);
        Assert.Equal("job/a.toml: it is empty, or no ordinary file.\n", around.Complaints);
        Assert.Contains("\"file\":\"job/b.toml\",\"title\":\"Bench\"", around.Written, StringComparison.Ordinal);
    }

    [Fact]
    public void FileChangedMeanwhile_IsAskedAboutInTheForm_AndNotWrittenOver()
    {
        string path = Path.Combine(_folder.FullName, "beam.toml");
        File.WriteAllText(path, Beam);
        FormOnDisk form = new(_folder.FullName, "beam.toml");
        form.Press("5 Enter");
        string theirs = Beam.Replace("Bench", "Theirs", StringComparison.Ordinal);
        File.WriteAllText(path, theirs);

        form.Press("^S");

        Assert.IsType<Overlay.SaveQuestion>(form.State.Overlay);
        Assert.Equal(theirs, File.ReadAllText(path));
        form.Press("Esc");
        Assert.True(form.State.IsUnsaved);
        Assert.Equal(theirs, File.ReadAllText(path));
    }

    [Fact]
    public void UnreadableWork_DoesNotHideTheOther()
    {
        DirectoryInfo recover = _folder.CreateSubdirectory("recover");
        File.WriteAllText(Path.Combine(recover.FullName, "1-good.toml"), "#kept\tbeam\t\n" + Beam);
        File.WriteAllText(Path.Combine(recover.FullName, "2-large.toml"), "#kept\tbeam\t\n" + new string('#', 2 << 20));
        recover.CreateSubdirectory("3-folder.toml");
        if (!OperatingSystem.IsWindows())
        {
            File.CreateSymbolicLink(Path.Combine(recover.FullName, "4-ring.toml"), Path.Combine(recover.FullName, "4-ring.toml"));
            File.CreateSymbolicLink(Path.Combine(recover.FullName, "5-endless.toml"), "/dev/zero");
        }

        KeptWork[] found = [.. new RecoveryFolder(recover.FullName, TimeProvider.System).FindLeftBehind()];

        // Half of the large one would be worse than none of it.
        Assert.Equal(Beam, Assert.Single(found).Text);
        Assert.True(File.Exists(Path.Combine(recover.FullName, "2-large.toml")));
    }

    [Fact]
    public void FolderOfUnsavedWork_IsThePersonsOwn()
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        string folder = Path.Combine(_folder.FullName, "state", "recover");
        Assert.Null(new RecoveryFolder(folder, TimeProvider.System).Keep(BeamOrigin.NewBeam, Beam));

        // XDG base directory specification 0.8: a folder that is missing is made with permission 0700.
        Assert.Equal(
            UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute, File.GetUnixFileMode(folder));
    }

    private static string Large => Beam + "# " + new string('x', 100_000) + "\n";

    private static IEnumerable<string> NamesIn(string folder) =>
        Directory.GetFileSystemEntries(folder).Select(path => Path.GetFileName(path)).Order(StringComparer.Ordinal);

    private static void InTheForm(Action<SmallDisk> hinder, Action<SmallDisk> help, string why)
    {
        using SmallDisk disk = new();
        string path = Path.Combine(disk.Folder, "beam.toml");
        File.WriteAllText(path, Beam);
        FormOnDisk form = new(disk.Folder, "beam.toml");
        form.Press("5 Enter");
        hinder(disk);
        string[] before = [.. NamesIn(disk.Folder)];

        form.Press("^S");
        Assert.StartsWith($"Not saved: beam.toml: {why}", form.Says, StringComparison.Ordinal);
        Assert.Contains($"Not saved: beam.toml: {why[..20]}", form.Picture, StringComparison.Ordinal);
        Assert.True(form.State.IsUnsaved);
        Assert.Equal(Beam, File.ReadAllText(path));
        Assert.Equal(before, NamesIn(disk.Folder).Where(name => name != "state"));

        form.Keep();
        Assert.StartsWith("Unsaved work is not being kept: ", form.Says, StringComparison.Ordinal);

        form.Press("^P Backspace Backspace Backspace txt Enter");
        Assert.StartsWith("Not saved: beam-record.txt: " + why, form.Says, StringComparison.Ordinal);

        help(disk);
        form.Press("^S");
        Assert.StartsWith("Saved beam.toml ", form.Says, StringComparison.Ordinal);
        Assert.False(form.State.IsUnsaved);
        Assert.Equal(Beam.Replace("\"4 m\"", "\"5 m\"", StringComparison.Ordinal), File.ReadAllText(path));
    }

    private static void OfTheReport(Action<SmallDisk> hinder, string why)
    {
        using SmallDisk disk = new();
        using Surroundings around = new();
        around.Write("beam.toml", Beam);
        string record = Path.Combine(disk.Folder, "record.md");
        File.WriteAllText(record, "the old one");
        hinder(disk);

        Assert.Equal(2, around.Run("report", "beam.toml", "--output", record, "--force"));

        Assert.StartsWith($"{record}: {why}", around.Complaints, StringComparison.Ordinal);
        Assert.Equal("", around.Written);
        Assert.Equal("the old one", File.ReadAllText(record));
        Assert.Empty(NamesIn(disk.Folder).Except(["filler", "record.md"]));
    }
}
