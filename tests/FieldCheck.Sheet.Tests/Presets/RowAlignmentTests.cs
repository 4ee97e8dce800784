using FieldCheck.Sheet.Document.Tables;
using FieldCheck.Sheet.Presets.Toml;

namespace FieldCheck.Sheet.Tests.Presets;

/// <summary>Which old row a new one is taken for. A letter is a cell; rows of one word are alike where letters agree.</summary>
public sealed class RowAlignmentTests
{
    [Theory]
    [InlineData("abc def ghi", "abc xyz ghi", new[] { 0, -1, 2 })]
    [InlineData("abc def ghi", "abc dxy ghi", new[] { 0, 1, 2 })]
    [InlineData("abc def ghi", "ghi abc def", new[] { 2, 0, 1 })]
    [InlineData("abc def", "abc abc def", new[] { 0, -1, 1 })]
    [InlineData("ab", "xy", new[] { 0 })]
    [InlineData("abc", "x", new[] { -1 })]
    [InlineData("a", "xyz", new[] { -1 })]
    public void Rows_AreTakenForThoseTheyWere(string old, string now, int[] expected) =>
        Assert.Equal(expected, RowAlignment.Match(Rows(old), Rows(now)));

    /// <summary>A row that stayed parts those before it from those behind it.</summary>
    [Theory]
    [InlineData("pqr mno stu", "mno pqx sty", new[] { 1, -1, 2 })]
    [InlineData("abc pqr mno stu", "abc mno pqx sty", new[] { 0, 2, -1, 3 })]
    [InlineData("mno stu", "stx mno syz", new[] { -1, 0, 1 })]
    public void ChangedRows_AreSoughtBetweenThoseThatStayed(string old, string now, int[] expected) =>
        Assert.Equal(expected, RowAlignment.Match(Rows(old), Rows(now)));

    [Theory]
    [InlineData(1001, 1001)]
    [InlineData(1001, 1000)]
    [InlineData(1000, 1001)]
    public void TooManyToCompare_ArePairedInOrder(int old, int now) => Assert.Equal(
        Enumerable.Range(0, now).Select(row => row < old ? row : -1),
        RowAlignment.Match(Numbered("old", old), Numbered("now", now)));

    private static Content[] Rows(string words) => [.. words.Split(' ').Select(Row)];

    private static Content.Table Row(string word) =>
        new([.. word.Select((letter, at) => new ContentEntry($"{at}", new Content.Cell($"{letter}")))]);

    private static Content[] Numbered(string word, int count) =>
        [.. Enumerable.Range(0, count).Select(row => new Content.Cell($"{word} {row}"))];
}
