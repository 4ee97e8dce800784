namespace FieldCheck.Mechanics.Solving;

/// <summary>By how many forces the beam is held beyond what statics needs.</summary>
/// <param name="Total">Unknown reactions and hinge conditions against equations; negative when it can move.</param>
/// <param name="Along">The part of it along the beam.</param>
/// <param name="Across">The part of it across the beam.</param>
/// <param name="IsCoupled">
/// True: a sloped surface ties along and across together, so the two parts cannot be told apart.
/// </param>
public sealed record Determinacy(int Total, int Along, int Across, bool IsCoupled);
