using FieldCheck.Sheet.Presets;

namespace FieldCheck.Sheet.Tests.Presets;

public sealed class OpenedBeamsTests : IDisposable
{
    private static readonly DateTimeOffset Noon = new(2025, 10, 14, 12, 0, 0, TimeSpan.Zero);

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("fieldcheck-");

    private string Memory => Path.Combine(_folder.FullName, "state", "opened.toml");

    public void Dispose() => _folder.Delete(recursive: true);

    [Fact]
    public void Beams_AreReadBackTheLatestFirst()
    {
        OpenedBeam[] opened =
        [
            new("/job/\"north\" bay\\.toml", true, Noon),
            new("floor-joist", false, Noon.AddHours(1)),
            new("/job/梁\t.toml", true, Noon.AddHours(2)),
        ];
        foreach (OpenedBeam beam in opened)
        {
            Assert.True(OpenedBeams.Remember(Memory, beam));
        }

        Assert.Equal(opened.Reverse(), OpenedBeams.Read(Memory));
    }

    [Fact]
    public void BeamOpenedAgain_StandsOnce()
    {
        OpenedBeams.Remember(Memory, new("/a.toml", true, Noon));
        OpenedBeams.Remember(Memory, new("/b.toml", true, Noon.AddHours(1)));
        OpenedBeams.Remember(Memory, new("/a.toml", true, Noon.AddHours(2)));

        Assert.Equal(["/a.toml", "/b.toml"], OpenedBeams.Read(Memory).Select(beam => beam.Name));
    }

    [Fact]
    public void PresetAndFileOfOneName_AreTwo()
    {
        OpenedBeams.Remember(Memory, new("joist", true, Noon));
        OpenedBeams.Remember(Memory, new("joist", false, Noon));

        Assert.Equal(2, OpenedBeams.Read(Memory).Length);
    }

    [Fact]
    public void MoreThanAreKept_LoseTheOldest()
    {
        for (int beam = 0; beam <= OpenedBeams.Most; beam++)
        {
            OpenedBeams.Remember(Memory, new($"/{beam}.toml", true, Noon.AddMinutes(beam)));
        }

        IEnumerable<string> names = OpenedBeams.Read(Memory).Select(beam => beam.Name);

        Assert.Equal(Enumerable.Range(1, OpenedBeams.Most).Reverse().Select(beam => $"/{beam}.toml"), names);
    }

    [Theory]
    [InlineData("not = [ toml")]
    [InlineData("opened = 3\n")]
    [InlineData("[[opened]]\nfile = \"/a.toml\"\nat = \"yesterday\"\n")]
    [InlineData("[[opened]]\nat = \"2025-10-14T12:00:00Z\"\n")]
    [InlineData("\uFEFF\uFEFF")]
    public void BrokenFile_CountsAsEmptyAndIsWrittenAnew(string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(Memory)!);
        File.WriteAllText(Memory, text);
        Assert.Empty(OpenedBeams.Read(Memory));

        OpenedBeam beam = new("/b.toml", true, Noon);
        Assert.True(OpenedBeams.Remember(Memory, beam));
        Assert.Equal<OpenedBeam>([beam], OpenedBeams.Read(Memory));
    }

    [Fact]
    public void KeysOfALaterVersion_LoseNoRow()
    {
        OpenedBeams.Remember(Memory, new("/a.toml", true, Noon));
        File.AppendAllText(Memory, "pinned = true\n");

        Assert.Equal(["/a.toml"], OpenedBeams.Read(Memory).Select(beam => beam.Name));
    }

    [Fact]
    public void FolderThatCannotBeMade_IsRefused()
    {
        File.WriteAllText(Path.Combine(_folder.FullName, "state"), "");

        Assert.False(OpenedBeams.Remember(Memory, new("/a.toml", true, Noon)));
        Assert.Empty(OpenedBeams.Read(Memory));
    }
}
