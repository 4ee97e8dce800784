using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Document.Tables;

namespace FieldCheck.Sheet.Tests.Document.Reference;

/// <summary>Every key of the beam file with what it asks for, found by walking the tables that the reader walks.</summary>
internal static class BeamFileKeys
{
    /// <summary>The path of each cell, in the order of the file: rows as <c>span[]</c>, names of one's own as <c>*</c>.</summary>
    internal static IEnumerable<(string Path, Wanted Wanted)> All() => Below("", FileContent.Schema);

    /// <summary>Every table, list and set of figures.</summary>
    internal static IEnumerable<string> Tables() => TablesBelow("", FileContent.Schema).Where(path => path.Length > 0);

    private static IEnumerable<(string Path, Wanted Wanted)> Below(string path, Schema schema) => schema switch
    {
        Schema.Cell cell => [(path, cell.Wanted)],
        Schema.Texts => [(path + "[]", new Wanted.FreeText())],
        Schema.Figures figures => [(path + ".*", figures.Wanted)],
        Schema.Table table => table.Keys.SelectMany(key => Below(Join(path, key.Key), key.Schema)),
        Schema.TableRows rows => Below(path + "[]", rows.Row),
        Schema.NamedTables named => Below(path + ".*", named.Row),
        _ => throw new InvalidDataException(path),
    };

    private static IEnumerable<string> TablesBelow(string path, Schema schema) => schema switch
    {
        Schema.Cell => [],
        Schema.Texts or Schema.Figures => [path],
        Schema.Table table =>
            [path, .. table.Keys.SelectMany(key => TablesBelow(Join(path, key.Key), key.Schema))],
        Schema.TableRows rows => [path, .. TablesBelow(path + "[]", rows.Row).Skip(1)],
        Schema.NamedTables named => [path, .. TablesBelow(path + ".*", named.Row).Skip(1)],
        _ => throw new InvalidDataException(path),
    };

    internal static string Join(string path, string key) => path.Length == 0 ? key : path + "." + key;
}
