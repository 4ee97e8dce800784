using System.Xml.Linq;
using FieldCheck.Reporting.Pages;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Reporting.Tests.Pages;

/// <summary>Records as text, Markdown and HTML.</summary>
public sealed class RecordTextTests
{
    private const string Hostile = "<script>alert(1)</script> & \"quoted\" | *bold* _it_ `code` [link](x) # 1. - <b>";

    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    /// <summary>Two bays in which every name is in letters that ASCII lacks, with all that tells of names.</summary>
    internal static readonly BeamDocument Named = new()
    {
        Spans = [new() { Length = "4 m" }, new() { Length = "3 m" }],
        Supports = [new() { Kind = "pin", Joint = "0" }, new() { Kind = "roller", Joint = "1" }, new() { Kind = "roller", Joint = "2" }],
        Loads =
        [
            new() { Kind = "distributed", Total = "6\u00bd kN", To = "4 m", Case = "\u0441\u043d\u0435\u0433", Label = "Tr\u00e4ger \u2013 \u7d5e\u8eca" },
            new() { Kind = "point", At = "5 m", Force = "2 kN \u00b1 5 %", Case = "\u03b2\u03ac\u03c1\u03bf\u03c2" },
        ],
        Sections = [new() { Name = "\u0431\u0440\u0443\u0441", Width = "75 mm", Depth = "225 mm" }],
        Materials = [new() { Name = "\u0441\u043e\u0441\u043d\u0430", Grade = "C24" }],
        Combinations =
        [
            new() { Name = "\u043e\u0441\u043d\u043e\u0432\u043d\u0430\u044f", Factors = [new("\u0441\u043d\u0435\u0433", "1"), new("\u03b2\u03ac\u03c1\u03bf\u03c2", "1")] },
            new() { Name = "\u0443\u0441\u0438\u043b\u0435\u043d\u043d\u0430\u044f", Basis = "factored", Factors = [new("\u0441\u043d\u0435\u0433", "1.5"), new("\u03b2\u03ac\u03c1\u03bf\u03c2", "1.2")] },
        ],
        Patterns = [new() { Case = "\u0441\u043d\u0435\u0433" }],
        Rolling = [new() { Label = "\u0442\u0435\u043b\u0435\u0436\u043a\u0430", Case = "\u03b2\u03ac\u03c1\u03bf\u03c2", Axles = [new() { Offset = "0 m", Force = "1 kN" }] }],
        Stated =
        [
            new() { Support = "A", Vertical = "1 kN", Combination = "\u043e\u0441\u043d\u043e\u0432\u043d\u0430\u044f", Source = "\u0447\u0435\u0440\u0442\u0451\u0436 5" },
            new() { Support = "B", Vertical = "9 kN", Combination = "\u043e\u0441\u043d\u043e\u0432\u043d\u0430\u044f", Source = "\u0447\u0435\u0440\u0442\u0451\u0436 5" },
            new() { Support = "C", Vertical = "3 kN", Combination = "\u043e\u0441\u043d\u043e\u0432\u043d\u0430\u044f", Source = "\u0447\u0435\u0440\u0442\u0451\u0436 5" },
        ],
        Limits = new() { Deflection = "L/360", DeflectionCases = [new("\u0441\u043d\u0435\u0433", "L/480")] },
    };

    public static TheoryData<string> Looked => ["ledger-on-bolts", "hand-truck-bridge", "masonry-lintel"];

    [Theory]
    [MemberData(nameof(Looked))]
    public void OfPreset_IsTheFile(string name)
    {
        CheckRecord record = Records.OfPreset(name);

        Picture.MatchesFile($"record-{name}.txt", TextRecord.Of(record));
        Picture.MatchesFile($"record-{name}.md", MarkdownRecord.Of(record));
        Picture.MatchesFile($"record-{name}.html", HtmlRecord.Of(record));
    }

    [Fact]
    public void RowsOfEveryKind_IsTheText() =>
        Picture.MatchesFile("record-everything.txt", TextRecord.Of(Records.Of(Sheets.Everything)));

