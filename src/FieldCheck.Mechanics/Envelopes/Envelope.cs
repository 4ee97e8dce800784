using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Envelopes;

/// <summary>The greatest and least of everything over all that the combinations of one basis let happen.</summary>
public sealed class Envelope
{
    private readonly CurveEnvelope[] _curves;

    internal Envelope(
        CombinationBasis basis, ImmutableArray<ReactionEnvelope> reactions, CurveEnvelope[] curves)
    {
        Basis = basis;
        Reactions = reactions;
        _curves = curves;
    }

    /// <summary>What its figures may be compared with; service and factored combinations are never mixed.</summary>
    public CombinationBasis Basis { get; }

    /// <summary>The greatest and least reactions, one for each support of the model, in its order.</summary>
    public ImmutableArray<ReactionEnvelope> Reactions { get; }

    /// <summary>How well the reactions are known.</summary>
    public EnvelopeCertainty ReactionCertainty { get; internal init; } = EnvelopeCertainty.Exact;

    /// <summary>Situations in which the beam tips or no answer is found: its figures are without them.</summary>
    public ImmutableArray<Situation> WithoutAnswer { get; internal init; } = [];

    /// <summary>How well the greatest and least value of a quantity along the beam is known.</summary>
    /// <param name="curve">The quantity.</param>
    public EnvelopeCertainty CertaintyOf(Curve curve) => _curves[(int)curve].Certainty;

    /// <summary>The greatest and least value of a quantity along the beam.</summary>
    /// <param name="curve">The quantity.</param>
    /// <returns>The two values, with the leftmost places where they stand and what makes them so.</returns>
    public GovernedExtremes ExtremesOf(Curve curve) => _curves[(int)curve].Extremes;

    /// <summary>Between what a quantity lies at each of some places, for drawing; peaks come from the extremes.</summary>
    /// <param name="curve">The quantity.</param>
    /// <param name="places">The places [m from the left end]; within the beam, in any order.</param>
    /// <exception cref="ArgumentOutOfRangeException">A place is not on the beam.</exception>
    public ImmutableArray<EnvelopeBand> BandAt(Curve curve, ReadOnlySpan<double> places) =>
        _curves[(int)curve].BandAt(places);
}
