using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Strength;

/// <summary>The greatest deflection of a bay or an overhang over all situations of one basis.</summary>
internal static class StretchDemand
{
    /// <summary>Ends that move by less than this share of the greatest deflection stay where they are [–].</summary>
    private const double Rounding = 1e-12;

    internal static Demand Of(DeflectionStretch stretch, BasisDemands demands)
    {
        return Stays(stretch, demands.Envelope) ? FromEnvelope(stretch, demands.Envelope)
            : demands.Varies ? demands.OfMoving(stretch)
            : Exact(stretch, demands);
    }

    /// <summary>Whether the supports that it is measured from stay where they are in all situations.</summary>
    private static bool Stays(DeflectionStretch stretch, Envelope envelope)
    {
        GovernedExtremes whole = envelope.ExtremesOf(Curve.Deflection);
        double nothing = Rounding * Math.Max(Math.Abs(whole.Max.Value), Math.Abs(whole.Min.Value));
        double[] held =
        [
            .. stretch.IsHeldLeft ? [stretch.From] : Array.Empty<double>(),
            .. stretch.IsHeldRight ? [stretch.To] : Array.Empty<double>(),
        ];
        return envelope.BandAt(Curve.Deflection, held).All(band => Math.Max(Math.Abs(band.Min), Math.Abs(band.Max)) <= nothing);
    }

    private static Demand FromEnvelope(DeflectionStretch stretch, Envelope envelope)
    {
        GovernedExtremes own = envelope.ExtremesOf(Curve.Deflection, stretch.From, stretch.To);
        return Demand.Greater(Demand.Of(own.Max, 1), Demand.Of(own.Min, -1)) with
        {
            Certainty = envelope.CertaintyOf(Curve.Deflection),
        };
    }

    private static Demand Exact(DeflectionStretch stretch, BasisDemands demands)
    {
        Demand? greatest = null;
        foreach ((Situation situation, BeamResponse answer) in demands.Answers)
        {
            Peak peak = ChordDeflection.Greatest(stretch, (answer, 1));
            greatest = Demand.Greater(greatest, new Demand(peak.Value, peak.Position, situation));
        }

        return greatest! with { Certainty = demands.Envelope.CertaintyOf(Curve.Deflection) };
    }
}
