using CsCheck;
using FieldCheck.Reporting.Working;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Reporting.Tests.Working;

/// <summary>Whoever works a printed line again from its printed numbers finds the digits that stand there.</summary>
public sealed class WorkedAgainTests
{
    private const int Draws = 500;

    [Theory]
    [InlineData(UnitSystem.Si)]
    [InlineData(UnitSystem.Us)]
    public void EveryPrintedLine_ComesOutAgain(UnitSystem units)
    {
        int worked = 0;
        RandomSheets.Any(units).Sample(
            beam => Interlocked.Add(ref worked, PrintedPage.WorkAgain(Workings.Of(beam))),
            iter: Draws,
            print: RandomSheets.Print);
        Assert.True(worked > 20 * Draws, $"Only {worked} results on {Draws} pages.");
    }

    [Theory]
    [InlineData(UnitSystem.Si)]
    [InlineData(UnitSystem.Us)]
    public void EverySum_Closes_AndTheOtherMethodAgrees(UnitSystem units) => RandomSheets.Any(units).Sample(
        beam =>
        {
            WorkingLine[] page = Workings.Of(beam);
            Assert.DoesNotContain(page, line => line.Text.Contains("DOES NOT CLOSE", StringComparison.Ordinal));
            Assert.DoesNotContain(page, line => line.Text.Contains("DIFFERS", StringComparison.Ordinal));
        },
        iter: Draws,
        print: RandomSheets.Print);

    [Theory]
    [InlineData(40)]
    [InlineData(60)]
    [InlineData(80)]
    public void NoLine_IsWiderThanThePage(int width) => RandomSheets.Any(UnitSystem.Us).Sample(
        beam => Assert.All(Workings.Of(beam, width), line => Assert.True(line.Text.Length <= width, line.Text)),
        iter: 50,
        print: RandomSheets.Print);

    [Fact]
    public void WrongDigit_IsFound()
    {
        WorkingLine[] page = [new("   V_B = 27.3536 / 2.80 = 9.7692 kN up", WorkingLineKind.Figures)];

        Assert.ThrowsAny<Xunit.Sdk.XunitException>(() => PrintedPage.WorkAgain(page));
    }
}
