using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;
using System.Text;
using FieldCheck.Reporting.Pictures;

namespace FieldCheck.Reporting.Pages;

/// <summary>Writes a record as one HTML file: its drawings and its style inside, nothing loaded, no script.</summary>
public sealed class HtmlRecord
{
    private const int MostKeptWhole = 26;
    private const int MostRowsOnOnePage = 16;

    private readonly StringBuilder _html = new();
    private int _figures;
    private int _sections;

    private HtmlRecord()
    {
    }

    /// <summary>Writes a record.</summary>
    /// <param name="record">The record.</param>
    /// <returns>The file, every line ended by a line feed.</returns>
    public static string Of(CheckRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        HtmlRecord page = new();
        page.Write(record);
        return page._html.ToString();
    }

    private void Write(CheckRecord record)
    {
        string title = Escaped(record.Title);
        Line($"""
            <!DOCTYPE html>
            <html lang="en">
            <head>
            <meta charset="utf-8">
            <meta name="viewport" content="width=device-width, initial-scale=1">
            <meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
            <title>{HtmlText.Of(record.Title)}</title>
            <style>
            {HtmlStyle.Sheet}
            </style>
            </head>
            <body>
            <main>
            <h1>{title}</h1>
            """);
        for (int i = 0; i < record.Blocks.Length; i++)
        {
            Write(record.Blocks[i], record.IsLead(i) ? " class=\"lead\"" : record.IsBeforeSigning(i) ? " class=\"tail\"" : "");
        }

        Line(_sections > 0 ? "</section>" : "");
        Line("</main>\n</body>\n</html>");
    }

    private void Write(RecordBlock block, string lead)
    {
        switch (block)
        {
            case RecordBlock.Heading { Level: 2 } heading:
                Line(_sections > 0 ? "</section>" : "");
                _sections++;
                Line($"<section aria-labelledby=\"s{Number(_sections)}\">");
                Line($"<h2 id=\"s{Number(_sections)}\">{Escaped(heading.Text)}</h2>");
                break;
            case RecordBlock.Heading heading:
                Line($"<h3>{Escaped(heading.Text)}</h3>");
                break;
            case RecordBlock.Facts facts:
                Line($"<dl>\n{Each(facts.All, fact => $"<div><dt>{Escaped(fact.Name)}</dt><dd>{OrBlank(fact.Text)}</dd></div>")}\n</dl>");
                break;
            case RecordBlock.Paragraph paragraph:
                Line(paragraph.IsWarning
                    ? $"<p{lead}><strong>{Escaped(paragraph.Text)}</strong></p>"
                    : $"<p{lead}>{Escaped(paragraph.Text)}</p>");
                break;
            case RecordBlock.Sentences sentences:
                Line($"<ul{lead}>\n{Each(sentences.All, line => $"<li>{Escaped(line.TrimStart('-', ' '))}</li>")}\n</ul>");
                break;
            case RecordBlock.Table table:
                Write(table);
                break;
            case RecordBlock.Figure figure:
                _figures++;
                Line($"<figure>\n<figcaption>{Escaped(figure.Caption)}</figcaption>");
                Line(SvgPicture.Of(figure.Drawing, $"f{Number(_figures)}", figure.Caption, figure.Description));
                Line("</figure>");
                break;
            case RecordBlock.Lines lines:
                Line(HtmlLines.Of(lines.All));
                break;
            case RecordBlock.Signatures signatures:
                Line($"<div class=\"sign\">\n{Each(signatures.All, Signature)}\n</div>");
                break;
            default:
                throw new UnreachableException();
        }
    }

    private void Write(RecordBlock.Table table)
    {
        string whole = table.Rows.Length <= MostRowsOnOnePage ? " class=\"whole\"" : "";
        Line($"<div class=\"wide\">\n<table{whole}>\n<caption>{Escaped(table.Caption)}</caption>\n<thead>");
        Line($"<tr>{string.Concat(table.Columns.Select(column => Cell("th", " scope=\"col\"", column, column.Heading)))}</tr>");
        Line("</thead>\n<tbody>");
        foreach (ImmutableArray<string> row in table.Rows)
        {
            Line($"<tr>{string.Concat(row.Select((cell, i) => i == 0
                ? Cell("th", " scope=\"row\"", table.Columns[i], cell)
                : Cell("td", "", table.Columns[i], cell)))}</tr>");
        }

        Line("</tbody>\n</table>\n</div>");
    }

    private static string Cell(string tag, string scope, RecordColumn column, string text) =>
        $"<{tag}{scope}{Class(column, text)}>{Escaped(text)}</{tag}>";

    // A figure is not parted from its unit and its place: "+9.27 kNm at 4.25 m".
    private static string Class(RecordColumn column, string text) =>
        column.IsNumber ? " class=\"n\""
        : text.Length is > 0 and <= MostKeptWhole && (char.IsAsciiDigit(text[0]) || text[0] is '+' or '-') ? " class=\"s\""
        : "";

    private static string Signature(RecordSignature one) =>
        $"<p><span>{Escaped(one.Role)}: {OrBlank(one.Name)}</span> <span>date: {Blank("date")}</span> "
            + $"<span>signature: {Blank("signature")}</span></p>";

    private static string OrBlank(string text) => text.Length == 0 ? Blank("to be filled in") : Escaped(text);

    private static string Blank(string what) => $"<span class=\"blank\" role=\"img\" aria-label=\"{what}\"></span>";

    private static string Each<T>(ImmutableArray<T> all, Func<T, string> write) => string.Join('\n', all.Select(write));

    private static string Escaped(string text) => HtmlText.InFlow(text);

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    private void Line(string text)
    {
        if (text.Length > 0)
        {
            _html.Append(text.Replace("\r", "", StringComparison.Ordinal)).Append('\n');
        }
    }
}
