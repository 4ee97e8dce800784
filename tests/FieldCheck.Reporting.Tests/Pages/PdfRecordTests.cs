using System.Buffers.Binary;
using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using FieldCheck.Reporting.Pages;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Outline;
using UglyToad.PdfPig.Tokens;

namespace FieldCheck.Reporting.Tests.Pages;

/// <summary>Records as PDF, read back from the bytes by another library than the one that wrote them.</summary>
public sealed partial class PdfRecordTests
{
    private const double Hair = 0.01;

    /// <summary>A4 is 210 x 297 mm (ISO 216), Letter 215.9 x 279.4 mm (ANSI Y14.1): the letters stand where both have paper.</summary>
    [Theory]
    [MemberData(nameof(Sheets.PresetNames), MemberType = typeof(Sheets))]
    public void Pages_AreA4AndFitLetterToo(string name)
    {
        using PdfDocument pdf = PdfDocument.Open(PdfRecord.Of(Records.OfPreset(name)));
        double cutAtHeadAndFoot = (297 - 279.4) / 2 * 72 / 25.4;

        Assert.All(pdf.GetPages(), page =>
        {
            Assert.Equal(210 * 72 / 25.4, page.Width, tolerance: 0.5);
            Assert.Equal(297 * 72 / 25.4, page.Height, tolerance: 0.5);
            Assert.NotEmpty(page.Letters);
            Assert.All(page.Letters.Where(letter => letter.Value != " "), letter =>
            {
                Assert.InRange(letter.StartBaseLine.X, 42 - Hair, 553 + Hair);
                Assert.InRange(letter.EndBaseLine.X, 42 - Hair, 553 + Hair);
                Assert.InRange(
                    letter.StartBaseLine.Y, cutAtHeadAndFoot + 45, page.Height - cutAtHeadAndFoot - 45 - letter.PointSize * 0.7);
            });
        });
    }

    /// <summary>Where every line of every page stands, and how much is drawn there.</summary>
    [Theory]
    [MemberData(nameof(RecordTextTests.Looked), MemberType = typeof(RecordTextTests))]
    public void OfPreset_IsTheFile(string name)
    {
        using PdfDocument pdf = PdfDocument.Open(PdfRecord.Of(Records.OfPreset(name)));

        Picture.MatchesFile($"record-{name}.pdf.txt", string.Join('\n', pdf.GetPages().SelectMany(Laid)) + "\n");
    }

    [Fact]
    public void EveryPage_TellsOfWhichRecordItIsAndWhichOfHowMany()
    {
        using PdfDocument pdf = PdfDocument.Open(PdfRecord.Of(Records.OfPreset("pump-skid")));

        Assert.InRange(pdf.NumberOfPages, 3, 30);
        Assert.All(pdf.GetPages(), page =>
        {
            string text = Plain(page.Text);
            Assert.Contains(Plain("Check of a beam: Skid beam under a pump and its motor, supports set in"), text);
            Assert.Contains(Plain($"SHA-256 {Records.Digest[..12]} beam.toml"), text);
            Assert.Contains(Plain($"page {page.Number} of {pdf.NumberOfPages}"), text);
        });
    }

    /// <summary>All that the record says stands in the file, but for the words for whoever cannot see a drawing.</summary>
    [Theory]
    [MemberData(nameof(Sheets.PresetNames), MemberType = typeof(Sheets))]
    public void Pages_HoldAllThatTheRecordSays(string name)
    {
        CheckRecord record = Records.OfPreset(name);
        using PdfDocument pdf = PdfDocument.Open(PdfRecord.Of(record));
        string text = string.Concat(pdf.GetPages().Select(Body));

        Assert.All(record.Blocks.SelectMany(Said), said => Assert.Contains(Plain(said), text));
    }

    /// <summary>Letters that the fonts have stand as typed, in the running text, the tables and the working.</summary>
    [Fact]
    public void Names_StandInTheLettersThatWereTyped()
    {
        using PdfDocument pdf = PdfDocument.Open(PdfRecord.Of(Records.Of(RecordTextTests.Named)));
        string text = string.Concat(pdf.GetPages().Select(Body));

        Assert.DoesNotContain("??", text);
        Assert.Contains(Plain("Combination \u043e\u0441\u043d\u043e\u0432\u043d\u0430\u044f (service figures)"), text);
        Assert.Contains(Plain("Tr\u00e4ger \u2013 \u25a1\u25a1 (\u0441\u043d\u0435\u0433): 6\u00bd kN"), text);
        Assert.Contains(Plain("\u0441\u043d\u0435\u0433 on bay 1"), text);
    }

