using System.Diagnostics;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.CombinationSets;
using FieldCheck.Sheet.Presets;
using FieldCheck.Sheet.Settings;

namespace FieldCheck.Sheet.Tests.Presets;

/// <summary>Pipes, devices and rings of links where files are looked for: told, and neither waited for nor written over.</summary>
public sealed class OddFilesTests : IDisposable
{
    private const string Told = "it is empty, or no ordinary file.";

    private static readonly BeamFileText Beam = new("beam.toml", "format = 1\n[[span]]\nlength = \"3 m\"\n");

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("fieldcheck-");

    private string Odd => Path.Combine(_folder.FullName, "odd.toml");

    public void Dispose() => _folder.Delete(recursive: true);

    [UnixFact]
    public void PipeAmongPresets_IsTold()
    {
        MakePipe(Odd);

        PresetSearch found = InTime.Of(() => new PresetLibrary(_folder.FullName, []).Search());

        Assert.Equal(FileProblem.OfWhole(Odd, Told), Assert.Single(found.Unreadable));
        Assert.Equal(PresetLibrary.BuiltIn().Length, found.Presets.Length);
    }

    [UnixFact]
    public void LinkToAnEndlessDevice_IsTold()
    {
        File.CreateSymbolicLink(Odd, "/dev/zero");

        Assert.Equal(
            FileProblem.OfWhole(Odd, Told),
            Assert.Single(InTime.Of(() => new PresetLibrary(_folder.FullName, []).Search()).Unreadable));
    }

    [UnixFact]
    public void EndlessDeviceThatAPersonNamed_IsReadNoFartherThanAFileMayBeLarge()
    {
        BeamFileReading reading = InTime.Of(() => BeamFileOnDisk.Open("zero", "/dev/zero"));

        FileProblem problem = Assert.Single(Assert.IsType<BeamFileReading.Refused>(reading).Problems);
        Assert.Equal("zero:1:1: the file is larger than 1 MiB, the most that is read", problem.ToString());
    }

    [UnixFact]
    public void PipeAmongOwnSectionsAndSets_IsTold()
    {
        MakePipe(Odd);

        Assert.Equal(
            FileProblem.OfWhole(Odd, Told), Assert.Single(InTime.Of(() => OwnCatalogue.Read(_folder.FullName)).Problems));
        Assert.Equal(
            FileProblem.OfWhole(Odd, Told),
            Assert.Single(InTime.Of(() => new CombinationLibrary(_folder.FullName, []).Search()).Unreadable));
    }

    [UnixFact]
    public void PipeInAFolderOfBeams_IsPassedOver_ByALinkTo()
    {
        MakePipe(Odd);
        File.CreateSymbolicLink(Path.Combine(_folder.FullName, "link.toml"), Odd);
        File.WriteAllText(Path.Combine(_folder.FullName, "beam.toml"), Beam.Text);

        BeamFolderSearch found = InTime.Of(() => BeamFolder.Search(_folder.FullName, 10));

        Assert.Equal(["beam.toml"], found.Files.Select(file => Path.GetFileName(file.Path)));
    }

    [UnixFact]
    public void PipeThatWasOpenedBefore_IsToldWhenItIsRead()
    {
        MakePipe(Odd);

        BeamFileReading reading = InTime.Of(() => FoundBeam.At(Odd).Reading);

        Assert.Equal(
            FileProblem.OfWhole(Odd, Told), Assert.Single(Assert.IsType<BeamFileReading.Refused>(reading).Problems));
        Assert.Empty(InTime.Of(() => OpenedBeams.Read(Odd)));
    }

    [UnixFact]
    public void PipeForSettings_IsAsIfNoneStood_AndIsNotWrittenOver()
    {
        MakePipe(Odd);
        SettingsFile settings = new(Odd);

        Assert.Equal(new SettingsDocument(), Assert.IsType<SettingsReading.Opened>(InTime.Of(settings.Read)).Settings);
        Assert.Equal($"{Odd}: it is no ordinary file.", InTime.Of(() => settings.Change(old => old with { Theme = "mono" })));
        AssertPipe();
    }

