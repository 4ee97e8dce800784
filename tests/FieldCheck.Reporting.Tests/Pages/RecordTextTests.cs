using System.Xml.Linq;
using FieldCheck.Reporting.Pages;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Reporting.Tests.Pages;

/// <summary>Records as text, Markdown and HTML.</summary>
public sealed class RecordTextTests
{
    private const string Hostile = "<script>alert(1)</script> & \"quoted\" | *bold* _it_ `code` [link](x) # 1. - <b>";

    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

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
