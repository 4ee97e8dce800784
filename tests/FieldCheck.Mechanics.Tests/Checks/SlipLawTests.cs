using System.Globalization;
using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Tests.Checks.Slips;
using FieldCheck.Mechanics.Tests.Laws;

namespace FieldCheck.Mechanics.Tests.Checks;

/// <summary>
/// Laws over random beams of 1 to 4 spans with 2 to 5 loads, figures rounded to three digits. The benchmarks draw many
/// more and write what they find into docs/verification.md.
/// </summary>
public sealed class SlipLawTests(SlipLawTests.Counted counted) : IClassFixture<SlipLawTests.Counted>
{
    private const int Seed = 7;

    private static readonly int Beams = Math.Min(40, Law.Draws);
    private static readonly int Errors = 15 * Beams;

    // A number that is fitted may miss its mark where a figure only touches what is stated.
    [Fact]
    public void TrueSlip_IsTold() => Assert.All(
        counted.Tallies,
        one => Assert.InRange(one.Value.Told, IsFitted(one.Key) ? Beams - 2 : Beams, Beams));

    [Fact]
    public void TrueSlip_IsAlone_TiesAndFittedOnesApart()
    {
        SlipTally[] tallies = [.. counted.Tallies.Where(one => !IsFitted(one.Key)).Select(one => one.Value)];

        Assert.InRange((double)tallies.Sum(tally => tally.Alone) / tallies.Sum(tally => tally.Drawn), 0.95, 1);
    }

    [Theory]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    public void UnrelatedErrors_AreClaimedByAtMostOneInAHundred(int figures) =>
        Assert.InRange(ErrorTally.Of(figures, Errors, digits: 3, Seed).Rate, 0, 0.01);

    [Fact]
    public void CorrectFigures_AreNeverCalledWrongOrExplained()
    {
        CorrectTally tally = CorrectTally.Of(Errors, Seed);

        Assert.Equal((Errors, 0, 0), (tally.Drawn, tally.Wrong, tally.Explained));
    }

    [Theory]
    [InlineData(3)]
    [InlineData(2)]
    [InlineData(1)]
    public void FalseClaims_AreThoseOfTheSimulation(int digits)
    {
        // The row as the benchmarks wrote it: | 3 digits | 37.89 % | 0.41 % | ...
        string row = File.ReadLines(Path.Combine(Repository(), "docs", "verification.md"))
            .Single(line => line.StartsWith($"| {digits} digit", StringComparison.Ordinal));
        double[] measured =
        [
            .. row.Split('|')[2..7].Select(cell => double.Parse(cell.Replace("%", ""), CultureInfo.InvariantCulture)),
        ];

        Assert.Equal(measured, Enumerable.Range(1, 5).Select(count => Math.Round(100 * FalseClaims.Rate(count, digits), 2)));
        Assert.Equal(FalseClaims.Rate(5, digits), FalseClaims.Rate(9, digits));
        Assert.Equal(FalseClaims.Rate(2, 3), FalseClaims.Rate(2, 6));
    }

    private static bool IsFitted(string name) => name.EndsWith("(fitted)", StringComparison.Ordinal);

    /// <summary>What all tests of one run look at.</summary>
    public sealed class Counted
    {
        private readonly Lazy<Dictionary<string, SlipTally>> _tallies = new(() => SlipKinds.All.ToDictionary(
            kind => kind.Name, kind => SlipTally.Of(kind, Beams, digits: 3, Seed)));

        internal Dictionary<string, SlipTally> Tallies => _tallies.Value;
    }

    private static string Repository()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "FieldCheck.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new DirectoryNotFoundException("FieldCheck.sln not found.");
    }
}
