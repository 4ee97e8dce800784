using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Strength;

/// <summary>The greatest actions on the spans of one member, and where they stand.</summary>
internal sealed class MemberDemands
{
    /// <summary>Forces along the beam below this share of the greatest shear are rounding [–].</summary>
    private const double Rounding = 1e-9;

    private readonly BasisDemands _of;

    internal MemberDemands(BasisDemands of, ImmutableArray<int> spans)
    {
        _of = of;
        Spans = spans;
        Sagging = Greatest(Curve.Moment, 1);
        Hogging = Greatest(Curve.Moment, -1);
        Moment = Demand.Greater(Sagging, Hogging);
        Shear = Demand.Greater(Greatest(Curve.Shear, 1), Greatest(Curve.Shear, -1));
        Tension = Greatest(Curve.Axial, 1);
        Compression = Greatest(Curve.Axial, -1);
        Axial = Demand.Greater(Tension, Compression);
        HasTension = Tension.Value > Rounding * of.GreatestShear;
        HasCompression = Compression.Value > Rounding * of.GreatestShear;
    }

    internal BasisDemands Of => _of;

    internal ImmutableArray<int> Spans { get; }

    internal Demand Sagging { get; }

    internal Demand Hogging { get; }

    /// <summary>The greater of the two.</summary>
    internal Demand Moment { get; }

    internal Demand Shear { get; }

    internal Demand Tension { get; }

    internal Demand Compression { get; }

    /// <summary>The greater of the two.</summary>
    internal Demand Axial { get; }

    /// <summary>Whether a force pulls it somewhere, beyond rounding.</summary>
    internal bool HasTension { get; }

    /// <summary>Whether a force presses it lengthways somewhere, beyond rounding.</summary>
    internal bool HasCompression { get; }

    /// <summary>Whether a force acts along it, beyond rounding.</summary>
    internal bool HasAxial => HasTension || HasCompression;

    internal MemberActions Actions =>
        new(Sagging.Value, Hogging.Value, Shear.Value, Tension.Value, Compression.Value);

    private Demand Greatest(Curve curve, int sense)
    {
        Demand? greatest = null;
        foreach (int span in Spans)
        {
            GovernedExtremes both = _of.On(curve, span);
            Demand own = Demand.Of(sense > 0 ? both.Max : both.Min, sense) with { Span = span };
            greatest = Demand.Greater(greatest, own);
        }

        return greatest! with { Certainty = _of.Envelope.CertaintyOf(curve) };
    }
}
