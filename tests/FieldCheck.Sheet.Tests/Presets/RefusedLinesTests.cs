using FieldCheck.Sheet.Presets;
using FieldCheck.Sheet.Presets.Toml;

namespace FieldCheck.Sheet.Tests.Presets;

/// <summary>Slips of a line or two: all that is told of each, place and words. Longer files stand in the folder Broken.</summary>
public sealed class RefusedLinesTests
{
    private const string NotBracketed = "a list or table is not closed, or a comma is missing in it";
    private const string NoText = "a text is written in quotation marks, as \"roller\"";

    [Theory]
    [InlineData("= 3\n", "2:1: expected a key before =")]
    [InlineData("title = 'a' b\n", "2:13: title: after a value only a comment may stand, behind a #")]
    [InlineData("ask = [\"title\"] b\n", "2:17: ask: after a value only a comment may stand, behind a #")]
    [InlineData("notes = '''\none\n", "2:9: notes: the three closing quotation marks are missing")]
    [InlineData("ask = [\n  \"title\"\n  \"notes\"\n]\n", "4:3: ask: " + NotBracketed)]
    [InlineData("[[ span ]]\nlength = x\n", "3:10: span[1].length: " + NoText)]
    [InlineData("[ section . a ]\ndepth = x\n", "3:9: section.a.depth: " + NoText)]
    [InlineData("ask = [", "2:8: ask: " + NotBracketed)]
    [InlineData("ask = [\n  \"title\",\n", "4:1: ask: " + NotBracketed)]
    [InlineData("ask = [\n  \"title\"\n", "4:1: ask: " + NotBracketed)]
    [InlineData("[[rolling]]\naxles = [\n  { offset = \"0 m\",\n", "5:1: rolling[1].axles: " + NotBracketed)]
    [InlineData("title = x\nask = [\n", "2:9: title: " + NoText, "4:1: ask: " + NotBracketed)]
    public void BrokenGrammar_IsToldOnce(string toml, params string[] expected) => AssertTold(toml, expected);

    [Theory]
    [InlineData("[a.b.c.d.e.f.g.h.i]\nx = 1\n", "2:2: a key has at most 8 parts, found 9")]
    [InlineData("title = \"a\"\n[title.b]\n", "3:2: title: already written at line 2; a key or table stands once")]
    [InlineData("[[combination]]\nfactors = { dead = 1.2\n}\n",
        "3:11: combination[1].factors: a table in { } stands on one line: TOML 1.0 takes no line break in it")]
    [InlineData("[[combination]]\nfactors = { dead = 1.2\n, live = 1.6, }\n",
        "3:11: combination[1].factors: a table in { } stands on one line: TOML 1.0 takes no line break in it")]
    [InlineData("[[combination]]\nfactors = {\n dead = 1.2,\n live = 1.6 }\n",
        "3:11: combination[1].factors: a table in { } stands on one line: TOML 1.0 takes no line break in it")]
    [InlineData("[[rolling]]\naxle = []\n", "3:1: rolling[1].axle: unknown key; did you mean axles?")]
    [InlineData("[record]\nformat = 1\n",
        "3:1: record.format: unknown key; format stands at the top of the file, before the first table")]
    public void WhatMayNotStand_IsToldOnce(string toml, string expected) => AssertTold(toml, expected);

    [Fact]
    public void KeyOfEightParts_IsNotTooLong()
    {
        FileProblem problem = Assert.Single(
            Assert.IsType<BeamFileReading.Refused>(BeamFileText.Read("f", "format = 1\na.b.c.d.e.f.g.h = 1\n")).Problems);

        Assert.StartsWith("unknown table; known here: ", problem.Text, StringComparison.Ordinal);
    }

    /// <summary>Half a surrogate pair: no file that is UTF-8 holds one, but a text may.</summary>
    [Fact]
    public void LostCharacterInAComment_IsTold() => AssertTold(
        "# \uD800\n",
        "2:3: a character was lost here, and U+FFFD stands for it; write it anew, or as \\uFFFD in \"…\"");

    [Fact]
    public void BracketsTooDeep_AreToldWhereTheyStand_AndTheDeepestThatReadAreNot() => AssertTold(
        $"title = \"{new string('a', 80)}\"\nask = {Nested(64)}\nrename = {Nested(65)}\n",
        "4:1: rename: brackets stand more than 64 deep inside one another");

    /// <summary>A few lines are looked at first: a list that goes on over them is no slip, and one behind them is found.</summary>
    [Fact]
    public void SlipsAroundALongList_AreTheOnlyOnesTold()
    {
        string list = $"ask = [\n{string.Concat(Enumerable.Repeat("  \"title\",\n", 70))}]\n";

        AssertTold(
            $"title = x\n{list}notes = y\n",
            "2:9: title: " + NoText,
            "75:9: notes: " + NoText);
    }

    [Fact]
    public void SlipsOfGrammar_AreTwentyAtMost() =>
        Assert.Equal(
            Enumerable.Range(1, 20),
            TomlGrammar.Problems(string.Concat(Enumerable.Repeat("title = x\n", 30))).Select(problem => problem.Line));

    private static string Nested(int deep) => new string('[', deep) + new string(']', deep);

    private static void AssertTold(string toml, params string[] expected)
    {
        BeamFileReading reading = BeamFileText.Read("f", "format = 1\n" + toml);

        Assert.Equal(
            expected.Select(line => "f:" + line),
            Assert.IsType<BeamFileReading.Refused>(reading).Problems.Select(problem => problem.ToString()));
    }
}
