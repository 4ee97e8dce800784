using System.Collections.Immutable;
using FieldCheck.Reporting.Pages;
using FieldCheck.Reporting.Paper;
using FieldCheck.Reporting.Pictures;
using FieldCheck.Reporting.Tests.Pages;

namespace FieldCheck.Reporting.Tests.Paper;

/// <summary>Records set on pages, before they are written.</summary>
public sealed class PaperBlocksTests
{
    private const double Hair = 0.02;
    private const double Right = PaperSheet.Left + PaperSheet.BlockWidth;
    private const double Bottom = PaperSheet.Top + PaperSheet.BlockHeight;

    private readonly PaperLetters _letters = new();

    public static TheoryData<string> Looked => ["ledger-on-bolts", "hand-truck-bridge", "masonry-lintel"];

    public static TheoryData<string> Hostile =>
    [
        "", " ", "x", new string('W', 5000), string.Concat(Enumerable.Repeat("word ", 3000)), "\ud83d", "\u202e\u0007\u6881",
        string.Concat(Enumerable.Repeat("12.5 kN ", 40)),
    ];

    [Theory]
    [MemberData(nameof(Looked))]
    public void OfPreset_IsThePicture(string name) => Picture.Matches(
        $"pages-{name}", Pages(Records.OfPreset(name)).SelectMany((page, i) => (string[])[$"---- {i + 1} ----", .. Lines(page)]));

    [Theory]
    [MemberData(nameof(Sheets.PresetNames), MemberType = typeof(Sheets))]
    public void OfPreset_NothingReachesOutOfTheBlock(string name) =>
        Assert.All(Pages(Records.OfPreset(name)), page => Assert.All(page.Marks, IsWithinTheBlock));

    [Fact]
    public void RowsOfEveryKind_NothingReachesOutOfTheBlock() =>
        Assert.All(Pages(Records.Of(Sheets.Everything)), page => Assert.All(page.Marks, IsWithinTheBlock));

    [Theory]
    [MemberData(nameof(Hostile))]
    public void AnyText_NothingReachesOutOfTheBlock(string text) => Assert.All(
        Pages(Records.OfEveryKind(text)), page => Assert.All(page.Marks.Where(mark => mark is not PaperMark.Drawing), IsWithinTheBlock));

    [Fact]
    public void LongTable_HasItsHeadOnEveryPageAndEachRowOnce()
    {
        RecordBlock.Table table = new(
            "Places",
            [new("place"), new("figure", IsNumber: true)],
            [.. Enumerable.Range(1, 1500).Select(i => (ImmutableArray<string>)[$"row {i}", $"{i} kN"])]);

        ImmutableArray<PaperPage> pages = Pages(new CheckRecord("Long", [new RecordBlock.Heading(2, "Table"), table]));
        string[][] words = [.. pages.Select(page => page.Marks.OfType<PaperMark.Words>().Select(one => one.Text).ToArray())];

        Assert.InRange(pages.Length, 30, 50);
        Assert.All(words, page => Assert.Equal(1, page.Count(word => word == "place")));
        Assert.Equal(
            table.Rows.SelectMany(row => row),
            words.SelectMany(page => page).Where(word => word.StartsWith("row ", StringComparison.Ordinal) || word.EndsWith(" kN", StringComparison.Ordinal)));
        Assert.All(words, page => Assert.Equal(
            page.Count(word => word.StartsWith("row ", StringComparison.Ordinal)),
            page.Count(word => word.EndsWith(" kN", StringComparison.Ordinal))));
    }

    /// <summary>However far down the page it would fall.</summary>
    [Fact]
    public void ShortTable_StandsOnOnePageWithItsCaption()
    {
        RecordBlock.Table table = new(
            "caption", [new("a"), new("b")], [.. Enumerable.Range(1, 6).Select(i => (ImmutableArray<string>)[$"row {i}", "x"])]);

        for (int before = 1; before < 60; before++)
        {
            CheckRecord record = new("t", [new RecordBlock.Sentences([.. Enumerable.Repeat("filling", before)]), table]);

            PaperPage page = Pages(record).Single(one => one.Marks.Any(mark => mark is PaperMark.Words { Text: "row 1" }));

            Assert.Contains(page.Marks, mark => mark is PaperMark.Words { Text: "caption" });
            Assert.Contains(page.Marks, mark => mark is PaperMark.Words { Text: "row 6" });
        }
    }

