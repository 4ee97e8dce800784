namespace FieldCheck.Mechanics.Strength;

/// <summary>One number on the way to a limit or a demand, for whoever follows the check.</summary>
/// <param name="Symbol">What it is.</param>
/// <param name="Value">Its value, in the SI unit of <paramref name="Unit"/> [N/m², N, N·m, m, m², m³, m⁴ or –].</param>
/// <param name="Unit">Its unit.</param>
public sealed record CheckTerm(CheckSymbol Symbol, double Value, CheckUnit Unit)
{
    /// <summary>How it comes from the numbers before it and the sizes of the section; null: it is given, or looked up.</summary>
    public CheckFormula? By { get; init; }
}
