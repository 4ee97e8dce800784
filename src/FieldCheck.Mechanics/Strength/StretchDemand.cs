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
        (double least, double most) = Levels(stretch, demands.Envelope);
        GovernedExtremes whole = demands.Envelope.ExtremesOf(Curve.Deflection);
        double nothing = Rounding * Math.Max(Math.Abs(whole.Max.Value), Math.Abs(whole.Min.Value));
        bool stays = Math.Max(Math.Abs(least), Math.Abs(most)) <= nothing;
        Demand demand = stays || demands.Varies
            ? FromEnvelope(stretch, demands.Envelope, stays ? (0, 0) : (least, most)) with { IsBound = !stays }
            : Exact(stretch, demands);
        return demand with { Certainty = demands.Envelope.CertaintyOf(Curve.Deflection) };
    }

    /// <summary>Between what the level that it is measured from lies.</summary>
    private static (double Least, double Most) Levels(DeflectionStretch stretch, Envelope envelope)
    {
        (double least, double most) = (double.PositiveInfinity, double.NegativeInfinity);
        foreach ((double end, bool isHeld) in new[]
        {
            (stretch.From, stretch.IsHeldLeft), (stretch.To, stretch.IsHeldRight),
        })
        {
            if (isHeld)
            {
                EnvelopeBand band = envelope.BandAt(Curve.Deflection, [end])[0];
                (least, most) = (Math.Min(least, band.Min), Math.Max(most, band.Max));
            }
        }

        return (least, most);
    }

    private static Demand FromEnvelope(
        DeflectionStretch stretch, Envelope envelope, (double Least, double Most) level)
    {
        GovernedExtremes own = envelope.ExtremesOf(Curve.Deflection, stretch.From, stretch.To);
        Demand down = new(Math.Max(0, own.Max.Value - level.Least), own.Max.Position, own.Max.Situation);
        Demand up = new(Math.Max(0, level.Most - own.Min.Value), own.Min.Position, own.Min.Situation);
        return Demand.Greater(down, up);
    }

    private static Demand Exact(DeflectionStretch stretch, BasisDemands demands)
    {
        Demand? greatest = null;
        foreach ((Situation situation, BeamResponse answer) in demands.Answers)
        {
            Peak peak = ChordDeflection.Greatest(stretch, (answer, 1));
            greatest = Demand.Greater(greatest, new Demand(peak.Value, peak.Position, situation));
        }

        return greatest!;
    }
}
