using System.Text.Json.Nodes;

namespace FieldCheck.Tests.CommandLine;

public sealed class CheckCommandTests : IDisposable
{
    private const string Bench = """
        format = 1
        title  = "Bench"
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

    private const string Swing = """
        format = 1
        [[span]]
        length = "4 m"
        [[support]]
        joint = 0
        kind  = "pin"
        """;

    private readonly Surroundings _around = new();

    [Fact]
    public void BeamThatStands_GoesToStandardOutputWithStatusNought()
    {
        _around.Write("bench.toml", Bench);

        int status = _around.Run("check", "bench.toml");

        Assert.Equal((0, ""), (status, _around.Complaints));
        Assert.Contains("Bench", _around.Written);
        Assert.Contains("7.50 kN", _around.Written);
    }

    [Fact]
    public void KeyThatIsUnknownAndCellsThatDoNotRead_AreToldTogether()
    {
        _around.Write("bench.toml", Bench
            .Replace("title  =", "titel  =", StringComparison.Ordinal)
            .Replace("\"10 kN\"", "\"10 kM\"", StringComparison.Ordinal)
            .Replace("length = \"4 m\"", "lenght = \"4 m\"", StringComparison.Ordinal)
            .Replace("kind  = \"roller\"", "kind  = \"rolling\"", StringComparison.Ordinal));

        Assert.Equal(2, _around.Run("check", "bench.toml"));

        // The length that is missing is the one misspelt, and not told twice.
        string[] told = _around.Complaints.TrimEnd().Split('\n');
        Assert.Equal(
            ["bench.toml:2:", "bench.toml:4:", "bench.toml:10:", "bench.toml:14:"],
            told.Select(line => string.Concat(line.Split(':').Take(2).Select(part => part + ":"))));
        Assert.Contains("did you mean length?", told[1]);
        Assert.Contains("load[1].force", told[3]);
    }

    [Fact]
    public void Working_StandsBelowTheCheck()
    {
        _around.Write("bench.toml", Bench);

        Assert.Equal(0, _around.Run("check", "bench.toml", "--working"));

        string check = _around.Written;
        int heading = check.IndexOf("\nWORKING BY HAND\n", StringComparison.Ordinal);
        Assert.True(heading > check.IndexOf("BEFORE YOU USE THESE FIGURES", StringComparison.Ordinal));
        Assert.Contains("1. The beam set free", check[heading..], StringComparison.Ordinal);
        Assert.Contains("they agree", check[heading..], StringComparison.Ordinal);
    }

    [Fact]
    public void Json_IsOneObjectOnStandardOutput()
    {
        _around.Write("bench.toml", Bench);

        int status = _around.Run("check", "bench.toml", "--json");

        Assert.Equal((0, ""), (status, _around.Complaints));
        JsonNode answer = JsonNode.Parse(_around.Written)!;
        Assert.Equal("bench.toml", (string?)answer["file"]);
        Assert.Equal(7500, (double)answer["combinations"]![0]!["reactions"]![0]!["vertical_N"]!, 1e-6);
    }

    [Fact]
    public void SeveralFiles_AreOneLineEachInTheOrderGiven_AndTheLargestStatusCounts()
    {
        _around.Write("bench.toml", Bench);
        _around.Write("swing.toml", Swing);

        int status = _around.Run("check", "swing.toml", "nowhere.toml", "bench.toml", "--json");

        Assert.Equal(3, status);
        JsonNode[] lines = [.. _around.Written.TrimEnd('\n').Split('\n').Select(line => JsonNode.Parse(line)!)];
        Assert.Equal(["swing.toml", "nowhere.toml", "bench.toml"], lines.Select(line => (string)line["file"]!));
        Assert.Equal(["mechanism", "input", null], lines.Select(line => (string?)line["error"]?["kind"]));
    }

    [Fact]
    public void SeveralFilesAsText_AreAllChecked()
    {
        _around.Write("one.toml", Bench.Replace("Bench", "First bench", StringComparison.Ordinal));
        _around.Write("two.toml", Bench.Replace("Bench", "Second bench", StringComparison.Ordinal));

        Assert.Equal(0, _around.Run("check", "one.toml", "two.toml"));

        Assert.Matches(@"(?s)First bench.*\n\n.*Second bench", _around.Written);
    }

    [Fact]
    public void Dash_ReadsStandardInput()
    {
        using Surroundings piped = new() { Input = Bench };

        Assert.Equal(0, piped.Run("check", "-", "--json"));

        Assert.Equal("Bench", (string?)JsonNode.Parse(piped.Written)!["title"]);
    }

    [Fact]
    public void NoSuchFile_IsSaidOnStandardErrorAlone()
    {
        int status = _around.Run("check", "nowhere.toml");

        Assert.Equal((2, "", "nowhere.toml: there is no such file.\n"), (status, _around.Written, _around.Complaints));
    }

    [Fact]
    public void UnusableFile_NamesEveryPlaceOnStandardError()
    {
        _around.Write("bench.toml", Bench
            .Replace("\"10 kN\"", "\"10 kg/m\"", StringComparison.Ordinal)
            .Replace("\"4 m\"", "\"4,5 m\"", StringComparison.Ordinal));

        int status = _around.Run("check", "bench.toml");

        Assert.Equal((2, ""), (status, _around.Written));
        string[] lines = _around.Complaints.TrimEnd('\n').Split('\n');
        Assert.StartsWith("bench.toml:4:11: span[1].length: ", lines[0], StringComparison.Ordinal);
        Assert.Contains(lines, line => line.StartsWith("bench.toml:14:10: load[1].force: ", StringComparison.Ordinal));
    }

    [Fact]
    public void UnusableFileAsJson_IsAnErrorObjectWithThosePlaces()
    {
        _around.Write("bench.toml", Bench.Replace("\"10 kN\"", "\"10 furlongs\"", StringComparison.Ordinal));

        int status = _around.Run("check", "bench.toml", "--json");

        Assert.Equal(2, status);
        JsonNode error = JsonNode.Parse(_around.Written)!["error"]!;
        Assert.Equal("input", (string?)error["kind"]);
        JsonNode message = Assert.Single(error["messages"]!.AsArray())!;
        Assert.Equal((14, 13), ((int)message["line"]!, (int)message["column"]!));
        Assert.Equal("load[1].force", (string?)message["key"]);
    }

    [Theory]
    [InlineData("A + 1 m", 1.0)]
    [InlineData("mid 1", 2.0)]
    [InlineData("end - 1 ft", 4 - 0.3048)]
    [InlineData("b", 4.0)]
    public void Place_IsReadAsInTheFile(string place, double expected)
    {
        _around.Write("bench.toml", Bench);

        Assert.Equal(0, _around.Run("check", "bench.toml", "--json", "--at", place));

        JsonNode at = JsonNode.Parse(_around.Written)!["combinations"]![0]!["at"]![0]!;
        Assert.Equal(expected, (double)at["x_m"]!, 1e-12);
        Assert.Equal(place, (string?)at["place"]);
    }

    [Fact]
    public void PlaceInOtherUnitsThanTheBeam_StandsExactlyOnTheJump()
    {
        // 3 ft + 0.0856 m is 1 m, but its double need not be the one of 1000 mm.
        _around.Write("bench.toml", Bench.Replace("\"1 m\"", "\"3 ft + 0.0856 m\"", StringComparison.Ordinal));

        Assert.Equal(0, _around.Run("check", "bench.toml", "--json", "--at", "1000 mm"));

        JsonNode at = JsonNode.Parse(_around.Written)!["combinations"]![0]!["at"]![0]!;
        Assert.Equal(7500, (double)at["shear_left_N"]!, 1e-6);
        Assert.Equal(-2500, (double)at["shear_right_N"]!, 1e-6);
    }

    [Theory]
    [InlineData("5 m", "bench.toml: --at '5 m': this is off the beam, which is 4.00 m long.\n")]
    [InlineData("A - 1 mm", "bench.toml: --at 'A - 1 mm': this is off the beam, which is 4.00 m long.\n")]
    public void PlaceOffTheBeam_IsRefused(string place, string expected)
    {
        _around.Write("bench.toml", Bench);

        int status = _around.Run("check", "bench.toml", "--at", place);

        Assert.Equal((2, "", expected), (status, _around.Written, _around.Complaints));
    }

    [Theory]
    [InlineData("1")]
    [InlineData("Z + 1 m")]
    [InlineData("joint 9")]
    public void PlaceThatDoesNotRead_IsRefusedByItsName(string place)
    {
        _around.Write("bench.toml", Bench);

        int status = _around.Run("check", "bench.toml", "--at", place);

        Assert.Equal((2, ""), (status, _around.Written));
        Assert.StartsWith($"bench.toml: --at '{place}': ", _around.Complaints, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("us", "1.686 kip up", "7.50 kN up")]
    [InlineData("si", "7.50 kN up", "1.686 kip up")]
    public void Units_OverrideWhatTheFileAsksFor(string units, string shown, string absent)
    {
        _around.Write("bench.toml", Bench);

        Assert.Equal(0, _around.Run("check", "bench.toml", "--units", units));

        Assert.Contains(shown, _around.Written);
        Assert.DoesNotContain(absent, _around.Written);
    }

    [Fact]
    public void Mechanism_IsAnAnswerWithItsOwnStatus()
    {
        _around.Write("swing.toml", Swing);

        int status = _around.Run("check", "swing.toml");

        Assert.Equal((3, ""), (status, _around.Complaints));
        Assert.Contains("CAN MOVE", _around.Written);
    }

    [Fact]
    public void Uplift_DoesNotHold()
    {
        _around.Write("bench.toml", Bench
            .Replace("joint = 1", "at = \"3 m\"", StringComparison.Ordinal)
            .Replace("at    = \"1 m\"", "at = \"end\"", StringComparison.Ordinal));

        int status = _around.Run("check", "bench.toml", "--json");

        Assert.Equal(1, status);
        Assert.Contains(
            JsonNode.Parse(_around.Written)!["messages"]!.AsArray(),
            message => (string?)message!["code"] == "uplift");
    }

    [Fact]
    public void Plain_HasNoDrawing()
    {
        _around.Write("bench.toml", Bench);

        Assert.Equal(0, _around.Run("check", "bench.toml", "--plain"));

        Assert.Contains("Support A, at 0.00 metres: 7.50 kilonewtons up.\n", _around.Written);
        Assert.DoesNotContain("===", _around.Written);
        Assert.DoesNotContain("  ", _around.Written);
    }

    [Fact]
    public void Width_IsThatOfTheTerminal()
    {
        using Surroundings narrow = new() { Width = 50 };
        narrow.Write("bench.toml", Bench);

        Assert.Equal(0, narrow.Run("check", "bench.toml"));

        Assert.All(narrow.Written.Split('\n'), line => Assert.InRange(line.Length, 0, 50));
    }

    public void Dispose() => _around.Dispose();
}
