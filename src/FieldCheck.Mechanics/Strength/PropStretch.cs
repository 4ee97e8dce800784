using System.Collections.Immutable;

namespace FieldCheck.Mechanics.Strength;

/// <summary>A stretch of the beam along which a prop may stand for the judged checks asked for to hold.</summary>
/// <param name="From">Its left end [m from the left end of the beam].</param>
/// <param name="To">Its right end [m from the left end of the beam].</param>
/// <param name="Best">The place on it, of those tried, where the greatest utilisation is least [m from the left end].</param>
/// <param name="Utilisation">The greatest utilisation with the prop there [–].</param>
/// <param name="Push">The greatest push of a prop there on the beam, under service combinations where there are any [N].</param>
public sealed record PropStretch(double From, double To, double Best, double Utilisation, double Push)
{
    /// <summary>The check that is used up most with the prop there, of every kind; null where every kind was to hold.</summary>
    public SectionCheck? Left { get; init; }

    /// <summary>
    /// Indices, in the model without the prop, of the supports that only push and that a prop at the best place lifts the beam off from.
    /// </summary>
    public ImmutableArray<int> LetGo { get; init; } = [];

    /// <summary>Likewise those that only a prop near an end of the stretch lifts it off from.</summary>
    public ImmutableArray<int> LetGoNearAnEnd { get; init; } = [];
}
