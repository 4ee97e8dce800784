using System.Text.RegularExpressions;

namespace FieldCheck.Tests.Hostile;

/// <summary>What of a record is markup: all of it must be the program's own.</summary>
internal static partial class Markup
{
    private static readonly HashSet<string> Elements = new(StringComparer.Ordinal)
    {
        "!DOCTYPE", "html", "head", "meta", "title", "style", "body", "main", "section", "h1", "h2", "h3", "dl", "div", "dt", "dd", "p",
        "strong", "ul", "li", "figure", "figcaption", "pre", "table", "caption", "thead", "tbody", "tr", "th", "td", "span", "bdi",
        "svg", "desc", "polyline", "polygon", "circle", "text",
    };

    private static readonly HashSet<string> Attributes = new(StringComparer.Ordinal)
    {
        "html", "lang", "charset", "name", "content", "http-equiv", "class", "id", "scope", "role", "aria-label", "aria-labelledby", "xmlns",
        "viewBox", "points", "fill", "stroke", "stroke-width", "stroke-dasharray", "cx", "cy", "r", "x", "y", "font-size", "text-anchor",
    };

    /// <summary>Every tag of a page is one that the program writes, with attributes that it writes.</summary>
    internal static void AssertOurs(string html)
    {
        MatchCollection tags = Tag().Matches(html);
        Assert.Equal(html.Count(sign => sign == '<'), tags.Count);
        Assert.All(tags, tag =>
        {
            Assert.Contains(tag.Groups["name"].Value, Elements);
            Assert.All(tag.Groups["attribute"].Captures, attribute => Assert.Contains(attribute.Value, Attributes));
        });
        Assert.Equal(html.Count(sign => sign == '&'), Reference().Count(html));
    }

    /// <summary>Outside its fences, a text in Markdown holds no sign that begins HTML, and its fences are the program's own.</summary>
    internal static void AssertNone(string markdown)
    {
        string[] lines = markdown.Split('\n');
        Assert.Equal(0, lines.Count(line => line.StartsWith("```", StringComparison.Ordinal)) % 2);
        bool isFenced = false;
        foreach (string line in lines)
        {
            bool isFence = line == "```";
            isFenced ^= isFence;
            Assert.False(isFenced ? !isFence && line.Contains('`') : !isFence && Unescaped().IsMatch(line), line);
        }
    }

    [GeneratedRegex("""</?(?<name>!?\w+)(\s+(?<attribute>[\w:-]+)(="[^"<>]*")?)*\s*/?>""")]
    private static partial Regex Tag();

    [GeneratedRegex("&(amp|lt|gt|quot|#39);")]
    private static partial Regex Reference();

    [GeneratedRegex(@"(?<!\\)(\\\\)*[<>`\]]")]
    private static partial Regex Unescaped();
}