    [Fact]
    public void CellLongerThanAPage_IsGoneOnWithOnTheNext()
    {
        string[] words = [.. Enumerable.Range(0, 9000).Select(i => $"w{i}")];
        RecordBlock.Table table = new("One", [new("a"), new("b")], [["first", string.Join(' ', words)], ["second", "end"]]);

        ImmutableArray<PaperPage> pages = Pages(new CheckRecord("Tall", [table]));

        Assert.True(pages.Length > 1);
        Assert.Equal(words, Texts(pages).SelectMany(text => text.Split(' ')).Where(word => word.StartsWith('w')));
        Assert.All(pages, page => Assert.All(page.Marks, IsWithinTheBlock));
    }

    [Fact]
    public void NarrowColumns_KeepTheirWidthBesideALongOne()
    {
        RecordBlock.Table table = new(
            "Checks",
            [new("check"), new("have", IsNumber: true), new("where")],
            [["bending of span 1", "31.407 kip-ft", string.Concat(Enumerable.Repeat("at x = 12.00 ft, ", 20))]]);

        string[] texts = [.. Texts(Pages(new CheckRecord("t", [table])))];

        Assert.Contains("bending of span 1", texts);
        Assert.Contains("31.407 kip-ft", texts);
    }

    [Fact]
    public void Numbers_EndAtTheRightOfTheirColumn()
    {
        RecordBlock.Table table = new("t", [new("a"), new("n", IsNumber: true)], [["x", "1.5"], ["y", "1000.25"]]);

        double[] ends =
        [
            .. Words(Pages(new CheckRecord("t", [table])))
                .Where(words => words.Text is "1.5" or "1000.25" or "n")
                .Select(words => words.X + _letters.WidthOf(words.Text, words.Style)),
        ];

        Assert.Equal(3, ends.Length);
        Assert.All(ends, end => Assert.Equal(ends[0], end, tolerance: Hair));
    }

    [Fact]
    public void Working_StandsInLettersOfOneWidthAndEightyColumnsFit()
    {
        string line = string.Concat(Enumerable.Repeat("0123456789", 8));

        PaperMark.Words words = Words(Pages(new CheckRecord("t", [new RecordBlock.Lines([new("V = 1"), new(""), new(line)])])))
            .Single(one => one.Text == line);

        Assert.Equal(PaperFace.Mono, words.Style.Face);
        Assert.Equal(8, words.Style.Size);
    }

    /// <summary>However far down the page it falls, and however many rows it has.</summary>
    [Fact]
    public void TableOfTheWorking_HasItsHeadOnEveryPageAndNeverWithoutTwoRows()
    {
        foreach (int rows in (int[])[2, 3, 12, 40, 150])
        {
            RecordLine[] table =
                [new("   head"), .. Enumerable.Range(1, rows).Select(i => new RecordLine($"   row {i}") { Head = "   head" })];
            for (int before = 1; before < 70; before++)
            {
                RecordLine[] filling = [.. Enumerable.Repeat(new RecordLine("   filling"), before)];
                CheckRecord record = new(
                    "t", [new RecordBlock.Lines([.. filling, new("1. step") { IsHeading = true }, .. table, .. filling])]);

                string[][] pages =
                    [.. Pages(record).Select(page => page.Marks.OfType<PaperMark.Words>().Select(words => words.Text.Trim()).ToArray())];

                Assert.Equal(Enumerable.Range(1, rows).Select(i => $"row {i}"), pages.SelectMany(page => page).Where(IsRow));
                string[][] having = [.. pages.Where(page => page.Any(IsRow))];
                Assert.Contains("1. step", having[0]);
                Assert.All(having, page => Assert.InRange(page.Count(IsRow), 2, rows));
                Assert.All(having, page => Assert.True(IsRow(page[Array.IndexOf(page, "head") + 1])));
                Assert.Equal(having.Length, pages.Sum(page => page.Count(text => text == "head")));
            }
        }

        static bool IsRow(string text) => text.StartsWith("row ", StringComparison.Ordinal);
    }

    /// <summary>However far down the page they fall: with the blank line that may stand below them.</summary>
    [Fact]
    public void HeadingsOfTheWorking_StandWithWhatTheyHead()
    {
        for (int before = 1; before < 70; before++)
        {
            CheckRecord record = new(
                "t",
                [
                    new RecordBlock.Lines(
                    [
                        .. Enumerable.Repeat(new RecordLine("   filling"), before), new(""),
                        new("UNDER all") { IsHeading = true }, new(""), new("   first words"), new("1. step") { IsHeading = true },
                        new("   Moments about A:"), new("   load 1: 2 x 3 = 6"), new("   sum: 6"), new("   last"),
                    ]),
                ]);
            string[][] pages =
                [.. Pages(record).Select(page => page.Marks.OfType<PaperMark.Words>().Select(words => words.Text.Trim()).ToArray())];

            AssertTogether("UNDER all", "first words");
            AssertTogether("1. step", "Moments about A:");
            AssertTogether("Moments about A:", "load 1: 2 x 3 = 6");

            void AssertTogether(string one, string other) =>
                Assert.Contains(other, pages.Single(page => page.Contains(one)));
        }
    }

