using System.Text;
using FieldCheck.Sheet.Presets;

namespace FieldCheck.Sheet.Tests.Presets;

public sealed class BeamFileOnDiskTests : IDisposable
{
    private const string Beam = "format = 1\ntitle = \"d\u00e9p\u00f4t\"\n[[span]]\nlength = \"2 m\"\n";

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("fieldcheck-");

    [Fact]
    public void File_OpensUnderTheNameItWasGiven()
    {
        string path = Path.Combine(_folder.FullName, "beam.toml");
        File.WriteAllText(path, Beam);

        BeamFileReading.Opened opened = Opened(BeamFileOnDisk.Open("job/beam.toml", path));

        Assert.Equal(new BeamFileText("job/beam.toml", Beam), opened.Origin);
        Assert.Equal("d\u00e9p\u00f4t", opened.Document.Title);
    }

    [Theory]
    [InlineData("beam.toml")]
    [InlineData("job", "beam.toml")]
    public void NoSuchFileOrFolder_IsRefused(params string[] names)
    {
        string path = Path.Combine([_folder.FullName, .. names]);

        Assert.Equal("beam.toml: there is no such file.", Refused(BeamFileOnDisk.Open("beam.toml", path)));
    }

    [Fact]
    public void Folder_IsRefused() =>
        Assert.Equal("job: it is a folder, not a file.", Refused(BeamFileOnDisk.Open("job", _folder.FullName)));

    [Fact]
    public void StreamThatGivesAByteAtATime_IsReadToItsEnd()
    {
        using Dripping stream = new(Encoding.UTF8.GetBytes(Beam));

        Assert.Equal(Beam, Opened(BeamFileOnDisk.Open("beam.toml", stream)).Origin.Text);
    }

    [Theory]
    [InlineData(1 << 20, true)]
    [InlineData((1 << 20) + 1, false)]
    public void OneMebibyte_IsTheMostThatOpens(int size, bool opens)
    {
        byte[] bytes = Encoding.UTF8.GetBytes(Beam);
        byte[] padded = [.. bytes, .. Enumerable.Repeat((byte)'\n', size - bytes.Length)];
        using MemoryStream stream = new(padded);

        Assert.Equal(opens, BeamFileOnDisk.Open("beam.toml", stream) is BeamFileReading.Opened);
    }

    [Fact]
    public void EndlessStream_IsRefused()
    {
        using Endless stream = new();

        Assert.Contains("1 MiB", Refused(BeamFileOnDisk.Open("beam.toml", stream)));
    }

    public void Dispose() => _folder.Delete(recursive: true);

    private static BeamFileReading.Opened Opened(BeamFileReading reading) =>
        Assert.IsType<BeamFileReading.Opened>(reading);

    private static string Refused(BeamFileReading reading) =>
        Assert.Single(Assert.IsType<BeamFileReading.Refused>(reading).Problems).ToString();

    private sealed class Dripping(byte[] bytes) : MemoryStream(bytes)
    {
        public override int Read(byte[] buffer, int offset, int count) =>
            base.Read(buffer, offset, Math.Min(count, 1));
    }

    private sealed class Endless : MemoryStream
    {
        public override int Read(byte[] buffer, int offset, int count)
        {
            Array.Fill(buffer, (byte)'a', offset, count);
            return count;
        }
    }
}
