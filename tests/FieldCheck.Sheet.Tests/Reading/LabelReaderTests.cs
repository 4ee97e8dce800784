using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Tests.Reading;

/// <summary>The rules are "Labels" in docs/beam-file.md.</summary>
public sealed class LabelReaderTests
{
    [Theory]
    [InlineData("A", "A")]
    [InlineData(" b_2 ", "b_2")]
    [InlineData("abcdefghijkl", "abcdefghijkl")]
    [InlineData("joint1", "joint1")]
    [InlineData("ending", "ending")]
    public void Label_Reads(string text, string label) => Assert.Equal(label, Read.Accepted(LabelReader.Read(text)));

    [Theory]
    [InlineData("", 0, "empty: expected a label such as \"B2\": a letter, then letters, digits or _")]
    [InlineData(" 2B", 1, "expected a label such as \"B2\": a letter, then letters, digits or _, found '2B'")]
    [InlineData("_A", 0, "expected a label such as \"B2\": a letter, then letters, digits or _, found '_A'")]
    [InlineData(
        "A B", 1,
        "expected a label such as \"B2\": a letter, then letters, digits or _, found the character U+0020")]
    [InlineData("A-B", 1, "expected a label such as \"B2\": a letter, then letters, digits or _, found '-'")]
    [InlineData("Äb", 0, "expected a label such as \"B2\": a letter, then letters, digits or _, found 'Äb'")]
    [InlineData("abcdefghijklm", 12, "a label has at most 12 characters")]
    [InlineData("End", 0, "End already means a place: choose another label")]
    [InlineData("joint", 0, "joint already means a place: choose another label")]
    [InlineData("MID", 0, "MID already means a place: choose another label")]
    public void BrokenLabel_IsAnsweredInTheseWords(string text, int offset, string expected)
    {
        Reading<string>.Refused refused = Read.Refused(LabelReader.Read(text));

        Assert.Equal(expected, refused.Text);
        Assert.Equal(offset, refused.Offset);
    }
}
