using System.Collections.Immutable;
using System.Globalization;
using CsCheck;
using FieldCheck.Reporting.Paper;

namespace FieldCheck.Reporting.Tests.Paper;

public sealed class PaperFlowTests
{
    private const double Hair = 1e-9;
    private const double Bottom = PaperSheet.BodyTop + PaperSheet.BodyHeight;

    private static readonly PaperPiece Head = Piece("head", 20);

    private static readonly Gen<(double Height, double Above, bool KeepsNext, bool HasHead)> Any = Gen.Select(
        Gen.OneOf(Gen.Double[1, 60], Gen.Double[1, PaperSheet.BodyHeight - Head.Height], Gen.Const(PaperSheet.BodyHeight - Head.Height)),
        Gen.Double[0, 30],
        Gen.Bool,
        Gen.Bool);

    /// <summary>Nothing reaches out of a page, all stand in order, once, and none lies over another.</summary>
    [Fact]
    public void Pieces_StandInOrderWithinThePages() => Any.Array[1, 60].Sample(all =>
    {
        PaperPiece[] pieces = Pieces(all);

        (int Page, string Text, double Top, double End)[] placed = Placed(PaperFlow.Of(pieces), pieces);

        Assert.Equal(pieces.Select((_, i) => Name(i)), placed.Where(one => one.Text != "head").Select(one => one.Text));
        Assert.All(placed, one => Assert.InRange(one.Top, PaperSheet.BodyTop - Hair, Bottom + Hair));
        Assert.All(placed, one => Assert.InRange(one.End, PaperSheet.BodyTop - Hair, Bottom + Hair));
        Assert.All(
            placed.Zip(placed.Skip(1)).Where(pair => pair.First.Page == pair.Second.Page),
            pair => Assert.True(pair.Second.Top >= pair.First.End - Hair));
    });

    /// <summary>What is kept with the next stands on its page wherever a page can hold all that is kept together.</summary>
    [Fact]
    public void KeptTogether_StandsOnOnePage() => Any.Array[1, 60].Sample(all =>
    {
        PaperPiece[] pieces = [.. Pieces(all).Select(piece => piece with { Head = null })];

        Dictionary<string, int> pages = Placed(PaperFlow.Of(pieces), pieces).ToDictionary(one => one.Text, one => one.Page);

        for (int from = 0; from < pieces.Length;)
        {
            int to = from;
            while (to + 1 < pieces.Length && pieces[to].KeepsNext)
            {
                to++;
            }

            if (pieces[from..(to + 1)].Sum(piece => piece.Above + piece.Height) <= PaperSheet.BodyHeight)
            {
                Assert.Equal(pages[Name(from)], pages[Name(to)]);
            }

            from = to + 1;
        }
    });

    /// <summary>The head stands again above the first row of a page, and nowhere else.</summary>
    [Fact]
    public void Head_StandsAboveTheFirstRowOfEachPage() => Any.Array[1, 60].Sample(all =>
    {
        PaperPiece[] pieces = Pieces(all);
        string[] ofTable = [.. pieces.Select((piece, i) => (piece, i)).Where(one => one.piece.Head is not null).Select(one => Name(one.i))];

        foreach (IGrouping<int, string> page in Placed(PaperFlow.Of(pieces), pieces).GroupBy(one => one.Page, one => one.Text))
        {
            string[] texts = [.. page];
            Assert.Equal(ofTable.Contains(texts[0]) || texts[0] == "head" ? 1 : 0, texts.Count(text => text == "head"));
            Assert.False(ofTable.Contains(texts[0]));
            Assert.True(texts[0] != "head" || ofTable.Contains(texts[1]));
        }
    });

    private static PaperPiece[] Pieces((double Height, double Above, bool KeepsNext, bool HasHead)[] all) =>
    [
        .. all.Select((one, i) => Piece(Name(i), one.Height) with
        {
            Above = one.Above,
            KeepsNext = one.KeepsNext,
            Head = one.HasHead ? Head : null,
        }),
    ];

    private static PaperPiece Piece(string text, double height) =>
        new(height, [new PaperMark.Words(0, 0, null, text, PaperStyle.Body)]);

    private static string Name(int i) => i.ToString(CultureInfo.InvariantCulture);

    private static (int Page, string Text, double Top, double End)[] Placed(ImmutableArray<PaperPage> pages, PaperPiece[] pieces) =>
    [
        .. pages.SelectMany((page, i) => page.Marks.OfType<PaperMark.Words>().Select(words => (
            i,
            words.Text,
            words.Y,
            words.Y + (words.Text == "head" ? Head : pieces[int.Parse(words.Text, CultureInfo.InvariantCulture)]).Height))),
    ];
}
