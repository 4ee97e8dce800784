namespace FieldCheck.Mechanics.Envelopes;

/// <summary>What deflections over a box are known to be.</summary>
/// <param name="Most">What they cannot exceed.</param>
/// <param name="Middle">What stands in the middle of the box.</param>
/// <param name="AlongSections">How far they differ along the box's sections, about.</param>
/// <param name="AlongPlaces">How far they differ along the box's places, about.</param>
internal readonly record struct SagBound(double Most, double Middle, double AlongSections, double AlongPlaces);
