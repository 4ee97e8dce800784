using CsCheck;

namespace FieldCheck.Reporting.Tests;

public sealed class PlainAsciiTests
{
    [Theory]
    [InlineData("Bearer 2", "Bearer 2")]
    [InlineData("Tr\u00e4ger", "Traeger")]
    [InlineData("caf\u00e9", "cafe")]
    [InlineData("kN\u00b7m", "kN*m")]
    [InlineData("12\u2032 6 \u00bd\u2033", "12' 6 1/2\"")]
    [InlineData("12\u2032-6\u00bd\u2033", "12'-6 1/2\"")]
    [InlineData("6\u215e in", "6 7/8 in")]
    [InlineData("1/2", "1/2")]
    [InlineData("1 \u00b1 2", "1 +- 2")]
    [InlineData("\u0141\u00f3d\u017a", "Lodz")]
    [InlineData("D\u011bvi\u010dky \u2192 \u017di\u017ekov \u2116 3", "Devicky -> Zizkov No. 3")]
    [InlineData("a\u001b[2Jb", "a?[2Jb")]
    [InlineData("\u4e2d\ud83d\ude00", "??")]
    [InlineData(null, "")]
    public void ATextFromAPerson_IsSpelledInAscii(string? text, string expected) =>
        Assert.Equal(expected, PlainAscii.Of(text));

    [Fact]
    public void WhateverComes_OnlyPrintableAsciiLeaves() =>
        Gen.String.Sample(text => Assert.All(PlainAscii.Of(text), c => Assert.InRange(c, ' ', '~')));
}
