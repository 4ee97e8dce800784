using System.Text;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.Presets.Toml;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Tests.Catalogue;

/// <summary>The shipped catalogue files read whole as TOML: texts by key, nothing left out.</summary>
internal static class ShippedFile
{
    internal static IEnumerable<ShippedTable> Tables(string folder) => Texts(folder).SelectMany(TablesOf);

    /// <summary>The texts of the files of a folder, by name.</summary>
    internal static IEnumerable<string> Texts(string folder) =>
        typeof(SectionCatalogue).Assembly.GetManifestResourceNames()
            .Where(name => name.StartsWith(folder, StringComparison.Ordinal))
            .Order(StringComparer.Ordinal)
            .Select(TextOf);

    private static string TextOf(string resource)
    {
        using Stream stream = typeof(SectionCatalogue).Assembly.GetManifestResourceStream(resource)!;
        using StreamReader reader = new(stream, Encoding.UTF8);
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }

    private static IEnumerable<ShippedTable> TablesOf(string text)
    {
        TomlFile file = TomlReader.Read(text);
        Assert.True(file.IsSound);
        Assert.Empty(file.Problems);
        return file.Root.Entries
            .Select(entry => entry.Node)
            .OfType<TomlTable>()
            .SelectMany(tables => tables.Entries)
            .Select(entry => new ShippedTable(
                entry.Key,
                ((TomlTable)entry.Node).Entries.ToDictionary(cell => cell.Key, cell => ((TomlCell)cell.Node).Text)));
    }
}

/// <summary>One table of a shipped file.</summary>
internal sealed record ShippedTable(string Name, IReadOnlyDictionary<string, string> Cells)
{
    internal string Text(string key) => Cells[key];

    internal double Length(string key) => Value(key, QuantityKind.Length)!.Value;

    internal double? Value(string key, QuantityKind kind) => Cells.TryGetValue(key, out string? text)
        ? Assert.IsType<Reading<Quantity>.Accepted>(QuantityReader.Read(text, kind)).Value.Value
        : null;
}
