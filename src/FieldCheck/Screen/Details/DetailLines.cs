using System.Collections.Immutable;
using System.Globalization;
using FieldCheck.Screen.Overlays;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Editing;

namespace FieldCheck.Screen.Details;

/// <summary>The keys that have no column, page by page: of a row, and of the whole beam.</summary>
internal static class DetailLines
{
    private static readonly ImmutableArray<string> InColumns =
    [
        "length", "to", "section", "material",
        "kind", "joint", "at", "label", "acts", "settlement", "surface", "stiffness",
        "case", "from", "force", "intensity", "intensity_end", "pressure", "pressure_end", "width", "total", "moment",
        "vertical", "horizontal", "combination", "extreme", "basis", "tolerance", "source",
    ];

    /// <summary>The lines of a page.</summary>
    /// <param name="document">The beam.</param>
    /// <param name="page">The page.</param>
    /// <returns>At least one line; none of what is stated, all of which stands in columns.</returns>
    internal static ImmutableArray<DetailLine> Of(BeamDocument document, DetailPage page) => page.Block switch
    {
        FormBlock.Spans =>
        [
            .. OfRow(document, "span", page.Row, Fields.Span),
            .. OfTable(
                document,
                "section",
                NameOf(document.Spans[page.Row].Section, document.Sections, row => row.Name),
                Fields.Section),
            .. OfTable(
                document,
                "material",
                NameOf(document.Spans[page.Row].Material, document.Materials, row => row.Name),
                Fields.Material),
        ],
        FormBlock.Supports => [.. OfRow(document, "support", page.Row, Fields.Support)],
        FormBlock.Loads => [.. OfRow(document, "load", page.Row, Fields.Load)],
        FormBlock.Stated or FormBlock.Cases or FormBlock.Combinations or FormBlock.Rolling
            or >= FormBlock.Sections => [],
        _ => OfBeam(document),
    };

    /// <summary>What is set of a row's own keys without a column, as "angle -30 deg"; empty: nothing.</summary>
    /// <param name="document">The beam.</param>
    /// <param name="block">The block of the row.</param>
    /// <param name="row">The row, counted from 0; one past the last is none yet.</param>
    internal static string SetIn(BeamDocument document, FormBlock block, int row) => block switch
    {
        FormBlock.Spans when row < document.Spans.Count => SetIn(document.Spans[row], Fields.Span),
        FormBlock.Supports when row < document.Supports.Count => SetIn(document.Supports[row], Fields.Support),
        FormBlock.Loads when row >= 0 && row < document.Loads.Count => SetIn(document.Loads[row], Fields.Load),
        _ => "",
    };

    private static string SetIn<T>(T row, ImmutableArray<Field<T>> fields) => string.Join(", ", fields
        .Where(field => !InColumns.Contains(field.Key) && field.Get(row) is not null)
        .Select(field => $"{WordsOf(field.Key)} {field.Get(row)}"));

    /// <summary>True: the key of a row stands in a column of the form.</summary>
    /// <param name="key">The key path.</param>
    internal static bool HasColumn(string key) =>
        key.Split('[', '.')[0] switch
        {
            "combination" or "rolling" or "pattern" or "rename" => true,
            "span" or "support" or "load" or "self_weight" or "stated" => InColumns.Contains(key.Split('.')[^1]),
            _ => false,
        };

    /// <summary>The line that the person is on.</summary>
    /// <param name="document">The beam.</param>
    /// <param name="details">The list.</param>
    internal static DetailLine At(BeamDocument document, Overlay.Details details)
    {
        ImmutableArray<DetailLine> lines = Of(document, details.Page);
        return lines[Math.Min(details.Choice, lines.Length - 1)];
    }

    /// <summary>
    /// The line of the whole beam's page on which a key stands, counted from 0; the first where none does.
    /// </summary>
    /// <param name="document">The beam.</param>
    /// <param name="key">The key path.</param>
    internal static int IndexOf(BeamDocument document, string key)
    {
        int index = OfBeam(document).ToList().FindIndex(line => line.Key.StartsWith(key, StringComparison.Ordinal));
        return Math.Max(index, 0);
    }

