using FieldCheck.Sheet.Presets;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Tests.Presets;

public sealed class BeamFileOnDiskTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("fieldcheck-");

    [Fact]
    public void Text_IsReadAsItStands()
    {
        File.WriteAllText(Beam, "title = \"d\u00e9p\u00f4t\"\r\n");

        Assert.Equal("title = \"d\u00e9p\u00f4t\"\r\n", Accepted(BeamFileOnDisk.Read("beam.toml", Beam)));
    }

    [Fact]
    public void ByteOrderMark_IsNoPartOfTheText() =>
        Assert.Equal("a", Accepted(BeamFileOnDisk.Read(new MemoryStream([0xef, 0xbb, 0xbf, 0x61]))));

    [Fact]
    public void NoSuchFile_IsSaidByTheNameItWasGiven() =>
        Assert.Equal("there is no file beam.toml.", Refused(BeamFileOnDisk.Read("beam.toml", Beam)));

    [Fact]
    public void NoSuchFolder_IsSaidInTheSameWay() =>
        Assert.Equal(
            "there is no file job/beam.toml.",
            Refused(BeamFileOnDisk.Read("job/beam.toml", Path.Combine(_folder.FullName, "job", "beam.toml"))));

    [Fact]
    public void Folder_IsRefused() =>
        Assert.Equal("it is a folder, not a file.", Refused(BeamFileOnDisk.Read(".", _folder.FullName)));

    [Fact]
    public void LongestText_IsRead() =>
        Assert.Equal(1 << 20, Accepted(BeamFileOnDisk.Read(new MemoryStream(Letters(1 << 20)))).Length);

    [Fact]
    public void OneByteMore_IsRefused() =>
        Assert.Equal(
            "it is longer than 1 MiB.", Refused(BeamFileOnDisk.Read(new MemoryStream(Letters((1 << 20) + 1)))));

    [Fact]
    public void StreamThatGivesAByteAtATime_IsReadToItsEnd() =>
        Assert.Equal("span", Accepted(BeamFileOnDisk.Read(new Dripping("span"u8.ToArray()))));

    [Fact]
    public void TextOfAnotherEncoding_IsRefusedWhereItBreaks() =>
        Assert.Equal(
            "it is not UTF-8 text: byte 3 does not fit.",
            Refused(BeamFileOnDisk.Read(new MemoryStream([0x61, 0x62, 0xe9, 0x22]))));

    public void Dispose() => _folder.Delete(recursive: true);

    private string Beam => Path.Combine(_folder.FullName, "beam.toml");

    private static byte[] Letters(int count) => [.. Enumerable.Repeat((byte)'a', count)];

    private static string Accepted(Reading<string> reading) => Assert.IsType<Reading<string>.Accepted>(reading).Value;

    private static string Refused(Reading<string> reading) => Assert.IsType<Reading<string>.Refused>(reading).Text;

    private sealed class Dripping(byte[] bytes) : MemoryStream(bytes)
    {
        public override int Read(byte[] buffer, int offset, int count) => base.Read(buffer, offset, Math.Min(count, 1));

        public override int Read(Span<byte> buffer) => base.Read(buffer[..Math.Min(buffer.Length, 1)]);
    }
}