    [Fact]
    public void Figures_AreDrawnInLinesAndSayWhatTheyShow()
    {
        CheckRecord record = Records.OfPreset("pump-skid");
        using PdfDocument pdf = PdfDocument.Open(PdfRecord.Of(record));

        string[] descriptions = [.. Dictionaries(pdf).Select(one => Text(one, "Alt")).OfType<string>()];

        Assert.All(pdf.GetPages(), page => Assert.Empty(page.GetImages()));
        Assert.Equal(
            record.Blocks.OfType<RecordBlock.Figure>().Select(figure => figure.Description).Order(), descriptions.Order());
    }

    /// <summary>Structure types of ISO 32000-1, 14.8.4: as many as the record has blocks and rows.</summary>
    [Fact]
    public void Structure_IsThatOfTheRecord()
    {
        CheckRecord record = Records.OfPreset("pump-skid");
        using PdfDocument pdf = PdfDocument.Open(PdfRecord.Of(record));
        Dictionary<string, int> elements = Dictionaries(pdf)
            .Where(one => Name(one, "Type") == "StructElem")
            .CountBy(one => Name(one, "S")!)
            .ToDictionary();
        int facts = record.Blocks.OfType<RecordBlock.Facts>().Count();
        RecordBlock.Table[] tables = [.. record.Blocks.OfType<RecordBlock.Table>()];

        Assert.Equal(1, elements["H1"]);
        Assert.Equal(record.Blocks.Count(block => block is RecordBlock.Heading { Level: 2 }), elements["H2"]);
        Assert.Equal(record.Blocks.OfType<RecordBlock.Sentences>().Count(), elements["L"]);
        Assert.Equal(record.Blocks.OfType<RecordBlock.Sentences>().Sum(block => block.All.Length), elements["LI"]);
        Assert.Equal(tables.Length + facts, elements["Table"]);
        Assert.Equal(
            tables.Sum(table => table.Rows.Length + 1) + record.Blocks.OfType<RecordBlock.Facts>().Sum(block => block.All.Length),
            elements["TR"]);
        Assert.Equal(record.Blocks.OfType<RecordBlock.Figure>().Count(), elements["Figure"]);
        Assert.True(pdf.Structure.Catalog.CatalogDictionary.Data["MarkInfo"] is not null);
    }

    [Fact]
    public void Fonts_AreEmbeddedAndNoOtherThanOurs()
    {
        using PdfDocument pdf = PdfDocument.Open(PdfRecord.Of(Records.OfPreset("pump-skid")));

        string[] names = [.. pdf.GetPages().SelectMany(page => page.Letters).Select(letter => letter.FontName!).Distinct().Order()];
        DictionaryToken[] descriptors = [.. Dictionaries(pdf).Where(one => Name(one, "Type") == "FontDescriptor")];

        Assert.Equal(["DejaVu Sans", "DejaVu Sans Mono", "DejaVu Sans,Bold"], names.Select(name => SubsetTag().Replace(name, "")));
        Assert.All(names, name => Assert.Matches(SubsetTag(), name));
        Assert.Equal(3, descriptors.Length);
        Assert.All(descriptors, one => Assert.True(one.ContainsKey(NameToken.FontFile2)));
    }

    [Fact]
    public void Document_TellsOfItself()
    {
        CheckRecord record = Records.Of(Sheets.Trench with { Title = "Bearer", Record = new() { PreparedBy = "Ana Sol" } });
        using PdfDocument pdf = PdfDocument.Open(PdfRecord.Of(record));

        Assert.Equal("Check of a beam: Bearer", pdf.Information.Title);
        Assert.Equal("Ana Sol", pdf.Information.Author);
        Assert.Equal("fieldcheck 9.8.7", pdf.Information.Creator);
        Assert.Null(pdf.Information.CreationDate);
        Assert.Null(pdf.Information.ModifiedDate);
        Assert.Equal("en", Text(pdf.Structure.Catalog.CatalogDictionary, "Lang"));
    }

    [Fact]
    public void Bookmarks_AreTheHeadings()
    {
        CheckRecord record = Records.OfPreset("store-floor-beam");
        using PdfDocument pdf = PdfDocument.Open(PdfRecord.Of(record));

        Assert.True(pdf.TryGetBookmarks(out Bookmarks? bookmarks));
        DocumentBookmarkNode[] nodes = [.. bookmarks.GetNodes().OfType<DocumentBookmarkNode>()];

        Assert.Equal(record.Blocks.OfType<RecordBlock.Heading>().Select(heading => heading.Text), nodes.Select(node => node.Title));
        Assert.Equal(record.Blocks.OfType<RecordBlock.Heading>().Select(heading => heading.Level - 2), nodes.Select(node => node.Level));
        Assert.All(nodes, node => Assert.Contains(Plain(node.Title), Plain(pdf.GetPage(node.PageNumber).Text)));
    }

