using FieldCheck.Reporting.Record;

namespace FieldCheck.Reporting.Tests.Record;

public sealed class PlainTextTests
{
    public static TheoryData<string> Presets => Sheets.PresetNames();

    [Fact]
    public void TheTrenchBearer_IsThePage() => Picture.Matches(
        "plain-trench",
        PlainText.Lines(
            Sheets.Run(Sheets.Trench),
            new CheckRequest("trench.toml", [new AskedPlace("1.25 m", 1.25), new AskedPlace("B", 2.70)])));

    [Fact]
    public void AnEnvelope_IsOneSentenceAnEnd() => Assert.Equal(
        [
            "Envelope of service figures: over all loads; live on any bays or none.",
            "Envelope of service figures: bays: 1 from A to B, 2 from B to C.",
            "Envelope of service figures, A vertical: greatest 5.25 kilonewtons up, live on bay 1.",
            "Envelope of service figures, A vertical: least 0.75 kilonewtons down, live on bay 2, (must be held down), LIFTS.",
        ],
        PlainText.Lines(Sheets.Run(Tables.EnvelopePanelTests.Bays(2, "3 kN/m")), new CheckRequest("", []))
            .Where(line => line.StartsWith("Envelope", StringComparison.Ordinal))
            .Take(4));

    [Fact]
    public void ABeamThatCanMove_SaysHow() => Assert.Contains(
        "How it is held: the whole beam turns about A: add a support, or make A fixed.",
        PlainText.Lines(Sheets.Run(Sheets.OnePin), new CheckRequest("", [])));

    [Theory]
    [MemberData(nameof(Presets))]
    public void EveryPreset_IsWholeSentencesOfAscii(string name)
    {
        IEnumerable<string> lines = PlainText.Lines(Sheets.Preset(name), new CheckRequest(name, []));

        Assert.All(lines, line => Assert.Matches(@"^[A-Z0-9][ -~]*[.?!]$", line));
    }
}
