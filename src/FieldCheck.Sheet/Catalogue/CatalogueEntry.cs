using System.Collections.Immutable;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Catalogue;

/// <summary>One entry of a catalogue file as it is written.</summary>
/// <param name="Name">Its name, as "IPE 200".</param>
/// <param name="Cells">Its texts by key.</param>
internal sealed record CatalogueEntry(string Name, ImmutableDictionary<string, string> Cells)
{
    /// <summary>An entry in which nothing stands yet.</summary>
    internal static CatalogueEntry Empty { get; } =
        new("", ImmutableDictionary.Create<string, string>(StringComparer.Ordinal));

    /// <summary>The text under a key, or null.</summary>
    internal string? this[string key] => Cells.GetValueOrDefault(key);

    /// <summary>The cell of such entries that stands under a key.</summary>
    internal static Field<CatalogueEntry> Field(string key, Wanted wanted) => new(
        key,
        wanted,
        entry => entry[key],
        (entry, text) => text is null ? entry : entry with { Cells = entry.Cells.SetItem(key, text) });
}
