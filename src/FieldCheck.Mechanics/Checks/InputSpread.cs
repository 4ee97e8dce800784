namespace FieldCheck.Mechanics.Checks;

/// <summary>
/// A figure known only to plus or minus a half width. Closed set: the cases are the nested records.
/// </summary>
/// <param name="HalfWidth">Half of the range it may lie in, in its own unit [m, N/m, rad or –]; zero or greater.</param>
/// <remarks>Each may be anywhere in its range whatever the others are: ranges are independent.</remarks>
public abstract record InputSpread(double HalfWidth)
{
    /// <summary>Half of the range it may lie in, in its own unit [m, N/m, rad or –].</summary>
    public double HalfWidth { get; } = Require.NotNegative(HalfWidth);

    /// <summary>Size of a load: the factor on it lies within 1 ± share; several of one load multiply.</summary>
    /// <param name="Load">The load.</param>
    /// <param name="Share">Of its size [–]; zero or greater.</param>
    public sealed record LoadSize(LoadIndex Load, double Share) : InputSpread(Share);

    /// <summary>Intensity of a distributed load at its left end, apart from that at its right end.</summary>
    /// <param name="Load">The load.</param>
    /// <param name="HalfWidth">Half width [N/m]; zero or greater.</param>
    public sealed record StartIntensity(LoadIndex Load, double HalfWidth) : InputSpread(HalfWidth);

    /// <summary>Intensity of a distributed load at its right end, apart from that at its left end.</summary>
    /// <param name="Load">The load.</param>
    /// <param name="HalfWidth">Half width [N/m]; zero or greater.</param>
    public sealed record EndIntensity(LoadIndex Load, double HalfWidth) : InputSpread(HalfWidth);

    /// <summary>Place of a point load or couple.</summary>
    /// <param name="Load">The load.</param>
    /// <param name="HalfWidth">Half width [m]; what lies off the beam does not count.</param>
    public sealed record LoadPosition(LoadIndex Load, double HalfWidth) : InputSpread(HalfWidth);

    /// <summary>Left end of a distributed load.</summary>
    /// <param name="Load">The load.</param>
    /// <param name="HalfWidth">Half width [m]; what lies off the beam does not count.</param>
    /// <param name="KeepsTotal">True: the force stays and the intensity follows the length; false: it stays.</param>
    public sealed record LoadFrom(LoadIndex Load, double HalfWidth, bool KeepsTotal = false) : InputSpread(HalfWidth);

    /// <summary>Right end of a distributed load.</summary>
    /// <param name="Load">The load.</param>
    /// <param name="HalfWidth">Half width [m]; what lies off the beam does not count.</param>
    /// <param name="KeepsTotal">True: the force stays and the intensity follows the length; false: it stays.</param>
    public sealed record LoadTo(LoadIndex Load, double HalfWidth, bool KeepsTotal = false) : InputSpread(HalfWidth);

    /// <summary>Imposed settlement of a support.</summary>
    /// <param name="Support">Index of the support.</param>
    /// <param name="HalfWidth">Half width [m]; zero or greater.</param>
    public sealed record Settlement(int Support, double HalfWidth) : InputSpread(HalfWidth);

    /// <summary>Imposed rotation of a support.</summary>
    /// <param name="Support">Index of the support.</param>
    /// <param name="HalfWidth">Half width [rad]; zero or greater.</param>
    public sealed record ImposedRotation(int Support, double HalfWidth) : InputSpread(HalfWidth);

    /// <summary>One scale error that all loads share: the factor on all of them lies within 1 ± share.</summary>
    /// <param name="Share">Of their sizes [–]; zero or greater.</param>
    public sealed record AllLoads(double Share) : InputSpread(Share);

    /// <summary>
    /// Anything that changes the beam itself: a span's length, the place or stiffness of a support, a section. Whoever
    /// asks makes the altered model, since what else moves along depends on how it was measured.
    /// </summary>
    /// <param name="HalfWidth">Half width, in its own unit [m, N/m, rad or –]; zero or greater.</param>
    public sealed record OfBeam(double HalfWidth) : InputSpread(HalfWidth);
}