    [Fact]
    public void Input_IsInTheLettersThatWereTyped()
    {
        BeamDocument beam = new()
        {
            Spans = [new SpanEntry { Length = "4 m" }],
            Supports = [new SupportEntry { Kind = "pin", At = "0 m" }, new SupportEntry { Kind = "roller", At = "4 m" }],
            Loads = [new LoadEntry { Kind = "point", Label = "P\u016f\u013d Tr\u00e4ger \u4e2d\u001b", At = "1 m", Force = "6\u00bd kN" }],
            Combinations = [new CombinationEntry { Name = "\u0416", Factors = [new NamedFigure("live", "1")] }],
        };

        string text = TextRecord.Of(Records.Of(beam));

        Assert.Contains("- load 1 P\u016f\u013d Tr\u00e4ger \u4e2d? (live): 6\u00bd kN, read as 6.50 kN at 1.00 m", text);
        Assert.Contains("- combination \u0416 (service): 1.00 live", text);
    }

    /// <summary>Names in other letters than Latin ones, wherever a name is told: working, tables, envelopes, stated figures, checks.</summary>
    [Fact]
    public void Names_StandAsTypedWhereTheFormCanCarryThem()
    {
        CheckRecord record = Records.Of(Sheets.Run(Named), Records.Request with { IsWorkingShort = false });
        string html = HtmlRecord.Of(record);
        string markdown = MarkdownRecord.Of(record);

        Assert.All((string[])[html, markdown], text => Assert.DoesNotContain("??", text));
        Assert.Equal(
            [
                "UNDER \u043e\u0441\u043d\u043e\u0432\u043d\u0430\u044f (service, combination 1 of 2), NOT THE WORST",
                "   Load 1, Tr\u00e4ger \u2013 \u7d5e\u8eca (\u0441\u043d\u0435\u0433): 6\u00bd kN in all,",
            ],
            record.Blocks.OfType<RecordBlock.Lines>().Last().All.Select(line => line.Text)
                .Where(text => text.StartsWith("UNDER", StringComparison.Ordinal) || text.Contains("Load 1,", StringComparison.Ordinal)).Select(text => text.Split(" from ")[0]).Take(2));
        Assert.Contains("<h2 id=\"s6\">Combination \u043e\u0441\u043d\u043e\u0432\u043d\u0430\u044f (service figures)</h2>", html);
        Assert.Contains("<td>\u0447\u0435\u0440\u0442\u0451\u0436 5</td>", html);
    }

    /// <summary>Text for a line printer keeps to ASCII outside the input, as its columns need it.</summary>
    [Fact]
    public void Names_ArePlainInText()
    {
        string text = TextRecord.Of(Records.Of(Sheets.Run(Named), Records.Request with { IsPlain = true }));

        Assert.Contains("UNDER ???????? (service, combination 1 of 2)", text);
        Assert.Contains("- load 1 Tr\u00e4ger \u2013 \u7d5e\u8eca (\u0441\u043d\u0435\u0433): 6\u00bd kN in all, read as", text);
    }

    /// <summary>Hebrew beside figures: each run of words is isolated, so that no figure changes its place (Unicode Standard Annex 9).</summary>
    [Theory]
    [InlineData("1.20 \u05d0\u05d1 + 1.60 \u05d2", "1.20 <bdi>\u05d0\u05d1</bdi> + 1.60 <bdi>\u05d2</bdi>")]
    [InlineData("\u05d0\u05d1  \u05d2 \u0627 3", "<bdi>\u05d0\u05d1  \u05d2 \u0627</bdi> 3")]
    [InlineData("x \U00010840 & \u0416", "x <bdi>\U00010840</bdi> &amp; \u0416")]
    public void Html_SetsWordsThatRunToTheLeftApart(string text, string written) => Assert.Contains(
        $"<p>{written}</p>", HtmlRecord.Of(new CheckRecord("t", [new RecordBlock.Paragraph(text)])));

    [Theory]
    [MemberData(nameof(Sheets.PresetNames), MemberType = typeof(Sheets))]
    public void Text_FitsItsColumns(string name) => Assert.All(
        TextRecord.Of(Records.OfPreset(name)).Split('\n'), line => Assert.InRange(line.Length, 0, 80));

