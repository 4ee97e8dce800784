using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Catalogue;

/// <summary>A catalogue file as it is written.</summary>
internal sealed record CatalogueDocument
{
    /// <summary>The family of the entries that name none.</summary>
    internal string? Family { get; init; }

    /// <summary>Its shapes.</summary>
    internal Rows<CatalogueEntry> Shapes { get; init; } = [];

    /// <summary>Its grades.</summary>
    internal Rows<CatalogueEntry> Grades { get; init; } = [];
}