    [UnixFact]
    public void LinkedSettings_StayALink()
    {
        string real = Path.Combine(_folder.CreateSubdirectory("real").FullName, "settings.toml");
        File.WriteAllText(real, "# mine\n");
        File.CreateSymbolicLink(Odd, real);

        Assert.Null(new SettingsFile(Odd).Change(old => old with { Theme = "mono" }));

        Assert.Equal(real, new FileInfo(Odd).LinkTarget);
        Assert.Contains("theme = \"mono\"", File.ReadAllText(real), StringComparison.Ordinal);
    }

    [UnixTheory]
    [InlineData("p")]
    [InlineData("c", "1", "3")]
    public void PipeOrDevice_IsNotSavedOver(params string[] kind)
    {
        if (!TryMake(["mknod", Odd, .. kind]))
        {
            // Only the system's administrator may make a device.
            Assert.Equal("c", kind[0]);
            return;
        }

        BeamFileSaving refused = InTime.Of(() => BeamFileStore.Save(Odd, Beam, null, overwrite: true));

        Assert.Equal(new BeamFileSaving.Failed("it is no ordinary file."), refused);
        AssertPipe();
    }

    [UnixFact]
    public void EmptyFile_IsSavedOverWhenThePersonAgrees()
    {
        File.WriteAllText(Odd, "");

        Assert.Equal(new BeamFileSaving.Exists(), BeamFileStore.Save(Odd, Beam, null, overwrite: false));
        Assert.Equal(new BeamFileSaving.Saved(Beam), BeamFileStore.Save(Odd, Beam, null, overwrite: true));
        Assert.Equal(Beam.Text, File.ReadAllText(Odd));
    }

    [UnixFact]
    public void RingOfLinks_IsToldAndNotWrittenTo()
    {
        string other = Path.Combine(_folder.FullName, "other.toml");
        File.CreateSymbolicLink(Odd, other);
        File.CreateSymbolicLink(other, Odd);

        PresetSearch found = InTime.Of(() => new PresetLibrary(_folder.FullName, []).Search());
        BeamFileSaving saving = InTime.Of(() => BeamFileStore.Save(Odd, Beam, null, overwrite: true));

        Assert.Equal(2, found.Unreadable.Length);
        Assert.All(found.Unreadable, problem => Assert.StartsWith("it cannot be read: ", problem.Text, StringComparison.Ordinal));
        Assert.StartsWith("it cannot be written: ", Assert.IsType<BeamFileSaving.Failed>(saving).Text, StringComparison.Ordinal);
        Assert.Equal(["odd.toml", "other.toml"], _folder.GetFileSystemInfos().Select(item => item.Name).Order(StringComparer.Ordinal));
        Assert.Equal((other, Odd), (new FileInfo(Odd).LinkTarget, new FileInfo(other).LinkTarget));
    }

    // NAME_MAX is 255 bytes on the usual file systems (POSIX, limits.h); one more is too many.
    [UnixTheory]
    [InlineData('x', 250)]
    [InlineData('é', 125)]
    public void LongestName_IsSaved(char letter, int count)
    {
        string path = Path.Combine(_folder.FullName, new string(letter, count) + ".toml");

        Assert.Equal(new BeamFileSaving.Saved(Beam), BeamFileStore.Save(path, Beam, null, overwrite: false));
        Assert.Equal([path], _folder.GetFiles().Select(file => file.FullName));
        Assert.IsType<BeamFileSaving.Failed>(BeamFileStore.Save(path.Replace(".toml", "x.toml", StringComparison.Ordinal), Beam, null, overwrite: false));
        Assert.Single(_folder.GetFiles());
    }

    private static void MakePipe(string path) => Assert.True(TryMake("mkfifo", path));

    private static bool TryMake(params string[] words)
    {
        using Process made = Process.Start(new ProcessStartInfo(words[0], words[1..]) { RedirectStandardError = true })!;
        made.WaitForExit();
        return made.ExitCode == 0;
    }

    private void AssertPipe()
    {
        Assert.Equal(["odd.toml"], _folder.GetFileSystemInfos().Select(item => item.Name));
        using Process test = Process.Start("test", ["-f", Odd]);
        test.WaitForExit();
        Assert.Equal(1, test.ExitCode);
    }
}
