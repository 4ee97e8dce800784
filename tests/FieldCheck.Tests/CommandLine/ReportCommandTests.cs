using System.Security.Cryptography;

namespace FieldCheck.Tests.CommandLine;

public sealed class ReportCommandTests : IDisposable
{
    private const string Bench = """
        format = 1
        title  = "Bench"
        [record]
        date   = "1 May"
        [[span]]
        length = "4 m"
        [[support]]
        joint = 0
        kind  = "pin"
        [[support]]
        joint = 1
        kind  = "roller"
        [[load]]
        kind  = "point"
        at    = "1 m"
        force = "10 kN"
        """;

    private readonly Surroundings _around = new();

    private string Out => Path.Combine(_around.Folder.FullName, "bench.txt");

    [Fact]
    public void BeamThatStands_IsWrittenWithItsDigest()
    {
        string path = _around.Write("bench.toml", Bench);

        int status = _around.Run("report", "bench.toml", "--output", "bench.txt");

        Assert.Equal((0, "", "record: bench.txt\n"), (status, _around.Complaints, _around.Written));
        string text = File.ReadAllText(Out);
        Assert.StartsWith("CHECK OF A BEAM: BENCH\n", text, StringComparison.Ordinal);
        Assert.Contains($"SHA-256      {Convert.ToHexStringLower(SHA256.HashData(File.ReadAllBytes(path)))}\n", text, StringComparison.Ordinal);
        Assert.Contains("file         bench.toml\n", text, StringComparison.Ordinal);
        Assert.Contains("date         1 May\n", text, StringComparison.Ordinal);
        Assert.Contains("A        0.00 m  7.50 kN up", text, StringComparison.Ordinal);
    }

    [Fact]
    public void DateAndShort_AreTaken()
    {
        _around.Write("bench.toml", Bench);

        _around.Run("report", "bench.toml", "--output", "bench.txt", "--date", "2 June", "--short");

        string text = File.ReadAllText(Out);
        Assert.Contains("date         2 June\n", text, StringComparison.Ordinal);
        Assert.Contains("WORKING BY HAND, IN SHORT", text, StringComparison.Ordinal);
    }

    [Fact]
    public void FileThatIsThere_IsLeftUnlessForced()
    {
        _around.Write("bench.toml", Bench);
        _around.Write("bench.txt", "mine");

        int refused = _around.Run("report", "bench.toml", "--output", "bench.txt");

        Assert.Equal(2, refused);
        Assert.Equal("bench.txt: a file of that name is there; --force writes over it.\n", _around.Complaints);
        Assert.Equal("mine", File.ReadAllText(Out));
        Assert.Equal(0, _around.Run("report", "bench.toml", "--output", "bench.txt", "--force"));
        Assert.StartsWith("CHECK OF A BEAM", File.ReadAllText(Out), StringComparison.Ordinal);
    }

    [Fact]
    public void NameThatWindowsDoesNotTake_IsWrittenElsewhereAndTold()
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        _around.Write("bench.toml", Bench);

        Assert.Equal(0, _around.Run("report", "bench.toml", "--output", "bay 3:1.txt"));
        Assert.Equal("bay 3:1.txt: saved, but: Windows takes no : in the name of a file.\n", _around.Complaints);
        Assert.True(File.Exists(Path.Combine(_around.Folder.FullName, "bay 3:1.txt")));
    }

    [Theory]
    [InlineData("no/such/folder/a.txt", "no/such/folder/a.txt: there is no such folder.\n")]
    [InlineData("folder.md", "folder.md: it is a folder, not a file.\n")]
    public void WhatCannotBeWritten_IsSaid(string output, string said)
    {
        _around.Write("bench.toml", Bench);
        _around.Folder.CreateSubdirectory("folder.md");

        Assert.Equal(2, _around.Run("report", "bench.toml", "--output", output));
        Assert.Equal(said, _around.Complaints);
    }

    [Fact]
    public void FileThatDoesNotRead_WritesNothing()
    {
        _around.Write("bench.toml", Bench.Replace("4 m", "four", StringComparison.Ordinal));

        Assert.Equal(2, _around.Run("report", "bench.toml", "--output", "bench.txt"));
        Assert.Contains("bench.toml:6:", _around.Complaints, StringComparison.Ordinal);
        Assert.False(File.Exists(Out));
    }

    [Fact]
    public void BeamThatCanMove_IsRecordedWithItsStatus()
    {
        _around.Write("bench.toml", Bench.Replace("joint = 1\nkind  = \"roller\"", "joint = 0\nkind = \"roller\"", StringComparison.Ordinal)
            .Replace("[[support]]\njoint = 0\nkind = \"roller\"\n", "", StringComparison.Ordinal));

        Assert.Equal(3, _around.Run("report", "bench.toml", "--output", "bench.txt"));
        Assert.Contains("CAN MOVE: no reaction can be told.", File.ReadAllText(Out), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("txt")]
    [InlineData("md")]
    [InlineData("html")]
    public void SameInput_SameBytes(string ending)
    {
        _around.Write("bench.toml", Bench);

        _around.Run("report", "bench.toml", "--output", $"one.{ending}");
        _around.Run("report", "bench.toml", "--output", $"two.{ending}");

        Assert.Equal(
            File.ReadAllBytes(Path.Combine(_around.Folder.FullName, $"one.{ending}")),
            File.ReadAllBytes(Path.Combine(_around.Folder.FullName, $"two.{ending}")));
    }

    [Fact]
    public void Dash_ReadsStandardInputAndSaysSo()
    {
        using Surroundings piped = new() { Input = Bench };

        Assert.Equal(0, piped.Run("report", "-", "--output", "bench.txt"));

        Assert.Contains(
            "file         standard input\n",
            File.ReadAllText(Path.Combine(piped.Folder.FullName, "bench.txt")),
            StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("bench.txt")]
    [InlineData("./bench.txt")]
    [InlineData("link.txt")]
    public void BeamFileItself_IsNeverWrittenOver(string output)
    {
        using Surroundings around = new();
        around.Write("bench.txt", Bench);
        string beam = Path.Combine(around.Folder.FullName, "bench.txt");
        File.CreateSymbolicLink(Path.Combine(around.Folder.FullName, "link.txt"), beam);

        Assert.Equal(2, around.Run("report", "bench.txt", "--output", output, "--force"));

        Assert.Equal($"{output}: this is the beam file itself; name another file for the record.\n", around.Complaints);
        Assert.Equal(Bench, File.ReadAllText(beam));
    }

    public void Dispose() => _around.Dispose();
}
