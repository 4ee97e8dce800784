namespace FieldCheck.Mechanics.Strength;

/// <summary>A stretch of the beam along which a prop may stand for every judged check to hold.</summary>
/// <param name="From">Its left end [m from the left end of the beam].</param>
/// <param name="To">Its right end [m from the left end of the beam].</param>
/// <param name="Best">The place on it, of those tried, where the greatest utilisation is least [m from the left end].</param>
/// <param name="Utilisation">The greatest utilisation with the prop there [–].</param>
/// <param name="Push">The greatest push of a prop there on the beam, under service combinations where there are any [N].</param>
public sealed record PropStretch(double From, double To, double Best, double Utilisation, double Push);
