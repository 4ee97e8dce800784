using System.Text.Json.Nodes;

namespace FieldCheck.Tests.CommandLine;

/// <summary>The licences that are handed over with the program.</summary>
public sealed class LicensesTests : IDisposable
{
    private readonly Surroundings _around = new();

    [Fact]
    public void EveryPackageInside_IsNamed()
    {
        Assert.Equal(0, _around.Run("--licenses"));
        string[] packages = [.. Packages()];

        Assert.Contains("Terminal.Gui", packages);
        Assert.All(
            packages.Select(name => name.StartsWith("Microsoft.Extensions.", StringComparison.Ordinal) ? "Microsoft.Extensions" : name),
            name => Assert.Contains(name, _around.Written));
    }

    [Theory]
    [InlineData("Copyright (c) 2026 the FieldCheck contributors")]
    [InlineData("THE SOFTWARE IS PROVIDED \"AS IS\"")]
    [InlineData("2. Redistributions in binary form must reproduce the above copyright notice")]
    [InlineData("Bitstream Vera is a trademark of Bitstream, Inc.")]
    [InlineData("https://creativecommons.org/licenses/by/4.0/")]
    public void EveryLicence_IsThere(string words)
    {
        _around.Run("--licenses");

        Assert.Contains(words, _around.Written);
    }

    [Fact]
    public void Text_IsAsciiOfEightyColumns()
    {
        _around.Run("--licenses");

        Assert.All(_around.Written.Split('\n'), line =>
        {
            Assert.InRange(line.Length, 0, 80);
            Assert.All(line, c => Assert.InRange(c, ' ', '~'));
        });
    }

    public void Dispose() => _around.Dispose();

    // All that the program was built with, as the host that starts it reads it.
    private static IEnumerable<string> Packages() => JsonNode
        .Parse(File.ReadAllText(Path.ChangeExtension(typeof(Program).Assembly.Location, ".deps.json")))!["libraries"]!.AsObject()
        .Where(library => (string?)library.Value!["type"] == "package")
        .Select(library => library.Key.Split('/')[0]);
}
