using System.Collections.Frozen;
using System.Collections.Immutable;

namespace FieldCheck.Sheet.Catalogue;

/// <summary>Entries found by their trade name, however its case, spaces and hyphens are written.</summary>
/// <typeparam name="T">The entry.</typeparam>
internal sealed class NameIndex<T>
    where T : class
{
    private readonly FrozenDictionary<string, CatalogueItem<T>> _items;

    internal NameIndex(ImmutableArray<CatalogueItem<T>> items)
    {
        Items = items;
        Names = [.. items.Select(item => item.Name.Name)];
        _items = items.ToFrozenDictionary(item => CatalogueName.Plain(item.Name.Name), StringComparer.Ordinal);
    }

    internal ImmutableArray<CatalogueItem<T>> Items { get; }

    internal ImmutableArray<string> Names { get; }

    internal T? Find(string name) => _items.GetValueOrDefault(CatalogueName.Plain(name))?.Entry();

    internal ImmutableArray<CatalogueName> Search(string text) =>
        NameSearch.Of(text, [.. Items.Select(item => item.Name)]);

    /// <summary>The index with the person's own entries before the others, in place of those of the same name.</summary>
    /// <param name="own">The person's own.</param>
    internal NameIndex<T> With(ImmutableArray<CatalogueItem<T>> own)
    {
        HashSet<string> taken = [.. own.Select(item => CatalogueName.Plain(item.Name.Name))];
        return new([.. own, .. Items.Where(item => !taken.Contains(CatalogueName.Plain(item.Name.Name)))]);
    }

    internal bool Has(string name) => _items.ContainsKey(CatalogueName.Plain(name));
}
