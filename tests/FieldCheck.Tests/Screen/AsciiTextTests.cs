using System.Text;
using CsCheck;
using FieldCheck.Screen.Painting;

namespace FieldCheck.Tests.Screen;

public sealed class AsciiTextTests
{
    [Theory]
    [InlineData("12'-6 1/2\"", "12'-6 1/2\"")]
    [InlineData("Tr\u00e4ger am D\u00e9p\u00f4t", "Trager am Depot")]
    [InlineData("e\u0301", "e")]
    [InlineData("kN/m\u00b2", "kN/m2")]
    [InlineData("3 \u00d7 2", "3 x 2")]
    [InlineData("12 \u00bd \u00b1", "12 ? ?")]
    [InlineData("\u6881 bearer", "?? bearer")]
    [InlineData("\u2580\u2584\u2588", "'.:")]
    public void Text_IsSpelledInAsciiOfTheSameWidth(string text, string expected) =>
        Assert.Equal(expected, AsciiText.Of(text));

    [Fact]
    public void AnyText_KeepsItsWidth() => Gen.String[Gen.Char['\u00a0', '\ud7ff'], 0, 12].Sample(text =>
    {
        string plain = AsciiText.Of(text);

        Assert.True(Ascii.IsValid(plain));
        Assert.Equal(TextColumns.Of(text), TextColumns.Of(plain));
    });
}
