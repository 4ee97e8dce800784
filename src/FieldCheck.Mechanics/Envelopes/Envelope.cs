using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Envelopes;

/// <summary>The greatest and least of everything over all that the combinations of one basis let happen.</summary>
/// <remarks>
/// What runs along the beam (N, V, M and the deflection, not the slope) is found when first asked for, and kept. Where the
/// model's rigidities are ratios only, the deflection means nothing.
/// </remarks>
public sealed class Envelope
{
    private readonly Dictionary<Curve, Lazy<CurveEnvelope>> _curves = [];

    internal Envelope(
        CombinationBasis basis, ImmutableArray<ReactionEnvelope> reactions, Func<Curve, CurveEnvelope> curves)
    {
        Basis = basis;
        Reactions = reactions;
        foreach (Curve curve in Curves)
        {
            _curves.Add(curve, new Lazy<CurveEnvelope>(() => curves(curve)));
        }
    }

    /// <summary>The quantities that have an envelope.</summary>
    public static ImmutableArray<Curve> Curves { get; } = [Curve.Axial, Curve.Shear, Curve.Moment, Curve.Deflection];

    /// <summary>What its figures may be compared with; service and factored combinations are never mixed.</summary>
    public CombinationBasis Basis { get; }

    /// <summary>The greatest and least reactions, one for each support of the model, in its order.</summary>
    public ImmutableArray<ReactionEnvelope> Reactions { get; }

    /// <summary>How well the reactions are known.</summary>
    public EnvelopeCertainty ReactionCertainty { get; internal init; } = EnvelopeCertainty.Exact;

    /// <summary>Situations in which the beam tips or no answer is found: its figures are without them.</summary>
    public ImmutableArray<Situation> WithoutAnswer { get; internal init; } = [];

    /// <summary>How well the greatest and least value of a quantity along the beam is known.</summary>
    /// <param name="curve">The quantity, one of <see cref="Curves"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">The quantity has no envelope.</exception>
    public EnvelopeCertainty CertaintyOf(Curve curve) => Of(curve).Certainty;

    /// <summary>The greatest and least value of a quantity along the beam.</summary>
    /// <param name="curve">The quantity, one of <see cref="Curves"/>.</param>
    /// <returns>The two values, with the leftmost places where they stand and what makes them so.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The quantity has no envelope.</exception>
    public GovernedExtremes ExtremesOf(Curve curve) => Of(curve).Extremes;

    /// <summary>The greatest and least value of a quantity over a stretch of the beam.</summary>
    /// <param name="curve">The quantity, one of <see cref="Curves"/>.</param>
    /// <param name="from">Left end of the stretch [m from the left end]; a joint, a support or a hinge.</param>
    /// <param name="to">Its right end [m from the left end]; another of them, further right.</param>
    /// <returns>
    /// The two values, with the leftmost places where they stand and what makes them so. Of a jump inside both sides count,
    /// at the ends of the stretch the inner side only.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">An end is none of these places, or the quantity has no envelope.</exception>
    public GovernedExtremes ExtremesOf(Curve curve, double from, double to) => Of(curve).ExtremesOn(from, to);

    /// <summary>
    /// The greatest and least of a quantity at one place and what makes them so; at a jump over both sides, at an end of the
    /// beam on the inner one.
    /// </summary>
    /// <param name="curve">The quantity.</param>
    /// <param name="place">The place [m from the left end]; within the beam.</param>
    /// <exception cref="ArgumentOutOfRangeException">The place is not on the beam.</exception>
    public GovernedRange GovernedAt(Curve curve, double place) => Of(curve).GovernedAt(place);

    /// <summary>Between what a quantity lies at each of some places, for drawing; peaks come from the extremes.</summary>
    /// <param name="curve">The quantity, one of <see cref="Curves"/>.</param>
    /// <param name="places">The places [m from the left end]; within the beam, in any order.</param>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A place is not on the beam, or the quantity has no envelope.
    /// </exception>
    public ImmutableArray<EnvelopeBand> BandAt(Curve curve, ReadOnlySpan<double> places) => Of(curve).BandAt(places);

    private CurveEnvelope Of(Curve curve) => _curves.TryGetValue(curve, out Lazy<CurveEnvelope>? found)
        ? found.Value
        : throw new ArgumentOutOfRangeException(nameof(curve), curve, "It has no envelope.");
}
