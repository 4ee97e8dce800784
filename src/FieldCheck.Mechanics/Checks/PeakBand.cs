using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Checks;

/// <summary>The bands of the greatest and the least value of a quantity along the beam.</summary>
/// <remarks>
/// The outer ends are the ones that matter: the high end of the greatest value and the low end of the least are as
/// certain as the band says. The inner ends are bounds: the greatest value is nowhere less, but may never come down
/// that far.
/// </remarks>
/// <param name="Curve">The quantity.</param>
/// <param name="Greatest">Band of its algebraic greatest value.</param>
/// <param name="Least">Band of its algebraic least value.</param>
public sealed record PeakBand(Curve Curve, Band Greatest, Band Least);
