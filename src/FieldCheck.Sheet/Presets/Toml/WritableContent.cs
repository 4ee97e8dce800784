using System.Globalization;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Document.Tables;

namespace FieldCheck.Sheet.Presets.Toml;

/// <summary>The content of a document, as far as a file can hold it.</summary>
/// <remarks>
/// A key stands once in a file, and the form can hold two sections of one name for a while: saving it then must neither
/// fail nor lose one. Nor can a file hold half a surrogate pair.
/// </remarks>
internal static class WritableContent
{
    /// <summary>The content: of two "bearer" the second becomes "bearer_2", and half a surrogate pair becomes U+FFFD.</summary>
    internal static Content.Table Of(BeamDocument document) => (Content.Table)Of(FileContent.Of(document));

    private static Content Of(Content content) => content switch
    {
        Content.Table table => new Content.Table([.. Named(table.Entries)]),
        Content.List list => new Content.List([.. list.Items.Select(Of)]),
        Content.Cell cell => new Content.Cell(Sound(cell.Text)),
        _ => content,
    };

    private static IEnumerable<ContentEntry> Named(Rows<ContentEntry> entries)
    {
        HashSet<string> given = new(entries.Select(entry => Sound(entry.Key)), StringComparer.Ordinal);
        HashSet<string> taken = new(StringComparer.Ordinal);
        foreach (ContentEntry entry in entries)
        {
            string name = Sound(entry.Key);
            if (!taken.Add(name))
            {
                name = Enumerable.Range(2, entries.Count)
                    .Select(number => string.Create(CultureInfo.InvariantCulture, $"{name}_{number}"))
                    .First(numbered => !given.Contains(numbered) && taken.Add(numbered));
            }

            yield return new ContentEntry(name, Of(entry.Content));
        }
    }

    private static string Sound(string text) => string.Concat(text.EnumerateRunes());
}
