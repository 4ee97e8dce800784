using CsCheck;

namespace FieldCheck.Reporting.Tests;

public sealed class TextFlowTests
{
    [Fact]
    public void ANumber_IsNotBrokenFromItsUnit() => Assert.Equal<string>(
        ["It carries", "12.00 kN/m, all", "along."], [.. TextFlow.Wrap("It carries 12.00 kN/m, all along.", 17)]);

    [Fact]
    public void LinesAfterTheFirst_AreIndented() =>
        Assert.Equal<string>(["one two", "  three", "  four"], [.. TextFlow.Wrap("one two three four", 9, indent: 2)]);

    [Fact]
    public void Items_StayWhole_WhileALineHoldsThem() =>
        Assert.Equal<string>(["a b   c d", "e f"], [.. TextFlow.Join(["a b", "c d", "e f"], "   ", 10)]);

    [Fact]
    public void AWordLongerThanALine_IsCut() => Assert.Equal<string>(["abcd", "ef"], [.. TextFlow.Wrap("abcdef", 4)]);

    [Theory]
    [InlineData("lateral-torsional", 16, "lateral-|torsional")]
    [InlineData("lateral-torsional buckling", 12, "lateral-|torsional|buckling")]
    [InlineData("in-and-out", 7, "in-and-|out")]
    [InlineData("well-abcdefghij", 6, "well-a|bcdefg|hij")]
    [InlineData("0.123456-7.5", 8, "0.123456|-7.5")]
    [InlineData("lateral-torsional", 17, "lateral-torsional")]
    public void AWordLongerThanALine_IsBrokenAtItsHyphens(string text, int width, string lines) =>
        Assert.Equal<string>(lines.Split('|'), [.. TextFlow.Wrap(text, width)]);

    /// <summary>The first line holds more than the others; what is left of a word is not set beside it with a blank between.</summary>
    [Fact]
    public void TheRestOfAWord_StartsALine() =>
        Assert.Equal<string>(["abcdefgh", "  i j"], [.. TextFlow.Wrap("abcdefghi j", 10, indent: 2)]);

    [Fact]
    public void AWordLongerThanALine_IsNotCutWithinALetterOfTwoUnits() =>
        Assert.Equal<string>(["a\U00010400", "\U00010400b"], [.. TextFlow.Wrap("a\U00010400\U00010400b", 4)]);

    [Fact]
    public void NothingIsLost_AndNoLineIsTooLong() =>
        Gen.Select(Gen.String[Gen.Char["ab1 .m-"], 0, 99], Gen.Int[5, 40], Gen.Int[0, 3]).Sample((text, width, indent) =>
        {
            IEnumerable<string> lines = TextFlow.Wrap(text, width, indent);

            Assert.All(lines, line => Assert.InRange(line.Length, 1, width));
            Assert.Equal(
                text.Replace(" ", "", StringComparison.Ordinal),
                string.Concat(lines).Replace(" ", "", StringComparison.Ordinal));
        });
}
