using FieldCheck.Mechanics.Model;

namespace FieldCheck.Sheet.Catalogue;

/// <summary>A grade of material as published.</summary>
/// <param name="Name">Its name, as "A992" or "C24".</param>
/// <param name="Standard">The standard it belongs to.</param>
/// <param name="Material">Its figures for stiffness, weight and strength.</param>
/// <param name="Source">Where the figures come from.</param>
/// <param name="Status">Whether they were read there.</param>
public sealed record CatalogueGrade(string Name, string Standard, Material Material, string Source, string Status)
{
    /// <summary>What it belongs to, as "softwood, EN 338".</summary>
    public required string Family { get; init; }

    /// <summary>The pieces of timber that its figures are for; null: any.</summary>
    public PieceSizes? Sizes { get; init; }

    /// <summary>The shapes that its yield is for, as "rectangular tube"; null: any.</summary>
    public string? YieldShape { get; init; }

    /// <summary>The person's own file that it stands in; null: it ships with the program.</summary>
    public string? File { get; init; }

    /// <summary>True: it is the person's own and stands in place of a shipped one.</summary>
    public bool IsInPlaceOfShipped { get; init; }

    /// <summary>True: some figure of it is from memory and to be confirmed.</summary>
    public bool IsFromMemory => CatalogueText.IsFromMemory(Status);
}