    /// <summary>HTML that is XML too: every tag closed, every attribute quoted, nothing of the text taken for markup.</summary>
    [Theory]
    [MemberData(nameof(Sheets.PresetNames), MemberType = typeof(Sheets))]
    public void Html_IsWellFormedAndAccessible(string name)
    {
        CheckRecord record = Records.OfPreset(name);
        XElement html = Parsed(HtmlRecord.Of(record));

        Assert.Equal("en", html.Attribute("lang")!.Value);
        Assert.Single(html.Descendants("h1"));
        Assert.All(html.Descendants("table").Where(table => table.Attribute("role") is null), table =>
        {
            Assert.Single(table.Elements("caption"));
            Assert.All(table.Element("thead")!.Descendants("th"), cell => Assert.Equal("col", cell.Attribute("scope")!.Value));
            Assert.All(
                table.Element("tbody")!.Elements("tr"),
                row => Assert.Equal("row", row.Elements().First().Attribute("scope")!.Value));
        });
        Assert.All(html.Descendants(Svg + "svg"), picture =>
        {
            string[] labels = picture.Attribute("aria-labelledby")!.Value.Split(' ');
            Assert.Equal(picture.Elements().Take(2).Select(one => one.Attribute("id")!.Value), labels);
            Assert.All(picture.Elements().Take(2), label => Assert.NotEmpty(label.Value));
        });
        Assert.Equal(record.Blocks.OfType<RecordBlock.Figure>().Count(), html.Descendants(Svg + "svg").Count());
        string[] ids = [.. html.Descendants().Attributes("id").Select(id => id.Value)];
        Assert.Equal(ids.Distinct(), ids);
    }

    /// <summary>CSS Fragmentation 3, break-after: what leads to a table or a drawing is kept with it, and says so in its class.</summary>
    [Theory]
    [MemberData(nameof(Sheets.PresetNames), MemberType = typeof(Sheets))]
    public void Html_HeadingsStandWithWhatTheyHead(string name)
    {
        XElement html = Parsed(HtmlRecord.Of(Records.OfPreset(name)));
        string style = html.Descendants("style").Single().Value;
        XElement[] answers = [.. html.Descendants("h2").Where(one => one.Value.StartsWith("Combination ", StringComparison.Ordinal))];

        Assert.Contains("h1, h2, h3, caption, figcaption, .lead, .tail, .tail li:last-child { break-after: avoid; }", style);
        Assert.Contains(".whole, .lead, thead, tr { break-inside: avoid; }", style);
        Assert.NotEmpty(answers);
        Assert.All(answers, heading =>
        {
            XElement[] between = [.. heading.ElementsAfterSelf().TakeWhile(one => one.Name.LocalName is not ("figure" or "div"))];
            Assert.NotEmpty(between);
            Assert.All(between, one => Assert.Equal("lead", one.Attribute("class")?.Value));
        });
        XElement[] last = [.. html.Descendants("ul").Where(list => list.Attribute("class") is not null && !list.ElementsAfterSelf().Any())];
        Assert.Equal("tail", Assert.Single(last).Attribute("class")!.Value);
        Assert.Equal("Signed", last[0].Parent!.ElementsAfterSelf("section").First().Element("h2")!.Value);
    }

