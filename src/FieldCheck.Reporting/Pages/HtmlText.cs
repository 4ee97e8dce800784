namespace FieldCheck.Reporting.Pages;

/// <summary>Text as it stands in HTML and SVG, between tags and in the values of attributes.</summary>
internal static class HtmlText
{
    /// <summary>The text with references for the five signs that markup is made of.</summary>
    /// <param name="text">The text.</param>
    internal static string Of(string text) => text
        .Replace("&", "&amp;", StringComparison.Ordinal)
        .Replace("<", "&lt;", StringComparison.Ordinal)
        .Replace(">", "&gt;", StringComparison.Ordinal)
        .Replace("\"", "&quot;", StringComparison.Ordinal)
        .Replace("'", "&#39;", StringComparison.Ordinal);
}
