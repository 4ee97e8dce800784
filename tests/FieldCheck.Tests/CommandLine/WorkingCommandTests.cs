namespace FieldCheck.Tests.CommandLine;

public sealed class WorkingCommandTests : IDisposable
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

    private const string TwoCombinations = Bench + """

        [[combination]]
        name    = "half"
        factors = { live = 0.5 }
        [[combination]]
        name    = "whole"
        factors = { live = 1.0 }
        """;

    private readonly Surroundings _around = new();

    [Fact]
    public void BeamThatStands_GoesToStandardOutputWithStatusNought()
    {
        _around.Write("bench.toml", Bench);

        int status = _around.Run("working", "bench.toml");

        Assert.Equal((0, ""), (status, _around.Complaints));
        Assert.StartsWith("Working by hand: Bench\nfile: bench.toml\n\n", _around.Written, StringComparison.Ordinal);
        Assert.DoesNotContain("UNDER", _around.Written, StringComparison.Ordinal);
    }

    [Fact]
    public void Dash_ReadsStandardInput()
    {
        using Surroundings piped = new() { Input = Bench };

        Assert.Equal(0, piped.Run("working", "-"));

        Assert.StartsWith("Working by hand: Bench\n\n", piped.Written, StringComparison.Ordinal);
    }

    [Fact]
    public void SeveralCombinations_AreWorkedInTurnUnderTheirNames()
    {
        _around.Write("bench.toml", TwoCombinations);

        Assert.Equal(0, _around.Run("working", "bench.toml"));

        Assert.Equal(["UNDER half (service, combination 1 of 2)", "UNDER whole (service, combination 2 of 2)"], Headings());
    }

    [Theory]
    [InlineData("whole")]
    [InlineData("WHOLE")]
    [InlineData("2")]
    public void CombinationAskedFor_StandsAlone(string asked)
    {
        _around.Write("bench.toml", TwoCombinations);

        Assert.Equal(0, _around.Run("working", "bench.toml", "--combination", asked));

        Assert.Equal(["UNDER whole (service, combination 2 of 2)"], Headings());
    }

    [Theory]
    [InlineData("bench.toml: --combination 'wind': there is no such combination; there is half, whole.", "--combination", "wind")]
    [InlineData("bench.toml: --combination '3': there is no such combination; there is half, whole.", "--combination", "3")]
    [InlineData("bench.toml: --about 'C': no support is called C", "--about", "C")]
    [InlineData("bench.toml: --about '9 m': this is off the beam, which is 4.00 m long.", "--about", "9 m")]
    [InlineData("bench.toml: --about '1': ", "--about", "1")]
    public void WhatIsNotThere_IsSaidWithStatusTwo(string said, params string[] words)
    {
        _around.Write("bench.toml", TwoCombinations);

        int status = _around.Run(["working", "bench.toml", .. words]);

        Assert.Equal((2, ""), (status, _around.Written));
        Assert.StartsWith(said, _around.Complaints, StringComparison.Ordinal);
    }

    [Fact]
    public void UnusableFile_NamesEveryPlaceOnStandardError()
    {
        _around.Write("bench.toml", Bench.Replace("\"10 kN\"", "\"10 kg/m\"", StringComparison.Ordinal));

        int status = _around.Run("working", "bench.toml");

        Assert.Equal((2, ""), (status, _around.Written));
        Assert.StartsWith("bench.toml:14:10: load[1].force: ", _around.Complaints, StringComparison.Ordinal);
    }

    [Fact]
    public void BeamThatCanMove_HasStatusThree()
    {
        _around.Write("swing.toml", Bench.Replace("kind  = \"roller\"", "kind  = \"guide\"", StringComparison.Ordinal)
            .Replace("kind  = \"pin\"", "kind  = \"guide\"", StringComparison.Ordinal));

        Assert.Equal(3, _around.Run("working", "swing.toml"));

        Assert.Equal("", _around.Complaints);
    }

    /// <summary>The stated figure cannot be right, and a check says so by its status; a working asks for nothing to hold.</summary>
    [Fact]
    public void WhatACheckWouldNotLetPass_IsNoMatterToAWorking()
    {
        _around.Write("bench.toml", Bench + "\n[[stated]]\nsupport = \"A\"\nvertical = \"900 kN\"\n");

        Assert.Equal((1, 0), (_around.Run("check", "bench.toml"), _around.Run("working", "bench.toml")));
    }

    [Theory]
    [InlineData(30)]
    [InlineData(80)]
    [InlineData(300)]
    public void Lines_FitTheWidth(int width)
    {
        using Surroundings around = new() { Width = width };
        around.Write("bench.toml", Bench.Replace("Bench", new string('b', 70) + " " + new string('c', 90), StringComparison.Ordinal));

        Assert.Equal(0, around.Run("working", "bench.toml"));

        Assert.All(around.Written.Split('\n'), line => Assert.InRange(line.Length, 0, Math.Clamp(width, 40, 120)));
    }

    [Fact]
    public void Plain_SetsNothingInColumns()
    {
        _around.Write("bench.toml", TwoCombinations);

        Assert.Equal(0, _around.Run("working", "bench.toml", "--plain"));

        Assert.All(_around.Written.TrimEnd('\n').Split('\n'), line =>
        {
            Assert.NotEmpty(line);
            Assert.DoesNotContain("  ", line, StringComparison.Ordinal);
            Assert.Equal(line.Trim(), line);
        });
    }

    public void Dispose() => _around.Dispose();

    private string[] Headings() =>
        [.. _around.Written.Split('\n').Where(line => line.StartsWith("UNDER", StringComparison.Ordinal))];
}