    [Fact]
    public void SameRecord_SameBytes_WhateverTheClockAndWhatWasWrittenBefore()
    {
        CheckRecord record = Records.OfPreset("pump-skid");

        byte[] first = PdfRecord.Of(record);
        Thread.Sleep(TimeSpan.FromSeconds(1.1));
        byte[] other = PdfRecord.Of(Records.OfEveryKind("\u0416 \u03a9 other letters"));
        byte[] second = PdfRecord.Of(record);

        Assert.Equal(first, second);
        Assert.NotEqual(Id(first), Id(other));
    }

    [Fact]
    public void WrittenManyAtOnce_SameBytes()
    {
        CheckRecord record = Records.OfPreset("two-bay-bearer");
        byte[] alone = PdfRecord.Of(record);
        byte[][] together = new byte[8][];

        Parallel.For(0, together.Length, i => together[i] = PdfRecord.Of(record));

        Assert.All(together, bytes => Assert.Equal(alone, bytes));
    }

    [Fact]
    public void OtherCulture_SameBytes()
    {
        CheckRecord record = Records.OfPreset("pump-skid");
        CultureInfo before = CultureInfo.CurrentCulture;
        NumberFormatInfo numbers = new() { NumberDecimalSeparator = ",", NegativeSign = "~", NumberGroupSeparator = "." };
        byte[] plain = PdfRecord.Of(record);
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo("", useUserOverride: false) { NumberFormat = numbers };

            Assert.Equal(plain, PdfRecord.Of(record));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void File_HoldsNoDate()
    {
        string bytes = Encoding.Latin1.GetString(PdfRecord.Of(Records.OfPreset("pump-skid")));

        Assert.DoesNotMatch(@"\(D:\d", bytes);
        Assert.DoesNotContain("Date", bytes);
        Assert.DoesNotContain("uuid", bytes);
        Assert.DoesNotContain(DateTime.UtcNow.ToString("yyyyMMdd", CultureInfo.InvariantCulture), bytes);
        Assert.DoesNotContain(DateTime.UtcNow.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), bytes);
    }

    /// <summary>RFC 1950, 2.2: what is packed ends with the Adler-32 of what it holds.</summary>
    [Fact]
    public void Streams_EndWithTheirChecksum()
    {
        using PdfDocument pdf = PdfDocument.Open(PdfRecord.Of(Records.OfPreset("pump-skid")));

        StreamToken[] streams = [.. Objects(pdf).OfType<StreamToken>()];

        Assert.True(streams.Length > pdf.NumberOfPages);
        Assert.All(streams, stream =>
        {
            Assert.Equal("FlateDecode", Name(stream.StreamDictionary, "Filter"));
            using System.IO.Compression.ZLibStream unpacking = new(
                new MemoryStream(stream.Data.ToArray()), System.IO.Compression.CompressionMode.Decompress);
            using MemoryStream plain = new();
            unpacking.CopyTo(plain);
            Assert.Equal(Adler32(plain.ToArray()), BinaryPrimitives.ReadUInt32BigEndian(stream.Data.Span[^4..]));
        });
    }

    /// <summary>Control characters, a turn of direction, a letter of no font, an emoji, markup of the format itself.</summary>
    [Theory]
    [InlineData("a\u001b[31mb\u0000c\td\r\ne", "a?[31mb?c?d??e")]
    [InlineData("no\u202egnihton", "no?gnihton")]
    [InlineData("\u6881 beam", "\u25a1 beam")]
    [InlineData("gone \U0001F9F1", "gone \u25a1")]
    [InlineData(") Tj ET << /Type >> %%EOF", ") Tj ET << /Type >> %%EOF")]
    [InlineData("\u03c3 \u2264 \u00bd \u00d7 3\u00b2", "\u03c3 \u2264 \u00bd \u00d7 3\u00b2")]
    public void HostileText_IsShownWithASubstituteForWhatCannotBe(string text, string shown)
    {
        using PdfDocument pdf = PdfDocument.Open(PdfRecord.Of(Records.OfEveryKind(text)));
        string all = string.Concat(pdf.GetPages().Select(page => Plain(page.Text)));

        // The title at its head and in the frame, two headings, fact, two paragraphs, sentence, two captions, column, cell,
        // in the drawing, and the name of who signs; a record of one page.
        Assert.Equal(1, pdf.NumberOfPages);
        Assert.Equal(14, all.Split(Plain(shown)).Length - 1);
        Assert.Equal(shown, pdf.Information.Title);
    }