    // Each table ends in a line for one row more: typing there begins it.
    private static ImmutableArray<DetailLine> OfBeam(BeamDocument document) =>
    [
        .. OfTable(document, "", Fields.Top),
        .. OfRows(document, "hinge", document.Hinges.Count, Fields.Hinge, "at"),
        .. OfRows(document, "combination", document.Combinations.Count, Fields.Combination, "name"),
        .. Factors(document),
        .. OfRows(document, "pattern", document.Patterns.Count, Fields.Pattern, "case"),
        .. OfRows(document, "rolling", document.Rolling.Count, Fields.Rolling, "label"),
        .. document.Rolling.SelectMany((rolling, row) =>
            OfRows(document, $"rolling[{Number(row + 1)}].axles", rolling.Axles.Count, Fields.Axle, "offset")),
        .. OfTable(document, "limits", Fields.Limits),
        .. Limits(document, Fields.DeflectionCases),
        .. Limits(document, Fields.Lasting),
        .. OfTable(document, "tolerance", Fields.Tolerance),
        .. OfTable(document, "record", Fields.Record),
        .. DocumentCells.All(document)
            .Where(cell => cell.Key.Split('[', '.')[0] switch
            {
                "ask" or "section" or "material" => true,
                "rename" => FormCells.PlaceOf(document, cell.Key) is null,
                _ => false,
            })
            .Select(cell => new DetailLine(cell.Key, WordsOf(cell.Key), cell.Text)),
    ];

    private static IEnumerable<DetailLine> Factors(BeamDocument document) =>
        from row in Enumerable.Range(1, document.Combinations.Count)
        from name in Cases(document).Union(document.Combinations[row - 1].Factors.Select(factor => factor.Name))
        select Line(document, KeyPath.Top.Into("combination").At(row).Into("factors").Into(name).ToString());

    private static IEnumerable<DetailLine> Limits(BeamDocument document, FiguresField<LimitsEntry> field) =>
        Cases(document).Select(name =>
            Line(document, KeyPath.Top.Into("limits").Into(field.Key).Into(name).ToString()));

    private static IEnumerable<string> Cases(BeamDocument document) => document.Loads
        .Select(load => load.Case ?? "live")
        .Append(document.SelfWeight?.Case ?? "dead")
        .Union((document.Limits?.DeflectionCases ?? []).Select(limit => limit.Name))
        .Union((document.Limits?.Lasting ?? []).Select(share => share.Name))
        .Distinct();

    private static IEnumerable<DetailLine> OfRows<T>(
        BeamDocument document, string table, int rows, ImmutableArray<Field<T>> fields, string first) =>
    [
        .. Enumerable.Range(1, rows).SelectMany(row => OfTable(document, $"{table}[{Number(row)}]", fields)),
        Line(document, $"{table}[{Number(rows + 1)}].{first}"),
    ];

    private static IEnumerable<DetailLine> OfRow<T>(
        BeamDocument document, string table, int row, ImmutableArray<Field<T>> fields) => fields
        .Where(field => !InColumns.Contains(field.Key))
        .Select(field => Line(document, $"{table}[{Number(row + 1)}].{field.Key}"));

    private static IEnumerable<DetailLine> OfTable<T>(
        BeamDocument document, string path, ImmutableArray<Field<T>> fields) => fields
        .Select(field => Line(document, path.Length == 0 ? field.Key : $"{path}.{field.Key}"));

    private static IEnumerable<DetailLine> OfTable<T>(
        BeamDocument document, string table, string name, ImmutableArray<Field<T>> fields) =>
        OfTable(document, KeyPath.Top.Into(table).Into(name).ToString(), fields);

    // Where no section or material is named yet and one is typed here, it is the beam's own.
    private static string NameOf<T>(string? named, Rows<T> rows, Func<T, string> name) =>
        named ?? (rows.Count > 0 ? name(rows[0]) : "beam");

    private static DetailLine Line(BeamDocument document, string key) =>
        new(key, WordsOf(key), DocumentCells.Get(document, key));

    // The title says which row it is; a hinge is counted, and a named table keeps its name.
    /// <summary>What a key is called.</summary>
    /// <param name="key">The key path.</param>
    internal static string WordsOf(string key)
    {
        string path = key.Split('[', '.')[0] is "span" or "support" or "load"
            ? key[(key.IndexOf('.', StringComparison.Ordinal) + 1)..]
            : key;
        return path.Replace('_', ' ').Replace('.', ' ').Replace('[', ' ').Replace("]", "", StringComparison.Ordinal);
    }

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