    /// <summary>Every line of the working stands in the file, in order; a table of it has its head where a browser repeats it.</summary>
    [Theory]
    [MemberData(nameof(Sheets.PresetNames), MemberType = typeof(Sheets))]
    public void Html_HoldsEveryLineOfTheWorking(string name)
    {
        CheckRecord record = Records.Of(Sheets.Preset(name), Records.Request with { IsWorkingShort = false });
        RecordLine[] lines = [.. record.Blocks.OfType<RecordBlock.Lines>().SelectMany(block => block.All)];
        XElement[] kept = [.. Parsed(HtmlRecord.Of(record)).Descendants("div").Where(one => one.Attribute("class")?.Value == "kept")];

        // A parser drops the line feed behind the opening tag.
        Assert.Equal(
            lines.Select(line => line.Text),
            kept.Elements().SelectMany(part => part.Name == "pre"
                ? part.Value[1..^1].Split('\n')
                : part.Descendants("td").Select(cell => cell.Value)));
        Assert.Equal(lines.Any(line => line.Head is not null), kept.Elements("table").Any());
        Assert.All(kept.Elements("table"), table => Assert.Contains(
            lines, line => line.Head == table.Element("thead")!.Value.Trim('\n') && line.Text == table.Element("tbody")!.Elements().First().Value));
        Assert.Equal(
            lines.Where(line => line.IsHeading).Select(line => line.Text),
            kept.Elements("pre").Where(part => part.Attribute("class")?.Value == "lead")
                .SelectMany(part => part.Value[1..^1].Split('\n').Where(text => text.Length > 0)));
    }

    [Fact]
    public void Html_TakesNoTextForMarkupAndLoadsNothing()
    {
        string text = HtmlRecord.Of(Records.OfEveryKind(Hostile));
        XElement html = Parsed(text);

        Assert.Empty(html.Descendants("script"));
        Assert.Empty(html.Descendants("b"));
        Assert.Equal(Hostile, html.Descendants("h1").Single().Value);
        Assert.Equal(Hostile, html.Descendants("td").Concat(html.Descendants("th")).First(cell => cell.Value.Length > 9).Value);
        Assert.DoesNotContain("http://", text.Replace(Svg.NamespaceName, "", StringComparison.Ordinal));
        Assert.DoesNotContain("https://", text);
        Assert.DoesNotContain("url(", text);
    }

    [Fact]
    public void Markdown_TakesNoTextForMarkup()
    {
        string text = MarkdownRecord.Of(Records.OfEveryKind(Hostile));

        Assert.StartsWith(
            @"# \<script\>alert(1)\</script\> \& ""quoted"" \| \*bold\* \_it\_ \`code\` \[link\](x) # 1. - \<b\>",
            text,
            StringComparison.Ordinal);
        Assert.DoesNotContain("<script>", text);
    }

    [Theory]
    [InlineData("# not a heading", @"\# not a heading")]
    [InlineData("- not a list", @"\- not a list")]
    [InlineData("12. not a number", @"12\. not a number")]
    [InlineData("+3.2 kip", @"\+3.2 kip")]
    [InlineData("at 3.2 ft, about -1.5 kip-ft", "at 3.2 ft, about -1.5 kip-ft")]
    public void Markdown_KeepsFiguresReadable(string text, string written) => Assert.Contains(
        $"\n{written}\n", MarkdownRecord.Of(new CheckRecord("t", [new RecordBlock.Paragraph(text)])));

    /// <summary>Columns give way at blanks and hyphens before a word is cut within.</summary>
    [Fact]
    public void Text_TableDoesNotCutAWordWhereAnotherColumnCanGiveWay()
    {
        string sentence = string.Concat(Enumerable.Repeat("word after word ", 20));
        RecordBlock.Table table = new("Checks", [new("check"), new("under"), new("where")], [["lateral-torsional buckling of span 1", sentence, "unstiffenedness"]]);

        string text = TextRecord.Of(new CheckRecord("t", [table]), 60);

        Assert.Contains("torsional", text);
        Assert.Contains("unstiffenedness", text);
        Assert.All(text.Split('\n'), line => Assert.InRange(line.Length, 0, 60));
    }

    [Fact]
    public void Text_HasEveryKindOfBlock() => Picture.MatchesFile(
        "record-every-kind.txt", TextRecord.Of(Records.OfEveryKind("Bearer over the service trench, at the gate")));

    private static XElement Parsed(string html) => XDocument
        .Parse(html.Replace("<!DOCTYPE html>", "", StringComparison.Ordinal)
            .Replace("<meta charset=\"utf-8\">", "", StringComparison.Ordinal)
            .Replace("initial-scale=1\">", "initial-scale=1\"/>", StringComparison.Ordinal)
            .Replace("'unsafe-inline'\">", "'unsafe-inline'\"/>", StringComparison.Ordinal))
        .Root!;
}
