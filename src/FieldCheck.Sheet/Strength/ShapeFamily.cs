namespace FieldCheck.Sheet.Strength;

/// <summary>A family of shapes of the catalogue.</summary>
/// <param name="Name">Its name, as "IPE" or "sawn timber, dressed".</param>
/// <param name="Count">How many shapes it has.</param>
/// <param name="Kind">What they are made of; null: not known, or more than one.</param>
public sealed record ShapeFamily(string Name, int Count, MaterialKind? Kind)
{
    /// <summary>True: a beam of that material may be made of them; where one of the two is not known, it may.</summary>
    /// <param name="material">What the beam is made of; null: not known.</param>
    public bool GoesWith(MaterialKind? material) => material is null || Kind is null || Kind == material;
}
