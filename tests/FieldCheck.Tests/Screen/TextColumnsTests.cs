using System.Globalization;
using CsCheck;
using FieldCheck.Screen.Painting;
using Terminal.Gui.Text;

namespace FieldCheck.Tests.Screen;

public sealed class TextColumnsTests
{
    [Theory]
    [InlineData("beam", 4)]
    [InlineData("", 0)]
    [InlineData("e\u0301", 1)]
    [InlineData("梁", 2)]
    [InlineData("👍", 2)]
    [InlineData("👨‍👩‍👧", 2)]
    [InlineData("±½·′²", 5)]
    public void Columns_AreThoseOfTheTerminal(string text, int columns) => Assert.Equal(columns, TextColumns.Of(text));

    /// <summary>The picture is put on the terminal by the toolkit, so both must count alike.</summary>
    [Fact]
    public void AnyGrapheme_TakesAsManyColumnsAsTheToolkitGivesIt() => Gen.String[1, 6].Sample(text =>
    {
        TextElementEnumerator graphemes = StringInfo.GetTextElementEnumerator(text);
        while (graphemes.MoveNext())
        {
            string grapheme = graphemes.GetTextElement();
            if (!grapheme.Any(char.IsControl) && !grapheme.Any(char.IsSurrogate))
            {
                Assert.Equal(grapheme.GetColumns(), TextColumns.Of(grapheme));
            }
        }
    });

    [Theory]
    [InlineData("梁梁", 3, "梁 ")]
    [InlineData("abc", 2, "ab")]
    [InlineData("abc", 5, "abc  ")]
    [InlineData("abc", 0, "")]
    [InlineData("ae\u0301b", 2, "ae\u0301")]
    public void TextFit_NeverCutsACharacterInHalf(string text, int width, string fit) =>
        Assert.Equal(fit, TextColumns.Fit(text, width));

    [Theory]
    [InlineData("pallets on the left", 10, "pallets ..")]
    [InlineData("pallets", 7, "pallets")]
    [InlineData("pallets", 3, "p..")]
    [InlineData("pallets", 2, "pa")]
    public void TextCut_SaysSo(string text, int width, string fit) =>
        Assert.Equal(fit, TextColumns.FitWithMark(text, width));

    [Theory]
    [InlineData("12345", 5, 3, "45", 2)]
    [InlineData("12345", 0, 3, "123", 0)]
    [InlineData("12345", 2, 9, "12345", 2)]
    [InlineData("12345", 5, 1, "", 0)]
    [InlineData("梁梁梁", 3, 4, "梁", 2)]
    public void LineWiderThanItsCell_ShowsTheCaret(string text, int caret, int width, string seen, int column) =>
        Assert.Equal((seen, column), CaretWindow.Of(text, caret, width));
}