    [Fact]
    public void HalfAPair_IsShownWithASubstitute()
    {
        using PdfDocument pdf = PdfDocument.Open(PdfRecord.Of(Records.OfEveryKind("half \ud83d")));

        Assert.Equal("half ?", pdf.Information.Title);
        Assert.Contains("half?", Plain(pdf.GetPage(1).Text));
    }

    [Fact]
    public void EmptyRecord_IsAPage()
    {
        using PdfDocument pdf = PdfDocument.Open(PdfRecord.Of(new CheckRecord("", [])));

        Assert.Equal(1, pdf.NumberOfPages);
    }

    private static IEnumerable<string> Said(RecordBlock block) => block switch
    {
        RecordBlock.Heading heading => [heading.Text],
        RecordBlock.Facts facts => facts.All.Select(fact => fact.Name + fact.Text),
        RecordBlock.Paragraph paragraph => [paragraph.Text],
        RecordBlock.Sentences sentences => sentences.All.Select(line => line.TrimStart('-', ' ')),
        RecordBlock.Table table => [table.Caption, .. table.Rows.SelectMany(row => row)],
        RecordBlock.Figure figure => [figure.Caption],
        RecordBlock.Lines lines => lines.All.Select(line => line.Text),
        RecordBlock.Signatures signatures => signatures.All.Select(one => one.Role),
        _ => throw new ArgumentOutOfRangeException(nameof(block)),
    };

    /// <summary>What stands between the head and the foot of a page: its marked content but what belongs to nothing.</summary>
    private static string Body(Page page) => Plain(string.Concat(page.Letters
        .Where(letter => letter.StartBaseLine.Y is > 92 and < 750)
        .Select(letter => letter.Value)));

    private static string Plain(string text) => text.Replace(" ", "", StringComparison.Ordinal);

    private static string Id(byte[] file) =>
        Regex.Match(Encoding.Latin1.GetString(file), "/ID\\[<([0-9A-F]{32})>").Groups[1].Value;

    private static IEnumerable<IToken> Objects(PdfDocument pdf) =>
        pdf.Structure.CrossReferenceTable.ObjectOffsets.Keys.Select(reference => pdf.Structure.GetObject(reference).Data);

    private static IEnumerable<DictionaryToken> Dictionaries(PdfDocument pdf) => Objects(pdf).OfType<DictionaryToken>();

    private static string? Name(DictionaryToken dictionary, string key) =>
        dictionary.Data.TryGetValue(key, out IToken? value) ? (value as NameToken)?.Data : null;

    private static string? Text(DictionaryToken dictionary, string key) =>
        dictionary.Data.TryGetValue(key, out IToken? value) ? (value as StringToken)?.Data : null;

    private static uint Adler32(byte[] bytes)
    {
        (uint a, uint b) = (1, 0);
        foreach (byte one in bytes)
        {
            a = (a + one) % 65521;
            b = (b + a) % 65521;
        }

        return (b << 16) | a;
    }

    [GeneratedRegex("^[A-Z]{6}\\+")]
    private static partial Regex SubsetTag();

    // Points from the left and from the foot. What is not so close that it is read as one is two pieces of a line.
    private static IEnumerable<string> Laid(Page page) =>
    [
        $"page {page.Number}, {page.Paths.Count} paths",
        .. page.Letters
            .GroupBy(letter => Math.Round(letter.StartBaseLine.Y))
            .OrderByDescending(line => line.Key)
            .Select(line => string.Create(CultureInfo.InvariantCulture, $"{line.Key,5}  {Pieces(line)}").TrimEnd()),
    ];

    private static string Pieces(IEnumerable<Letter> line)
    {
        StringBuilder text = new();
        double end = double.NegativeInfinity;
        foreach (Letter letter in line.OrderBy(letter => letter.StartBaseLine.X))
        {
            if (letter.StartBaseLine.X > end + letter.PointSize)
            {
                text.Append(CultureInfo.InvariantCulture, $"{(text.Length == 0 ? "" : "  ")}[{Math.Round(letter.StartBaseLine.X)}] ");
            }

            text.Append(letter.Value);
            end = letter.EndBaseLine.X;
        }

        return text.ToString();
    }
}
