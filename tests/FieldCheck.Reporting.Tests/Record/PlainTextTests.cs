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
