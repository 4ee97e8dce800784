namespace FieldCheck.Mechanics.Model;

/// <summary>One factor on a strength of timber.</summary>
/// <param name="Kind">Which.</param>
/// <param name="Value">Its value [–]; greater than zero.</param>
public sealed record StrengthFactor(FactorKind Kind, double Value);
