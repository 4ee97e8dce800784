namespace FieldCheck.Mechanics.Envelopes;

/// <summary>A section and all that makes a value there.</summary>
/// <param name="Place">The section, under standing loads.</param>
/// <param name="Train">The train on the beam, or null.</param>
/// <param name="Peak">Where it stands.</param>
internal readonly record struct Worst(StandingPlace Place, Train? Train, RollingPeak Peak)
{
    /// <summary>The situation.</summary>
    internal Situation Situation(bool jumpsBesideAxle) =>
        Place.Situation(Train?.PlaceOf(Peak, jumpsBesideAxle));
}
