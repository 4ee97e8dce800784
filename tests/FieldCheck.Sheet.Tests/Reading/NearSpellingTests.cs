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
    public void Slip_FindsTheWordMeant(string word, string expected) =>
        Assert.Equal([expected], NearSpelling.Of(word, Known));

    [Theory]
    [InlineData("l")]
    [InlineData("ld")]
    [InlineData("support")]
    [InlineData("")]
    public void FarWord_FindsNone(string word) => Assert.Empty(NearSpelling.Of(word, Known));

    [Fact]
    public void EquallyNear_AreAllNamedInTheirOrderUpToThree() =>
        Assert.Equal(["ad", "ab", "ac"], NearSpelling.Of("ax", ["ad", "ab", "ac", "ae", "bx1"]));
}
