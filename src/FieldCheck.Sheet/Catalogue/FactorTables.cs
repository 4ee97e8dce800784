using System.Text;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Document.Tables;
using FieldCheck.Sheet.Presets.Toml;
using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Strength;

namespace FieldCheck.Sheet.Catalogue;

/// <summary>Reads the tables of factors that ship inside this assembly.</summary>
internal static class FactorTables
{
    private const string Folder = "presets/factors/";

    private static readonly Wanted Text = new Wanted.FreeText();
    private static readonly Wanted Number = new Wanted.BareNumber();

    private static readonly TableMapping<Entry> Row = new(() => new Entry(),
    [
        Cell<Entry>("words", Text, row => row.Words, (row, text) => row with { Words = text }),
        Cell<Entry>("name", Text, row => row.Name, (row, text) => row with { Name = text }),
        Cell<Entry>("value", Number, row => row.Value, (row, text) => row with { Value = text }),
        Cell<Entry>("source", Text, row => row.Source, (row, text) => row with { Source = text }),
        Cell<Entry>("status", Text, row => row.Status, (row, text) => row with { Status = text }),
    ]);

    private static readonly TableMapping<Table> Whole = new(() => new Table(),
    [
        Cell<Table>("standard", Text, table => table.Standard, (table, text) => table with { Standard = text }),
        Part<Table>.Of("factor", new TableRowsMapping<Entry>(Row),
            table => table.Factors, (table, rows) => table with { Factors = rows }),
    ]);

    /// <summary>All factors, in the order of file and row.</summary>
    /// <exception cref="InvalidDataException">A shipped file does not hold what it must: a fault of ours.</exception>
    internal static IEnumerable<FactorChoice> Read() =>
        typeof(FactorTables).Assembly.GetManifestResourceNames()
            .Where(name => name.StartsWith(Folder, StringComparison.Ordinal))
            .Order(StringComparer.Ordinal)
            .SelectMany(resource => Choices(resource, TextOf(resource)));

    private static IEnumerable<FactorChoice> Choices(string resource, string text)
    {
        TomlFile file = TomlReader.Read(text);
        ContentBinder binder = new(Whole.Schema);
        Table table = file.IsSound && binder.Bind(Whole.Schema, file.Root) is Content content && binder.Problems is []
            ? Whole.Read(content)
            : throw new InvalidDataException($"{resource} does not read.");
        return table.Factors.Select(row => Choice(row, table) ?? throw new InvalidDataException($"{resource}: {row}"));
    }

    private static FactorChoice? Choice(Entry row, Table table)
    {
        bool isKnown = row is { Words: not null, Name: not null, Value: not null, Source: not null, Status: not null }
            && (row.Name == FactorChoice.Creep || FactorNames.All.Contains(row.Name));
        return isKnown
            && table.Standard is string standard
            && NumberReader.Read(row.Value!) is Reading<double>.Accepted { Value: double value }
            ? new(
                row.Words!, row.Name!, FactorNames.Find(row.Name!), row.Value!, value, standard, row.Source!, row.Status!)
            : null;
    }

    private static string TextOf(string resource)
    {
        using Stream stream = typeof(FactorTables).Assembly.GetManifestResourceStream(resource)!;
        using StreamReader reader = new(stream, Encoding.UTF8);
        return reader.ReadToEnd();
    }

    private static Part<TRow> Cell<TRow>(
        string key, Wanted wanted, Func<TRow, string?> get, Func<TRow, string?, TRow> set) =>
        Part<TRow>.Of(new Field<TRow>(key, wanted, get, set));

    private sealed record Table
    {
        internal string? Standard { get; init; }

        internal Rows<Entry> Factors { get; init; } = [];
    }

    private sealed record Entry
    {
        internal string? Words { get; init; }

        internal string? Name { get; init; }

        internal string? Value { get; init; }

        internal string? Source { get; init; }

        internal string? Status { get; init; }
    }
}
