namespace FieldCheck.Sheet.Catalogue;

/// <summary>An entry that is known by name before its figures are read.</summary>
/// <typeparam name="T">The entry.</typeparam>
/// <param name="Name">Its name and family.</param>
/// <param name="Entry">Gives the entry, the same one each time.</param>
internal sealed record CatalogueItem<T>(CatalogueName Name, Func<T> Entry);
