using FieldCheck.Reporting.Record;
using FieldCheck.Sheet;

namespace FieldCheck.Reporting.Tests.Record;

public sealed class CheckTextTests
{
    private static readonly Message Uplift = new(Severity.Note, "example", "No strength was given: nothing is judged.");

    [Theory]
    [InlineData(60)]
    [InlineData(80)]
    [InlineData(120)]
    public void TheTrenchBearer_IsThePage(int width) => Picture.Matches(
        $"check-trench-{width}",
        CheckText.Lines(
            Sheets.Trench(Uplift),
            new CheckRequest("trench.toml", [new AskedPlace("1.25 m", 1.25), new AskedPlace("B", 2.70)], width)));

    [Fact]
    public void TheTrenchBearer_InSentences_IsThePage() => Picture.Matches(
        "plain-trench",
        PlainText.Lines(
            Sheets.Trench(Uplift),
            new CheckRequest("trench.toml", [new AskedPlace("1.25 m", 1.25), new AskedPlace("B", 2.70)])));
}
