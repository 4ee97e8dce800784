using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Tests.Reading;

public sealed class NearSpellingTests
{
    private static readonly string[] Known = ["length", "label", "load", "bearing"];

    [Theory]
    [InlineData("lenght", "length")]
    [InlineData("LABLE", "label")]
    [InlineData("lod", "load")]
    [InlineData("loads", "load")]
    [InlineData("baering", "bearing")]
    [InlineData("laod", "load")]
    [InlineData("laebl", "label")]
    [InlineData("bearnigs", "bearing")]
    public void Slip_FindsTheWordMeant(string word, string expected) =>
        Assert.Equal([expected], NearSpelling.Of(word, Known));

    [Theory]
    [InlineData("l")]
    [InlineData("ld")]
    [InlineData("support")]
    [InlineData("dloa")]
    [InlineData("")]
    public void FarWord_FindsNone(string word) => Assert.Empty(NearSpelling.Of(word, Known));

    /// <summary>A word of a mebibyte is told from the others without comparing its letters.</summary>
    [Fact]
    public void WordOfAMebibyte_FindsNone() => Assert.Empty(NearSpelling.Of(new string('l', 1 << 20), Known));

    [Fact]
    public void EquallyNear_AreAllNamedInTheirOrderUpToThree() =>
        Assert.Equal(["ad", "ab", "ac"], NearSpelling.Of("ax", ["ad", "ab", "ac", "ae", "bx1"]));
}
