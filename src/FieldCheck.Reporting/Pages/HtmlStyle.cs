namespace FieldCheck.Reporting.Pages;

/// <summary>How the HTML of a record looks on a screen and on paper: black on white, nothing told by colour.</summary>
internal static class HtmlStyle
{
    /// <summary>
    /// The style sheet. Margins in print fit A4 and Letter alike; a heading stays with what follows it, and figures and rows stay
    /// whole, and a table has its head again where a page ends within it.
    /// </summary>
    internal const string Sheet = """
        @page { margin: 16mm 15mm; }
        :root { color: #000; background: #fff; }
        body { font: 10.5pt/1.35 "DejaVu Sans", Verdana, Arial, sans-serif; margin: 0 auto; max-width: 190mm; padding: 0 1em; }
        h1 { font-size: 15pt; border-bottom: 1.5pt solid #000; }
        h2 { font-size: 12pt; margin: 1.4em 0 .4em; border-bottom: .5pt solid #000; }
        h3 { font-size: 10.5pt; margin: 1em 0 .3em; }
        h1, h2, h3, caption, figcaption, .lead, .tail, .tail li:last-child { break-after: avoid; }
        dl div { display: flex; gap: 1em; break-inside: avoid; }
        dt { min-width: 8em; }
        dd { margin: 0; overflow-wrap: anywhere; flex: 1; }
        ul { margin: .4em 0; padding-left: 1.3em; }
        li { break-inside: avoid; }
        .wide { overflow-x: auto; }
        table { border-collapse: collapse; margin: .6em 0; font-size: 9.5pt; }
        caption, figcaption { text-align: left; font-style: italic; padding: .3em 0; }
        th, td { text-align: left; vertical-align: top; padding: .15em .6em .15em 0; border-bottom: .4pt solid #888; font-weight: normal; }
        thead th { border-bottom: .8pt solid #000; font-weight: bold; }
        th.n, td.n { text-align: right; white-space: nowrap; }
        td.s { white-space: nowrap; }
        .whole, .lead, thead, tr { break-inside: avoid; }
        thead { display: table-header-group; }
        tbody tr:first-child { break-after: avoid; }
        tbody tr:last-child { break-before: avoid; }
        figure { margin: .8em 0; break-inside: avoid; }
        svg { width: 100%; height: auto; max-width: 176mm; font-family: "DejaVu Sans", Verdana, Arial, sans-serif; }
        .kept { margin: .8em 0; overflow-x: auto; }
        .kept pre, .kept td { font: 8.5pt/1.3 "DejaVu Sans Mono", Consolas, monospace; white-space: pre-wrap; margin: 0; }
        .kept table { margin: 0; }
        .kept td { white-space: pre; padding: 0; border: 0; }
        .blank { display: inline-block; min-width: 14em; border-bottom: .6pt solid #000; height: 1em; }
        .sign { break-inside: avoid; }
        .sign p { margin: 2em 0; display: flex; flex-wrap: wrap; gap: 1em; }
        .sign .blank { min-width: 9em; }
        @media print { body { max-width: none; padding: 0; } .wide, .kept { overflow: visible; } }
        """;
}
