using FieldCheck.Sheet.Presets;

namespace FieldCheck.Sheet.Tests.Presets;

public sealed class BeamFolderTests : IDisposable
{
    private const string Beam = "format = 1\n[[span]]\nlength = \"2 m\"\n";

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("fieldcheck-");

    public void Dispose() => _folder.Delete(recursive: true);

    [Theory]
    [InlineData("[package]\nname = \"other\"\n")]
    [InlineData("")]
    [InlineData("title = \"no beam\"\n")]
    [InlineData("[tool]\nformat = 1\n")]
    [InlineData("title = \"format = 1\"\n[spanning]\n")]
    public void TomlOfSomethingElse_IsPassedOver(string text)
    {
        Write("other.toml", text);
        Write("beam.toml", Beam);

        Assert.Equal(["beam.toml"], Names(BeamFolder.Search(_folder.FullName, 10)));
    }

    [Theory]
    [InlineData("format = 1\n[[span]\n", "a table is headed")]
    [InlineData("format = 2\n", "the file is of format 2; this program reads format 1")]
    [InlineData("[[span]]\nlength = \"2 m\"\n", "missing; expected format = 1")]
    [InlineData("\uFEFFformat = 1\nspan = 3\n", "expected rows")]
    [InlineData("# by hand\n  format=one", "")]
    [InlineData("format = 1\n[[span]]\nlenght = \"2 m\"\n", "unknown key; did you mean length?")]
    public void BeamThatDoesNotRead_IsAmongThemWithTheReason(string text, string reason)
    {
        Write("beam.toml", text);

        FoundBeam found = Assert.Single(BeamFolder.Search(_folder.FullName, 10).Files);

        BeamFileReading.Refused refused = Assert.IsType<BeamFileReading.Refused>(found.Reading);
        Assert.Contains(reason, refused.Problems[0].Text, StringComparison.Ordinal);
    }

    [Fact]
    public void LinkWhoseFileIsGone_IsAmongThem()
    {
        File.CreateSymbolicLink(Path.Combine(_folder.FullName, "link.toml"), Path.Combine(_folder.FullName, "gone.toml"));

        FoundBeam found = Assert.Single(BeamFolder.Search(_folder.FullName, 10).Files);

        Assert.Contains(
            "there is no such file",
            Assert.IsType<BeamFileReading.Refused>(found.Reading).Problems[0].Text,
            StringComparison.Ordinal);
    }

    [Fact]
    public void ManyFiles_AreReadOnlyAsFarAsTheNewestGo()
    {
        for (int file = 0; file < 12; file++)
        {
            string path = Write($"beam {file:D2}.toml", Beam);
            File.SetLastWriteTimeUtc(path, new DateTime(2025, 10, 1, 0, 0, 0, DateTimeKind.Utc).AddHours(-file));
        }

        BeamFolderSearch found = BeamFolder.Search(_folder.FullName, 5);

        Assert.Equal(["beam 00.toml", "beam 01.toml", "beam 02.toml", "beam 03.toml", "beam 04.toml"], Names(found));
        Assert.Equal(7, found.LeftOut);
    }

    [Fact]
    public void FolderThatIsNotThere_HoldsNone() =>
        Assert.Empty(BeamFolder.Search(Path.Combine(_folder.FullName, "none"), 5).Files);

    private string Write(string name, string text)
    {
        string path = Path.Combine(_folder.FullName, name);
        File.WriteAllText(path, text);
        return path;
    }

    private static IEnumerable<string> Names(BeamFolderSearch found) =>
        found.Files.Select(file => Path.GetFileName(file.Path));
}
