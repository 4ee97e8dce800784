using System.Text;

namespace FieldCheck.Sheet.Catalogue;

/// <summary>An entry of a file that ships inside this assembly, found without reading its figures.</summary>
/// <remarks>
/// Reading all figures of all files would cost the start of the program more than its beam does. The shipped files are
/// written so that a line that begins with "[" is the header of an entry and nothing else; a test holds them to it.
/// </remarks>
/// <param name="Name">Its name and family.</param>
/// <param name="Text">Its lines, the header first.</param>
internal sealed record ShippedEntry(CatalogueName Name, string Text)
{
    /// <summary>Finds the entries of all files in a folder, in the order of file and line.</summary>
    internal static IEnumerable<ShippedEntry> Find(string folder) =>
        typeof(ShippedEntry).Assembly.GetManifestResourceNames()
            .Where(name => name.StartsWith(folder, StringComparison.Ordinal))
            .Order(StringComparer.Ordinal)
            .SelectMany(resource => In(TextOf(resource)));

    /// <summary>The shape.</summary>
    /// <exception cref="InvalidDataException">It does not read: a fault of ours.</exception>
    internal CatalogueShape Shape() => Read().Shapes is [CatalogueShape shape] ? shape : throw Fault();

    /// <summary>The grade.</summary>
    /// <exception cref="InvalidDataException">It does not read: a fault of ours.</exception>
    internal CatalogueGrade Grade() => Read().Grades is [CatalogueGrade grade] ? grade : throw Fault();

    private static IEnumerable<ShippedEntry> In(string text)
    {
        string family = "";
        foreach (string part in ("\n" + text).Split("\n["))
        {
            string own = Quoted(part, CatalogueContent.Family) ?? family;
            int end = part.IndexOf("]\n", StringComparison.Ordinal);
            int point = part.IndexOf('.', StringComparison.Ordinal);
            if (end < 0 || point > end)
            {
                family = own;
                continue;
            }

            yield return new(new CatalogueName(part[(point + 1)..end].Trim('"'), own), "[" + part);
        }
    }

    /// <summary>The text that stands behind a key at the start of a line.</summary>
    private static string? Quoted(string part, string key)
    {
        int start = part.IndexOf("\n" + key + " ", StringComparison.Ordinal);
        return start < 0 ? null : part[(start + 1)..].Split('"')[1];
    }

    private static string TextOf(string resource)
    {
        using Stream stream = typeof(ShippedEntry).Assembly.GetManifestResourceStream(resource)!;
        using StreamReader reader = new(stream, Encoding.UTF8);
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }

    private CatalogueFile Read() => CatalogueFile.Read(Name.Name, Text, Name.Family);

    private InvalidDataException Fault() => new(string.Join('\n', Read().Problems));
}
