using System.Diagnostics;
using System.Text;

namespace FieldCheck.Reporting.Pages;

/// <summary>A record as the bytes of a file.</summary>
public static class RecordFile
{
    private static readonly (string Ending, RecordFormat Format)[] Known =
    [
        (".pdf", RecordFormat.Pdf), (".html", RecordFormat.Html), (".md", RecordFormat.Markdown), (".txt", RecordFormat.Text),
    ];

    /// <summary>The endings that a name may have, for messages.</summary>
    public static string Endings { get; } = ".pdf, .html, .md or .txt";

    /// <summary>What a file's name asks for by its ending.</summary>
    /// <param name="name">The name, with or without folders.</param>
    /// <returns>Null for another ending.</returns>
    public static RecordFormat? FormatOf(string name) => Known
        .Where(one => name.EndsWith(one.Ending, StringComparison.OrdinalIgnoreCase))
        .Select(one => (RecordFormat?)one.Format)
        .FirstOrDefault();

    /// <summary>Writes a record; the same record gives the same bytes.</summary>
    /// <param name="record">The record.</param>
    /// <param name="format">In what.</param>
    public static byte[] Bytes(CheckRecord record, RecordFormat format) => format switch
    {
        RecordFormat.Text => Encoding.UTF8.GetBytes(TextRecord.Of(record)),
        RecordFormat.Markdown => Encoding.UTF8.GetBytes(MarkdownRecord.Of(record)),
        RecordFormat.Html => Encoding.UTF8.GetBytes(HtmlRecord.Of(record)),
        RecordFormat.Pdf => PdfRecord.Of(record),
        _ => throw new UnreachableException(),
    };
}
