using FieldCheck.Mechanics.Model;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Catalogue;

/// <summary>A factor of timber that may be chosen, with its source.</summary>
/// <param name="Words">What it is for, as "solid timber, service class 1, medium-term".</param>
/// <param name="Name">Its name under <c>factors</c> of a material; "creep": that key of the material itself.</param>
/// <param name="Kind">Which factor; null: creep.</param>
/// <param name="Text">Its value as it is written in a file.</param>
/// <param name="Value">Its value [–].</param>
/// <param name="Standard">The rules it belongs to, as [limits] names them.</param>
/// <param name="Source">Where the value comes from.</param>
/// <param name="Status">Whether it was read there.</param>
public sealed record FactorChoice(
    string Words,
    string Name,
    FactorKind? Kind,
    string Text,
    double Value,
    string Standard,
    string Source,
    string Status)
{
    /// <summary>The name of what grows by it instead of a strength.</summary>
    public const string Creep = "creep";

    /// <summary>True: the value is from memory and to be confirmed.</summary>
    public bool IsFromMemory => Status.StartsWith("from memory", StringComparison.Ordinal);

    /// <summary>Key path of the cell that it is written in.</summary>
    /// <param name="material">Name of the material on the sheet.</param>
    public string KeyIn(string material)
    {
        KeyPath row = KeyPath.Top.Into("material").Into(material);
        return (Kind is null ? row.Into(Creep) : row.Into(Fields.MaterialFactors.Key).Into(Name)).ToString();
    }
}