    [Theory]
    [InlineData(120, 1)]
    [InlineData(160, 1)]
    [InlineData(400, 3)]
    public void LongerLines_AreSetSmallerAndAtLastCut(int columns, int lines)
    {
        RecordBlock.Lines block = new([new("short"), new(new string('x', columns))]);

        string[] texts = [.. Texts(Pages(new CheckRecord("t", [block]))).Where(text => text.StartsWith('x'))];

        Assert.Equal(lines, texts.Length);
        Assert.Equal(columns, texts.Sum(text => text.Length));
    }

    [Fact]
    public void Warning_IsBold()
    {
        CheckRecord record = new("t", [new RecordBlock.Paragraph("mind", IsWarning: true), new RecordBlock.Paragraph("plain")]);

        Assert.Equal(
            [("mind", PaperFace.Bold), ("plain", PaperFace.Regular)],
            Words(Pages(record)).Where(one => one.Text is "mind" or "plain").Select(one => (one.Text, one.Style.Face)));
    }

    [Fact]
    public void FactLeftOpen_HasALineToWriteOn()
    {
        int Rules(string text) => Pages(new CheckRecord("t", [new RecordBlock.Facts([new("date", text)])]))
            .Single().Marks.OfType<PaperMark.Rule>().Count();

        Assert.Equal(1, Rules("") - Rules("1 May"));
    }

    [Fact]
    public void Signatures_HaveThreeLinesEachAndRoomAboveThem()
    {
        CheckRecord record = new("t", [new RecordBlock.Signatures([new("prepared by", "Ana Sol"), new("checked by", "")])]);
        PaperMark.Rule[] lines = [.. Pages(record).Single().Marks.OfType<PaperMark.Rule>().Where(rule => rule.Width < 300)];

        Assert.Equal(6, lines.Length);
        Assert.Equal(2, lines.Select(line => line.Y).Distinct().Count());
        Assert.InRange(lines[3].Y - lines[0].Y, 36, 72);
        Assert.Contains("Ana Sol", Texts(Pages(record)));
    }

    [Fact]
    public void ManyWhoSign_StandOnMoreThanOnePage()
    {
        RecordBlock.Signatures block = new([.. Enumerable.Range(1, 40).Select(i => new RecordSignature($"witness {i}", ""))]);

        ImmutableArray<PaperPage> pages = Pages(new CheckRecord("t", [block]));

        Assert.Equal(block.All.Select(one => one.Role), Texts(pages).Where(text => text.StartsWith("witness", StringComparison.Ordinal)));
        Assert.All(pages, page => Assert.All(page.Marks, IsWithinTheBlock));
    }

    /// <summary>However far down the page a heading would fall, what it heads stands below it.</summary>
    [Fact]
    public void Heading_NeverEndsAPage()
    {
        RecordBlock[] headed =
        [
            new RecordBlock.Paragraph("text"),
            new RecordBlock.Sentences(["text"]),
            new RecordBlock.Facts([new("text", "text")]),
            new RecordBlock.Table("text", [new("text"), new("text")], [["text", "text"]]),
            new RecordBlock.Figure("text", new Reporting.Pictures.Picture(100, 90, []), [], "text"),
            new RecordBlock.Lines([new("text"), new("text")]),
            new RecordBlock.Signatures([new("text", "text")]),
        ];

        foreach (RecordBlock block in headed)
        {
            for (int before = 0; before < 60; before++)
            {
                CheckRecord record = new(
                    "t",
                    [
                        new RecordBlock.Sentences([.. Enumerable.Repeat("filling", before + 1)]),
                        new RecordBlock.Heading(2, "above"), new RecordBlock.Heading(3, "heading"), block,
                    ]);

                PaperMark[] page = [.. Pages(record).Single(one => one.Bookmarks.Any(mark => mark.Text == "heading")).Marks];

                int at = Array.FindIndex(page, mark => mark is PaperMark.Words { Text: "heading" });
                Assert.Equal("above", Assert.IsType<PaperMark.Words>(page[at - 1]).Text);
                Assert.Contains(page[(at + 1)..], mark => mark is PaperMark.Words { Text: "text" });
            }
        }
    }

