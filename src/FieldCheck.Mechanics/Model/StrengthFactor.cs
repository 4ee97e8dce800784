namespace FieldCheck.Mechanics.Model;

/// <summary>One factor on a strength of timber.</summary>
/// <param name="Kind">Which.</param>
/// <param name="Value">Its value [–]; greater than zero. Of wet service as given: 1, wet, or 0, dry.</param>
public sealed record StrengthFactor(FactorKind Kind, double Value);
