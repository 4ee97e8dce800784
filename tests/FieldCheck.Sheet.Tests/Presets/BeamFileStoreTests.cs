using FieldCheck.Sheet.Presets;

namespace FieldCheck.Sheet.Tests.Presets;

public sealed class BeamFileStoreTests : IDisposable
{
    private static readonly BeamFileText Old = new("beam.toml", "format = 1\r\ntitle = \"dépôt\"\r\n");
    private static readonly BeamFileText New = new("beam.toml", "\uFEFFformat = 1\ntitle = \"été\"\n");

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("fieldcheck-");

    private string Beam => Path.Combine(_folder.FullName, "beam.toml");

    public void Dispose() => _folder.Delete(recursive: true);

    [Fact]
    public void NewName_IsWritten_AndReadsBackAsItWas()
    {
        Assert.Equal(new BeamFileSaving.Saved(New), BeamFileStore.Save(Beam, New, null, overwrite: false));

        Assert.Equal(New.ToBytes(), File.ReadAllBytes(Beam));
        Assert.Equal(New, Assert.IsType<BeamFileReading.Opened>(BeamFileOnDisk.Open("beam.toml", Beam)).Origin);
        AssertOnlyTheBeamStands();
    }

    [Fact]
    public void FileThatStandsAsItWasRead_IsReplaced()
    {
        File.WriteAllBytes(Beam, Old.ToBytes());

        Assert.Equal(new BeamFileSaving.Saved(New), BeamFileStore.Save(Beam, New, Old, overwrite: false));

        Assert.Equal(New.ToBytes(), File.ReadAllBytes(Beam));
        AssertOnlyTheBeamStands();
    }

    [Theory]
    [InlineData("format = 1\r\ntitle = \"depot\"\r\n")]
    [InlineData("format = 1\r\ntitle = \"dépôT\"\r\n")]
    [InlineData("format = 1\ntitle = \"dépôt\"\n")]
    [InlineData("")]
    public void FileThatAnotherHandChanged_IsLeft_UntilThePersonAgrees(string other)
    {
        File.WriteAllText(Beam, other);

        Assert.Equal(new BeamFileSaving.ChangedOnDisk(), BeamFileStore.Save(Beam, New, Old, overwrite: false));
        Assert.Equal(other, File.ReadAllText(Beam));

        Assert.Equal(new BeamFileSaving.Saved(New), BeamFileStore.Save(Beam, New, Old, overwrite: true));
        Assert.Equal(New.ToBytes(), File.ReadAllBytes(Beam));
        AssertOnlyTheBeamStands();
    }

    [Fact]
    public void FileThatNobodyRead_IsLeft_UntilThePersonAgrees()
    {
        File.WriteAllBytes(Beam, Old.ToBytes());

        Assert.Equal(new BeamFileSaving.Exists(), BeamFileStore.Save(Beam, New, null, overwrite: false));
        Assert.Equal(Old.ToBytes(), File.ReadAllBytes(Beam));
        Assert.Equal(new BeamFileSaving.Saved(New), BeamFileStore.Save(Beam, New, null, overwrite: true));
        Assert.Equal(New.ToBytes(), File.ReadAllBytes(Beam));
    }

    [Fact]
    public void FileThatIsNoBeam_IsWritten_AndOverAnotherOnlyWhenThePersonAgrees()
    {
        string path = Path.Combine(_folder.FullName, "working.txt");

        Assert.IsType<BeamFileSaving.Saved>(BeamFileStore.SaveBytes(path, [.. "one\n"u8], overwrite: false));
        Assert.Equal(new BeamFileSaving.Exists(), BeamFileStore.SaveBytes(path, [.. "two\n"u8], overwrite: false));
        Assert.Equal("one\n", File.ReadAllText(path));

        Assert.IsType<BeamFileSaving.Saved>(BeamFileStore.SaveBytes(path, [.. "two\n"u8], overwrite: true));
        Assert.Equal("two\n"u8, File.ReadAllBytes(path));
    }

