namespace FieldCheck.Sheet.Catalogue;

/// <summary>Published sections and materials, each with its source.</summary>
public sealed record SectionCatalogue
{
    /// <summary>The catalogue that ships with the program.</summary>
    public static SectionCatalogue BuiltIn() => throw new NotImplementedException();
}
