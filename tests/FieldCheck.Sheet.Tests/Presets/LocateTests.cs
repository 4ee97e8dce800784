using FieldCheck.Sheet.Presets;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Tests.Presets;

public sealed class LocateTests
{
    private const string Text = """"
        format = 1
        title = "𝄞 beam"   # a sign outside the first plane
        [[span]]
        length = "12 fx"
        [[span]]
          to     = '4 m'
        [[load]]
        kind = "point"
        at = "A \t+ 4 ft"
        notes = 1
        [section.bearer]
        depth = 12
        plies = 1_0
        [material."C 24"]
        factors = { dry = 1.0, wet = "x" }
        [[rolling]]
        axles = [ { offset = "0 m" },
          { offset = "1 mm", force = "ox" } ]
        [record]
        job = """
            seven"""
        location = '''yard'''
        """";

    private static readonly BeamFileText File = new("b.toml", Text);

    [Theory]
    [InlineData("title", 2, 2, 11)]
    [InlineData("span[1].length", 3, 4, 14)]
    [InlineData("span[1].length", 99, 4, 16)]
    [InlineData("span[2].to", 0, 6, 13)]
    [InlineData("load[1].at", 4, 9, 6)]
    [InlineData("section.bearer.depth", 1, 12, 10)]
    [InlineData("section.bearer.plies", 1, 13, 9)]
    [InlineData("material.\"C 24\".factors.wet", 0, 15, 31)]
    [InlineData("rolling[1].axles[2].force", 1, 18, 32)]
    [InlineData("record.job", 6, 20, 7)]
    [InlineData("record.location", 2, 22, 12)]
    public void ProblemInACell_StandsAtItsCharacter(string key, int offset, int line, int column) =>
        Assert.Equal(new FileProblem("b.toml", line, column, key, "wrong"), File.Locate(new Problem(key, "wrong", offset)));

    [Theory]
    [InlineData("span[2].length", 5, 1)]
    [InlineData("load[1].force", 7, 1)]
    [InlineData("load[1]", 7, 1)]
    [InlineData("section.bearer.width", 11, 1)]
    [InlineData("section.bearer", 11, 1)]
    [InlineData("section.joist", 11, 2)]
    [InlineData("material.\"C 24\".factors.dry.x", 15, 19)]
    [InlineData("rolling[1].axles[1].force", 17, 11)]
    [InlineData("rolling[1].axles[3]", 17, 9)]
    [InlineData("support", 1, 1)]
    [InlineData("limits.rules", 1, 1)]
    [InlineData("", 1, 1)]
    [InlineData("no path[", 1, 1)]
    public void WhatIsMissing_StandsAtTheHeaderOfWhatIsThere(string key, int line, int column) =>
        Assert.Equal(new FileProblem("b.toml", line, column, key, "missing"), File.Locate(new Problem(key, "missing", 7)));

    [Fact]
    public void ManyProblems_AreToldByLine_AndTwentyAtMost()
    {
        BeamFileText text = new("m.toml", "format = 1\n" + string.Concat(Enumerable.Repeat("[[hinge]]\n", 30)));
        IEnumerable<Problem> problems = Enumerable.Range(1, 30).Reverse().Select(row => new Problem($"hinge[{row}].at", "missing"));

        Assert.Equal(Enumerable.Range(2, 20), text.Locate(problems).Select(problem => problem.Line));
    }
}