    [Fact]
    public void FileThatIsGoneMeanwhile_IsWrittenAgain()
    {
        Assert.Equal(new BeamFileSaving.Saved(New), BeamFileStore.Save(Beam, New, Old, overwrite: false));
        Assert.Equal(New.ToBytes(), File.ReadAllBytes(Beam));
    }

    [Fact]
    public void Permissions_AreKept()
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        const UnixFileMode Mode = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.OtherRead;
        File.WriteAllBytes(Beam, Old.ToBytes());
        File.SetUnixFileMode(Beam, Mode);

        Assert.IsType<BeamFileSaving.Saved>(BeamFileStore.Save(Beam, New, Old, overwrite: false));
        Assert.Equal(Mode, File.GetUnixFileMode(Beam));
    }

    [Fact]
    public void WriteProtectedFile_IsLeft_WhateverThePersonSays()
    {
        File.WriteAllBytes(Beam, Old.ToBytes());
        File.SetAttributes(Beam, FileAttributes.ReadOnly);

        BeamFileSaving saving = BeamFileStore.Save(Beam, New, Old, overwrite: true);

        File.SetAttributes(Beam, FileAttributes.Normal);
        Assert.Equal(new BeamFileSaving.Failed("it is write-protected."), saving);
        Assert.Equal(Old.ToBytes(), File.ReadAllBytes(Beam));
    }

    [Fact]
    public void Link_StaysALink_AndTheFileBehindItIsReplaced()
    {
        string there = Path.Combine(_folder.CreateSubdirectory("there").FullName, "real.toml");
        File.WriteAllBytes(there, Old.ToBytes());
        File.CreateSymbolicLink(Beam, there);

        Assert.IsType<BeamFileSaving.Saved>(BeamFileStore.Save(Beam, New, Old, overwrite: false));
        Assert.Equal(there, new FileInfo(Beam).LinkTarget);
        Assert.Equal(New.ToBytes(), File.ReadAllBytes(there));
    }

    [Theory]
    [InlineData("there is no such folder.", "nowhere", "beam.toml")]
    [InlineData("it is a folder, not a file.", "")]
    [InlineData("this cannot be the name of a file.", "a\0b.toml")]
    public void PlaceThatTakesNoFile_Fails_AndSaysWhy(string expected, params string[] names)
    {
        string path = Path.Combine([_folder.FullName, .. names]);

        Assert.Equal(new BeamFileSaving.Failed(expected), BeamFileStore.Save(path, New, null, overwrite: true));
        Assert.Empty(_folder.GetFileSystemInfos());
    }

    [Fact]
    public void NameBelowAFile_Fails_AndLeavesTheFile()
    {
        File.WriteAllBytes(Beam, Old.ToBytes());

        Assert.IsType<BeamFileSaving.Failed>(BeamFileStore.Save(Path.Combine(Beam, "x.toml"), New, null, overwrite: true));
        Assert.Equal(Old.ToBytes(), File.ReadAllBytes(Beam));
        AssertOnlyTheBeamStands();
    }

    [Fact]
    public void EmptyName_Fails() => Assert.Equal(
        new BeamFileSaving.Failed("this cannot be the name of a file."), BeamFileStore.Save("", New, null, overwrite: true));

    [Fact]
    public void TextThatCouldNotBeReadAgain_IsNotWritten()
    {
        File.WriteAllBytes(Beam, Old.ToBytes());
        BeamFileText large = New with { Text = New.Text + "#".PadRight(BeamFileText.MostBytes, 'x') };

        Assert.Equal(
            new BeamFileSaving.Failed("the beam takes more than 1 MiB, the most that can be read again."),
            BeamFileStore.Save(Beam, large, Old, overwrite: true));
        Assert.Equal(Old.ToBytes(), File.ReadAllBytes(Beam));
    }

    private void AssertOnlyTheBeamStands() =>
        Assert.Equal(["beam.toml"], _folder.GetFileSystemInfos().Select(item => item.Name));
}
