using FieldCheck.Mechanics.Model;

namespace FieldCheck.Sheet.Catalogue;

/// <summary>A rolled, sawn or hollow shape as published.</summary>
/// <param name="Name">Its name, as "W10x30" or "IPE 200".</param>
/// <param name="Upright">Its figures when bent about the strong axis; those not published follow from its outline.</param>
/// <param name="Flat">Its figures when bent about the weak axis; null where it is given by figures that leave it open.</param>
/// <param name="Source">Where the figures come from.</param>
/// <param name="Status">Whether they were read there.</param>
public sealed record CatalogueShape(string Name, Section Upright, Section? Flat, string Source, string Status)
{
    /// <summary>What it belongs to, as "W", "IPE" or "sawn timber, dressed".</summary>
    public required string Family { get; init; }

    /// <summary>The person's own file that it stands in; null: it ships with the program.</summary>
    public string? File { get; init; }

    /// <summary>True: it is the person's own and stands in place of a shipped one.</summary>
    public bool IsInPlaceOfShipped { get; init; }

    /// <summary>True: some figure of it is from memory and to be confirmed.</summary>
    public bool IsFromMemory => CatalogueText.IsFromMemory(Status);
}
