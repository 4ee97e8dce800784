using System.Text.RegularExpressions;

namespace FieldCheck.Reporting.Pages;

/// <summary>Text as it stands in HTML and SVG.</summary>
internal static partial class HtmlText
{
    /// <summary>
    /// The text with references for the five signs that markup is made of, for between tags and in the values of attributes.
    /// </summary>
    /// <param name="text">The text.</param>
    internal static string Of(string text) => text
        .Replace("&", "&amp;", StringComparison.Ordinal)
        .Replace("<", "&lt;", StringComparison.Ordinal)
        .Replace(">", "&gt;", StringComparison.Ordinal)
        .Replace("\"", "&quot;", StringComparison.Ordinal)
        .Replace("'", "&#39;", StringComparison.Ordinal);

    /// <summary>
    /// The same for the flow of a page: words of a script that runs to the left are set apart, so that they do not change the
    /// order of the figures beside them (Unicode Standard Annex 9, isolates; HTML, bdi).
    /// </summary>
    /// <param name="text">The text.</param>
    internal static string InFlow(string text) => ToTheLeft().Replace(Of(text), "<bdi>$0</bdi>");

    // Hebrew, Arabic and their neighbours up to U+08FF, their forms for display, and such scripts beyond the basic plane.
    [GeneratedRegex(@"(?:[\u0590-\u08FF\uFB1D-\uFDFF\uFE70-\uFEFC]|[\uD802\uD803\uD83A\uD83B][\uDC00-\uDFFF])(?: *(?:[\u0590-\u08FF\uFB1D-\uFDFF\uFE70-\uFEFC]|[\uD802\uD803\uD83A\uD83B][\uDC00-\uDFFF]))*")]
    private static partial Regex ToTheLeft();
}
