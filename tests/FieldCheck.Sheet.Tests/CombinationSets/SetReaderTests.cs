using System.Collections.Immutable;
using FieldCheck.Sheet.CombinationSets;
using FieldCheck.Sheet.Presets;

namespace FieldCheck.Sheet.Tests.CombinationSets;

/// <summary>What a file of sets may not say, told at its place.</summary>
public sealed class SetReaderTests
{
    private const string Head = "title = \"own\"\n";

    private const string Row = "[[combination]]\nexpression = \"D + L\"\nfactors = { dead = 1.0, live = 1.0 }\n";

    [Fact]
    public void SoundFile_IsASet()
    {
        SetDocument? read = SetReader.Read("own.toml", Head + Row, out ImmutableArray<FileProblem> problems);

        Assert.Empty(problems);
        Assert.Equal(["dead", "live"], Assert.Single(read!.Combinations).Factors.Select(factor => factor.Name));
    }

    /// <summary>A case in two figures of one row would be in the beam twice.</summary>
    [Theory]
    [InlineData("{ live = 1.0, \"live or snow\" = 0.5 }", 42, "live or snow", "live")]
    [InlineData("{ \"snow or rain\" = 1.0, \"wind or Rain\" = 0.5 }", 52, "wind or Rain", "Rain")]
    [InlineData("{ live = 1.0, \"snow or rain\" = 0.5 }", 0, null, null)]
    public void CaseInTwoFiguresOfARow_IsTold(string factors, int column, string? at, string? twice) => Assert.Equal(
        at is null ? [] : [$"own.toml:4:{column}: combination[1].factors.\"{at}\": another figure of the row is called '{twice}' too"],
        Told($"[[combination]]\nexpression = \"D + L\"\nfactors = {factors}\n"));

    [Theory]
    [InlineData(
        "[[combination]]\nexpression = \"D\"\nfactors = {}\n",
        "own.toml:4:11: combination[1].factors: a row needs the factor of at least one case, as { dead = 1.2, live = 1.6 }")]
    [InlineData(
        "[[combination]]\nexpression = \"D\"\nfactors = { leading = 1.5 }\n",
        "own.toml:4:23: combination[1].factors.leading: leading and others are cases with psi values, and none stands in this file")]
    [InlineData(
        Row + "[[psi]]\npsi0 = 0.7\n",
        "own.toml:5:1: psi[1].case: psi belong to a case: needs its name, as \"live\"")]
    public void RowThatSaysTooLittle_IsTold(string rows, string told) => Assert.Equal([told], Told(rows));

    [Fact]
    public void BasisOfNoName_IsTold() => Assert.Equal(
        ["own.toml:3:10: combination[1].basis: expected service or factored, found 'limit'"],
        Told("[[combination]]\nbasis = \"limit\"\nexpression = \"D\"\nfactors = { dead = 1.0 }\n"));

    /// <summary>Two to the power of nine choices of the variable cases would make one row.</summary>
    [Fact]
    public void ChoicesOfTooManyVariableCases_AreTold() => Assert.Equal(
        ["own.toml:4:29: combination[1].factors.\"some others\": "
            + "some others is every choice of the variable cases: of at most 8, and 9 have psi values here"],
        Told("[[combination]]\nexpression = \"D\"\nfactors = { \"some others\" = 1.0 }\n"
            + string.Concat(Enumerable.Range(1, 9).Select(i => $"[[psi]]\ncase = \"case {i}\"\npsi0 = 0.7\n"))));

    private static string[] Told(string rows)
    {
        SetDocument? read = SetReader.Read("own.toml", Head + rows, out ImmutableArray<FileProblem> problems);
        Assert.Equal(problems.IsEmpty, read is not null);
        return [.. problems.Select(problem => problem.ToString())];
    }
}
