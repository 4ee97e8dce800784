using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Tests.Building;

public sealed class SpanLengthsTests
{
    [Fact]
    public void LengthsAndTapeReadings_GiveTheSameJoints()
    {
        Assert.Equal([0, 4.5, 6, 10], Joints(Length("4.5 m"), Length("1500 mm"), Length("4 m")));
        Assert.Equal([0, 4.5, 6, 10], Joints(To("4.5 m"), To("6 m"), To("10 m")));
        Assert.Equal([0, 4.5, 6, 10], Joints(Length("4.5 m"), To("6 m"), Length("4 m")));
    }

    [Fact]
    public void FeetAndInches_AreExactMetres() =>
        Assert.Equal([0, 14.5 * 0.3048], Joints(Length("14 ft 6 in")));

    [Fact]
    public void NoSpan_IsTold() =>
        Assert.Equal(["span: a beam has at least one span"], Problems());

    [Fact]
    public void SpanWithoutLength_IsTold() => Assert.Equal(
        ["span[2].length: a span needs its length, or to = the tape reading of its far end"],
        Problems(Length("4 m"), new SpanEntry()));

    [Fact]
    public void SpanWithLengthAndTapeReading_IsTold() => Assert.Equal(
        ["span[1].to: a span takes its length or the tape reading of its far end, not both"],
        Problems(new SpanEntry { Length = "4 m", To = "4 m" }));

    [Theory]
    [InlineData("4 m")]
    [InlineData("12 ft")]
    [InlineData("-1 m")]
    public void TapeReadingThatDoesNotGrow_IsTold(string reading) => Assert.Equal(
        ["span[2].to: this tape reading is not beyond the one before it: readings run from the left end"],
        Problems(Length("4 m"), To(reading)));

    [Fact]
    public void TapeReadingAfterALengthThatDoesNotRead_IsNotDoubted() =>
        Assert.Equal(["span[1].length"], Beams.ProblemKeys(Document([Length("4 furlong"), To("3 m")])));

    [Theory]
    [InlineData("0 m", "'0 m' is not greater than zero")]
    [InlineData("2 m - 3 m", "'2 m - 3 m' is not greater than zero")]
    [InlineData("1e40 m", "this is far outside what a beam can be: is its unit right?")]
    public void LengthThatIsNoLength_IsTold(string length, string text) =>
        Assert.Equal(["span[1].length: " + text], Problems(Length(length)));

    [Fact]
    public void SpanOfLessThanAMillionthOfTheBeam_IsTold() => Assert.Equal(
        ["span[2].length: this span is less than a millionth of the beam: is its unit right?"],
        Problems(Length("5000 m"), Length("4 mm")));

    [Fact]
    public void UnbracedLengthOfNothing_IsTold() => Assert.Equal(
        ["span[1].unbraced: '0 ft' is not greater than zero"],
        Problems(Length("4 m") with { Unbraced = "0 ft" }));

    [Fact]
    public void BracedSpan_IsSound() => Assert.Empty(Problems(Length("4 m") with { Unbraced = "braced" }));

    private static SpanEntry Length(string length) => new() { Length = length };

    private static SpanEntry To(string to) => new() { To = to };

    private static BeamDocument Document(SpanEntry[] spans) => new()
    {
        Spans = [.. spans],
        Supports = [new() { Kind = "fixed", Joint = "0" }],
    };

    private static double[] Joints(params SpanEntry[] spans) => [.. Beams.Model(Document(spans)).JointPositions];

    private static string[] Problems(params SpanEntry[] spans) =>
        [.. Beams.Problems(Document(spans)).Where(problem => problem.StartsWith("span", StringComparison.Ordinal))];
}
