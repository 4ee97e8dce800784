using System.Diagnostics;
using FieldCheck.Fuzz;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.Presets;

namespace FieldCheck.Sheet.Tests.Presets;

/// <summary>Files made to keep the program busy: refused, in few words, and without going over them again and again.</summary>
public sealed class LimitsTests
{
    // What took the square of its length would take hours here.
    private const int Size = BeamFileText.MostBytes / 2;

    private static readonly SectionCatalogue Catalogue = SectionCatalogue.BuiltIn();

    public static TheoryData<string> Names => [.. BusyFiles.Names];

    [Theory]
    [MemberData(nameof(Names))]
    public void File_IsRefusedInFewWords(string name)
    {
        string[] problems = InTime.Of(() => ProblemsOf(BusyFiles.Of(name, Size)));

        Assert.InRange(problems.Length, 1, FileProblem.Most);
        Assert.All(problems, problem => Assert.InRange(problem.Length, 1, 1000));
    }

    /// <summary>What took the square of its length would take 64 times. Of time see the benchmarks, "busy".</summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void FileEightTimesAsLong_TakesAtMostSixteenTimesTheMemory(string name)
    {
        long few = AllocatedFor(BusyFiles.Of(name, Size / 32));
        long many = AllocatedFor(BusyFiles.Of(name, Size / 4));

        Assert.InRange(many, 1, 16 * few);
    }

    // Rows are cheap to write, and each costs the solver something.
    [Theory]
    [InlineData("[[span]]\n")]
    [InlineData("[[load]]\n")]
    [InlineData("[[combination]]\n")]
    public void RowsBeyondTheMost_AreRefused_AndTheMostAreNot(string row)
    {
        string most = "format = 1\n" + string.Concat(Enumerable.Repeat(row, BeamFileText.MostRows));

        Assert.IsType<BeamFileReading.Opened>(BeamFileText.Read("most.toml", most));
        Assert.Contains(
            "a file has at most 10,000 rows",
            Assert.Single(Assert.IsType<BeamFileReading.Refused>(BeamFileText.Read("more.toml", most + row)).Problems).Text,
            StringComparison.Ordinal);
    }

    private static string[] ProblemsOf(string text) => BeamFileText.Read("a.toml", text) switch
    {
        BeamFileReading.Refused refused => [.. refused.Problems.Select(problem => problem.ToString())],
        BeamFileReading.Opened opened =>
        [
            .. opened.Origin.Locate(Calculation.Run(opened.Document, Catalogue, new BeamSolver()).Problems)
                .Select(problem => problem.ToString()),
        ],
        _ => throw new UnreachableException(),
    };

    // The least of some, for what is done only once is none of it.
    private static long AllocatedFor(string text) => Enumerable.Range(0, 3).Min(_ =>
    {
        long before = GC.GetAllocatedBytesForCurrentThread();
        ProblemsOf(text);
        return GC.GetAllocatedBytesForCurrentThread() - before;
    });
}