    /// <summary>However far down the page they would fall.</summary>
    [Fact]
    public void AFewWordsUnderAHeading_StandWithTheTableThatTheyLeadTo()
    {
        RecordBlock[] leading = [new RecordBlock.Paragraph("leading"), new RecordBlock.Sentences(["leading", "over all", "bays"])];

        foreach (RecordBlock block in leading)
        {
            for (int before = 1; before < 60; before++)
            {
                CheckRecord record = new(
                    "t",
                    [
                        new RecordBlock.Sentences([.. Enumerable.Repeat("filling", before)]), new RecordBlock.Heading(2, "heading"),
                        block, new RecordBlock.Table("caption", [new("a"), new("b")], [["row", "x"]]),
                    ]);

                PaperPage page = Pages(record).Single(one => one.Marks.Any(mark => mark is PaperMark.Words { Text: "row" }));

                Assert.Contains(page.Marks, mark => mark is PaperMark.Words { Text: "heading" });
                Assert.Contains(page.Marks, mark => mark is PaperMark.Words { Text: "leading" });
            }
        }
    }

    /// <summary>However far down the page it would fall: with its heading, whole, and not without words of what is signed.</summary>
    [Fact]
    public void RoomToSign_StandsBelowTheLastWords()
    {
        for (int before = 1; before < 60; before++)
        {
            CheckRecord record = new(
                "t",
                [
                    new RecordBlock.Sentences([.. Enumerable.Repeat("filling", before), "last"]), new RecordBlock.Heading(2, "Signed"),
                    new RecordBlock.Signatures([new("prepared by", ""), new("checked by", "")]),
                ]);

            PaperMark[] page = [.. Pages(record).Single(one => one.Bookmarks.Any(mark => mark.Text == "Signed")).Marks];

            string[] words = [.. page.OfType<PaperMark.Words>().Select(one => one.Text)];
            Assert.Contains("last", words);
            Assert.Equal(["prepared by", "checked by"], words.Where(one => one.EndsWith(" by", StringComparison.Ordinal)));
        }
    }

    [Fact]
    public void FigureLargerThanAPage_IsMadeSmallerAndStandsWithItsCaption()
    {
        Reporting.Pictures.Picture tall = new(2000, 5000, [new PictureMark.Line([new(0, 0), new(2000, 5000)], 1)]);

        PaperPage page = Pages(new CheckRecord("t", [new RecordBlock.Figure("caption", tall, [], "what is seen")]))
            .Single(one => one.Marks.OfType<PaperMark.Drawing>().Any());

        Assert.Contains(page.Marks, mark => mark is PaperMark.Words { Text: "caption" });
        Assert.All(page.Marks, IsWithinTheBlock);
        Assert.Equal("what is seen", page.Marks.OfType<PaperMark.Drawing>().Single().Element!.Description);
    }

    private ImmutableArray<PaperPage> Pages(CheckRecord record) => PdfRecord.Pages(record, _letters);

    private static IEnumerable<PaperMark.Words> Words(ImmutableArray<PaperPage> pages) =>
        pages.SelectMany(page => page.Marks).OfType<PaperMark.Words>();

    private static IEnumerable<string> Texts(ImmutableArray<PaperPage> pages) => Words(pages).Select(words => words.Text);

    /// <summary>What stands on each line of a page, from the top.</summary>
    private static IEnumerable<string> Lines(PaperPage page) => page.Marks
        .GroupBy(mark => Math.Round(mark.Y, 1))
        .OrderBy(line => line.Key)
        .Select(line => string.Join("   ", line.OrderBy(mark => mark.X).Select(mark => mark switch
        {
            PaperMark.Words words => words.Text,
            PaperMark.Rule => "____",
            PaperMark.Drawing drawing => $"(drawing of {drawing.Picture.Marks.Length} marks)",
            _ => throw new ArgumentOutOfRangeException(nameof(page)),
        })));

    private void IsWithinTheBlock(PaperMark mark)
    {
        (double right, double top, double bottom) = mark switch
        {
            PaperMark.Words words => (
                words.X + _letters.WidthOf(words.Text, words.Style), words.Y - words.Style.Size, words.Y + 0.24 * words.Style.Size),
            PaperMark.Rule rule => (rule.X + rule.Width, rule.Y, rule.Y),
            PaperMark.Drawing drawing => (
                drawing.X + drawing.Scale * drawing.Picture.Width, drawing.Y, drawing.Y + drawing.Scale * drawing.Picture.Height),
            _ => throw new ArgumentOutOfRangeException(nameof(mark)),
        };
        Assert.InRange(mark.X, PaperSheet.Left - Hair, Right);
        Assert.InRange(right, PaperSheet.Left, Right + Hair);
        Assert.InRange(top, PaperSheet.Top - Hair, Bottom);
        Assert.InRange(bottom, PaperSheet.Top, Bottom + Hair);
    }
}
