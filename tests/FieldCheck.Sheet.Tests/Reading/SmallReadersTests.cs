using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Tests.Reading;

/// <summary>The cells that hold something other than a quantity or a place.</summary>
public sealed class SmallReadersTests
{
    [Theory]
    [InlineData("3", 3)]
    [InlineData("1", 1)]
    [InlineData("9", 9)]
    [InlineData(" 9 ", 9)]
    [InlineData("007", 7)]
    public void WholeNumber_Reads(string text, int expected) =>
        Assert.Equal(expected, Read.Accepted(WholeNumberReader.Read(text, 1, 9)));

    [Theory]
    [InlineData("", 0, "expected a whole number from 1 to 9, found nothing")]
    [InlineData(" 10", 1, "expected a whole number from 1 to 9, found '10'")]
    [InlineData("0", 0, "expected a whole number from 1 to 9, found '0'")]
    [InlineData("-3", 0, "expected a whole number from 1 to 9, found '-3'")]
    [InlineData("2.5", 0, "expected a whole number from 1 to 9, found '2.5'")]
    [InlineData("1,000", 0, "expected a whole number from 1 to 9, found '1,000'")]
    [InlineData("99999999999", 0, "expected a whole number from 1 to 9, found '99999999999'")]
    public void BrokenWholeNumber_IsAnsweredInTheseWords(string text, int offset, string expected) =>
        AssertRefused(WholeNumberReader.Read(text, 1, 9), offset, expected);

    [Fact]
    public void Number_IsWorkedOut() => Assert.Equal(0.75, Read.Accepted(NumberReader.Read("1.5 * 1/2")));

    [Fact]
    public void Share_IsARatio() => Assert.Equal(0.3, Read.Accepted(ShareReader.Read("30 %")), 1e-15);

    [Theory]
    [InlineData("L/360", 360)]
    [InlineData(" l / 180 ", 180)]
    [InlineData("L/187.5", 187.5)]
    public void DeflectionLimit_IsTheNumberBelowL(string text, double expected) =>
        Assert.Equal(expected, Read.Accepted(DeflectionLimitReader.Read(text)));

    [Theory]
    [InlineData("", 0, "empty: expected a deflection limit such as \"L/360\"")]
    [InlineData("360", 0, "expected a deflection limit such as \"L/360\", found '360'")]
    [InlineData(" L", 2, "expected a deflection limit such as \"L/360\", found the end of the text")]
    [InlineData("L*2", 1, "expected a deflection limit such as \"L/360\", found '*'")]
    [InlineData("L/", 2, "empty: expected a number such as \"1.25\"")]
    [InlineData("L/0", 2, "the number below L is greater than 0")]
    [InlineData("L/-3", 2, "the number below L is greater than 0")]
    [InlineData("L/3 m", 2, "expected a number such as \"1.25\", found a length")]
    public void BrokenDeflectionLimit_IsAnsweredInTheseWords(string text, int offset, string expected) =>
        AssertRefused(DeflectionLimitReader.Read(text), offset, expected);

    [Theory]
    [InlineData("24 in x 18 in", 0.6096, 0.4572)]
    [InlineData("24\"x18\"", 0.6096, 0.4572)]
    [InlineData("600 mm × 0.4 m", 0.6, 0.4)]
    [InlineData("2 ft X 1 ft 6 in", 0.6096, 0.4572)]
    public void Pad_IsTwoLengths(string text, double first, double second)
    {
        PadSize pad = Read.Accepted(PadSizeReader.Read(text));

        Assert.Equal(first, pad.First.Value, 1e-15);
        Assert.Equal(second, pad.Second.Value, 1e-15);
    }

    [Theory]
    [InlineData("", 0, "empty: expected two lengths such as \"24 in x 24 in\"")]
    [InlineData("24 in", 5, "expected two lengths such as \"24 in x 24 in\", found no x")]
    [InlineData("x 24 in", 0, "empty: expected a length such as \"12 ft 6 in\"")]
    [InlineData("24 in x", 7, "empty: expected a length such as \"12 ft 6 in\"")]
    [InlineData("24 x 24 in", 0, "24 has no unit: a length is written in ft, in, m, cm or mm")]
    [InlineData("24 in x 24 kN", 8, "expected a length such as \"12 ft 6 in\", found a force")]
    [InlineData("24 in x 0 in", 7, "both lengths are greater than 0")]
    [InlineData("0 in x 24 in", 0, "both lengths are greater than 0")]
    [InlineData("-24 in x 24 in", 0, "both lengths are greater than 0")]
    [InlineData("1 m x 1 m x 1 m", 10, "expected + - * / or the end, found 'x'")]
    public void BrokenPad_IsAnsweredInTheseWords(string text, int offset, string expected) =>
        AssertRefused(PadSizeReader.Read(text), offset, expected);

    [Fact]
    public void Tolerance_IsAShareOrAForce()
    {
        Tolerance.OfFigure share = Assert.IsType<Tolerance.OfFigure>(Read.Accepted(ToleranceReader.Read("2 %")));
        Tolerance.OfForce force = Assert.IsType<Tolerance.OfForce>(Read.Accepted(ToleranceReader.Read("0.25 kN")));

        Assert.Equal(0, Assert.IsType<Tolerance.OfForce>(Read.Accepted(ToleranceReader.Read("0 kN"))).Value);
        Assert.Equal(0.02, share.Ratio, 1e-15);
        Assert.Equal(250, force.Value, 1e-12);
    }

    [Theory]
    [InlineData("2", 0, "2 has no unit: expected a share such as \"30 %\" or a force such as \"1850 lbf\"")]
    [InlineData("-2 %", 0, "a tolerance is 0 or more")]
    [InlineData("2 m", 0, "expected a share such as \"30 %\" or a force such as \"1850 lbf\", found a length")]
    public void BrokenTolerance_IsAnsweredInTheseWords(string text, int offset, string expected) =>
        AssertRefused(ToleranceReader.Read(text), offset, expected);

    [Fact]
    public void FreeText_IsKeptAsTyped()
    {
        const string Date = " 3rd of May, after lunch\nsee note ";

        Assert.Equal(Date, Read.Accepted(FreeTextReader.Read(Date)));
        Assert.Equal("", Read.Accepted(FreeTextReader.Read("")));
        Assert.Equal(4000, Read.Accepted(FreeTextReader.Read(new string('a', 4000))).Length);
        AssertRefused(FreeTextReader.Read(new string('a', 4001)), 4000, "too long: at most 4000 characters");
    }

    private static void AssertRefused<T>(Reading<T> reading, int offset, string expected)
    {
        Reading<T>.Refused refused = Read.Refused(reading);

        Assert.Equal(expected, refused.Text);
        Assert.Equal(offset, refused.Offset);
    }
}
