using System.Globalization;
using FieldCheck.Reporting.Paper;

namespace FieldCheck.Reporting.Tests.Paper;

public sealed class PaperDigestTests
{
    /// <summary>Values of FNV-1a of 128 bits as the test of Go's standard library (hash/fnv) has them.</summary>
    [Theory]
    [InlineData("", "6c62272e07bb014262b821756295c58d")]
    [InlineData("a", "d228cb696f1a8caf78912b704e4a8964")]
    [InlineData("ab", "08809544bbab1be95aa0733055b69a62")]
    [InlineData("abc", "a68d622cec8b5822836dbc7977af7f3b")]
    public void Digest_IsThePublishedValue(string text, string value) =>
        Assert.Equal(UInt128.Parse(value, NumberStyles.HexNumber, CultureInfo.InvariantCulture), PaperDigest.Of(text));

    [Fact]
    public void Letters_AreSixCapitalsAndOtherForAnotherText()
    {
        string[] letters = [.. Enumerable.Range(0, 200).Select(i => PaperDigest.Letters(PaperDigest.Of($"record {i}")))];

        Assert.All(letters, one => Assert.Matches("^[A-Z]{6}$", one));
        Assert.Distinct(letters);
    }
}
