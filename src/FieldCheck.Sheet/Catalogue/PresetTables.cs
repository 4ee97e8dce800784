using System.Collections.Frozen;
using System.Text;
using Tomlyn.Parsing;
using Tomlyn.Syntax;

namespace FieldCheck.Sheet.Catalogue;

/// <summary>Named tables of texts that ship inside this assembly, as [shape.NAME] with one text a key.</summary>
internal static class PresetTables
{
    /// <summary>Reads all tables of the resources whose name starts so, in the order of name and line.</summary>
    /// <exception cref="InvalidDataException">A shipped file does not hold what it must: a fault of ours.</exception>
    internal static IEnumerable<PresetTable> Read(string folder) =>
        typeof(PresetTables).Assembly.GetManifestResourceNames()
            .Where(name => name.StartsWith(folder, StringComparison.Ordinal))
            .Order(StringComparer.Ordinal)
            .SelectMany(Tables);

    private static IEnumerable<PresetTable> Tables(string resource)
    {
        DocumentSyntax document = SyntaxParser.Parse(TextOf(resource), resource);
        if (document.HasErrors)
        {
            throw new InvalidDataException(document.Diagnostics.ToString());
        }

        return document.Tables.Select(table => new PresetTable(
            NameOf(table.Name!.DotKeys.Single().Key!),
            table.Items.ToFrozenDictionary(
                cell => NameOf(cell.Key!.Key!),
                cell => ((StringValueSyntax)cell.Value!).Value!,
                StringComparer.Ordinal)));
    }

    private static string NameOf(BareKeyOrStringValueSyntax key) => key switch
    {
        BareKeySyntax bare => bare.Key!.Text!,
        StringValueSyntax quoted => quoted.Value!,
        _ => throw new InvalidDataException($"{key} is no key."),
    };

    private static string TextOf(string resource)
    {
        using Stream stream = typeof(PresetTables).Assembly.GetManifestResourceStream(resource)!;
        using StreamReader reader = new(stream, Encoding.UTF8);
        return reader.ReadToEnd();
    }
}
