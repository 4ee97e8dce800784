using System.Globalization;
using System.Text;
using CsCheck;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Sheet.Tests.Units;

public sealed class TextSafetyTests
{
    [Theory]
    [InlineData("North pier, 12'-6\"", "North pier, 12'-6\"")]
    [InlineData("Träger – größer", "Träger – größer")]
    [InlineData("梁 𝟙 🏗", "梁 𝟙 🏗")]
    [InlineData("\u001b[31mred", "?[31mred")]
    [InlineData("a\tb\nc\r\0", "a?b?c??")]
    [InlineData("\u009b2J\u007f", "?2J?")]
    [InlineData("\u202etxt\u2066x\u2069\u200f", "?txt?x??")]
    [InlineData("a\u200bb\ufeff\u00ad", "a?b??")]
    [InlineData("a\u2028b\u2029", "a?b?")]
    [InlineData("\U000e0041", "?")]
    [InlineData("👷🏽‍♀️ x", "👷?♀ x")]
    [InlineData("e\u0301", "e\u0301")]
    [InlineData("a\u034f\u115f\u3164\uffa0\u2065\ufff0", "a??????")]
    [InlineData("\u1820\u180b\u8fbb\U000e0100", "\u1820\u8fbb")]
    [InlineData("", "")]
    public void Text_IsMadeHarmless(string text, string expected) =>
        Assert.Equal(expected, TextSafety.ForTerminal(text));

    [Fact]
    public void BrokenSurrogate_IsReplacedAndTheSignForOneIsNot()
    {
        Assert.Equal("a?b", TextSafety.ForTerminal("a\ud83db"));
        Assert.Equal("?a\ufffd", TextSafety.ForTerminal("\udc00a\ufffd"));
    }

    // RFC 8259, section 7: any character may be written as \u and four digits, one beyond U+FFFF as the two of its pair.
    [Theory]
    [InlineData("{\n\"a\": \"é 梁\"}", "{\n\"a\": \"é 梁\"}")]
    [InlineData("\"a\u202eb\u2028\ufe0f\u007f\u0085\"", "\"a\\u202eb\\u2028\\ufe0f\\u007f\\u0085\"")]
    [InlineData("\"\U000e0041𝄞\"", "\"\\udb40\\udc41𝄞\"")]
    public void Json_IsEscapedWhereATextWouldBeChanged(string json, string expected) =>
        Assert.Equal(expected, TextSafety.EscapedInJson(json));

    [Fact]
    public void HarmlessText_IsTheSameInstance()
    {
        string text = new('x', 3);

        Assert.Same(text, TextSafety.ForTerminal(text));
    }

    [Fact]
    public void AnyText_HoldsNothingThatATerminalActsOn() =>
        Gen.String[Gen.Char, 0, 20].Sample(text =>
        {
            string safe = TextSafety.ForTerminal(text);
            return safe.Length <= text.Length
                && TextSafety.ForTerminal(safe) == safe
                && safe.EnumerateRunes().All(rune => Rune.GetUnicodeCategory(rune)
                    is not (UnicodeCategory.Control or UnicodeCategory.Format));
        });
}
