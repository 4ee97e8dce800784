using FieldCheck.Reporting.Paper;

namespace FieldCheck.Reporting.Tests.Paper;

public sealed class PaperLettersTests
{
    private static readonly PaperStyle Body = new(PaperFace.Regular, 10);

    private readonly PaperLetters _letters = new();

    public static TheoryData<string, string, int> Advances => new()
    {
        { "Regular", " ", 651 },
        { "Regular", "0", 1303 },
        { "Regular", "M", 1767 },
        { "Bold", "0", 1425 },
        { "Bold", "M", 2038 },
        { "Mono", "M", 1233 },
        { "Mono", "i", 1233 },
    };

    /// <summary>Widths of letters in 1/2048 of their size: the table hmtx of DejaVu 2.37 (OpenType 1.9), read apart from the library.</summary>
    [Theory]
    [MemberData(nameof(Advances))]
    public void Width_IsThatOfTheFont(string face, string letter, int width) => Assert.Equal(
        width / 2048.0 * 10, _letters.WidthOf(letter, new PaperStyle(Enum.Parse<PaperFace>(face), 10)), tolerance: 1e-9);

    [Theory]
    [InlineData("Regular")]
    [InlineData("Bold")]
    [InlineData("Mono")]
    public void EveryFace_HasTheLettersThatStandInForOthers(string face)
    {
        const string Needed = "? \u2022 \u2026 \u25a1";

        Assert.Equal(Needed, _letters.Shown(Needed, Enum.Parse<PaperFace>(face)));
        Assert.Equal("\u25a1", _letters.Shown("\u6881", Enum.Parse<PaperFace>(face)));
    }

    [Fact]
    public void Lines_HoldAllWordsInOrderAndFit()
    {
        const string Text = "The beam is straight, lies level, and is loaded in one upright plane through its axis.";

        string[] lines = [.. _letters.Lines(Text, Body, 120)];

        Assert.True(lines.Length > 2);
        Assert.Equal(Text, string.Join(' ', lines));
        Assert.All(lines, line => Assert.InRange(_letters.WidthOf(line, Body), 1, 120));
        Assert.All(
            lines.Zip(lines.Skip(1)),
            pair => Assert.True(_letters.WidthOf($"{pair.First} {pair.Second.Split(' ')[0]}", Body) > 120));
    }

    [Fact]
    public void Lines_KeepANumberWithItsUnit()
    {
        double width = _letters.WidthOf("a load of 12.5", Body) + 1;

        Assert.Equal(["a load of", "12.5 kN here"], _letters.Lines("a load of 12.5 kN here", Body, width).ToArray());
    }

    [Fact]
    public void LongWord_IsCut()
    {
        string word = new('W', 100);

        string[] lines = [.. _letters.Lines($"x {word} y", Body, 90)];

        Assert.Equal($"x{word}y", string.Concat(lines).Replace(" ", "", StringComparison.Ordinal));
        Assert.All(lines, line => Assert.InRange(_letters.WidthOf(line, Body), 1, 90));
    }

    [Fact]
    public void LongWord_IsBrokenAtItsHyphens() => Assert.Equal(
        ["of lateral-", "torsional", "buckling"],
        _letters.Lines("of lateral-torsional buckling", Body, _letters.WidthOf("lateral-tors", Body)).ToArray());

    [Fact]
    public void NarrowerThanALetter_StillHasALetterALine() => Assert.Equal(["a", "b", "c"], _letters.Lines("abc", Body, 1).ToArray());

    [Fact]
    public void Blank_HasNoLine() => Assert.Empty(_letters.Lines("  ", Body, 100));

    [Fact]
    public void Cut_EndsWithAnEllipsisWhereItDoesNotFit()
    {
        string cut = _letters.Cut("Bearer over the service trench", Body, 100);

        Assert.StartsWith("Bearer over", cut, StringComparison.Ordinal);
        Assert.EndsWith("\u2026", cut, StringComparison.Ordinal);
        Assert.InRange(_letters.WidthOf(cut, Body), 90, 100);
        Assert.Equal("Bearer", _letters.Cut("Bearer", Body, 100));
    }
}
