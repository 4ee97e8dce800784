using FieldCheck.Reporting.Record;

namespace FieldCheck.Reporting.Tests.Record;

public sealed class SpokenChecksTests
{
    [Theory]
    [InlineData("at 3.60 m, others", "at 3.60 metres, others")]
    [InlineData("0.141 kN (live) at 1.20 m; then", "0.141 kilonewtons (live) at 1.20 metres; then")]
    [InlineData("needed 216.3 cm3, inertia 3022 cm4.", "needed 216.3 cubic centimetres, inertia 3022 centimetres to the fourth.")]
    [InlineData("6.00 kN in all, 2 in the first bay", "6.00 kilonewtons in all, 2 in the first bay")]
    [InlineData("0.25 in down, at most 0.5 in.", "0.25 inches down, at most 0.5 inches.")]
    [InlineData("bays 1 and 2, W10x30, span 1 material", "bays 1 and 2, W10x30, span 1 material")]
    public void Aloud_WritesUnitsOutBehindNumbersAlone(string text, string aloud) =>
        Assert.Equal(aloud, SpokenAnswer.Aloud(text));

    [Fact]
    public void Lines_AreTheChecksByNumber_ThenWhatIsNotCheckedAndTheCautions()
    {
        string[] lines = [.. SpokenChecks.Lines(Sheets.Preset("floor-joist"))];

        Assert.StartsWith("Check 1, bending: OK; has 10.2 megapascals, may have 14.8 megapascals, uses 0.69 of it; at x = 2.04 metres", lines[0]);
        Assert.StartsWith("Check 6, final deflection of the bay: OK; ", lines[5]);
        Assert.StartsWith("Most used: final deflection of the bay, 0.96", lines[6]);
        Assert.StartsWith("Not checked: ", lines[7]);
        Assert.Contains(lines[8..], line => line.StartsWith("Local code, permit conditions", StringComparison.Ordinal));
    }

    [Fact]
    public void Work_OfOneCheck_EndsInItsFigures()
    {
        string[] lines = [.. SpokenChecks.Work(Sheets.Preset("floor-joist"), 5)];

        Assert.StartsWith("Check 6, final deflection of the bay: OK; ", lines[0]);
        Assert.Equal("16.8 millimetres against 17.4 millimetres: 0.96 of it used.", lines[^1]);
    }

    [Fact]
    public void Lines_WhereNothingIsAsked_AreNone() =>
        Assert.Empty(SpokenChecks.Lines(Sheets.Preset("loading-platform")));
}
