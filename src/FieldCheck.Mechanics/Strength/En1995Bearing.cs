using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Strength;

/// <summary>Compression across the grain, EN 1995-1-1 6.1.5, with what the grain beside the bearing carries.</summary>
internal static class En1995Bearing
{
    /// <summary>The grain carries so far beside the bearing at most [m].</summary>
    private const double Beside = 0.030;

    internal static Resistance Of(Member member, Seat seat, SeatPlace place)
    {
        Resistance bare = TimberResistance.Stress(CheckKind.Bearing, CheckClause.En1995Bearing, null);
        if (TimberResistance.WhyNot(member, TimberBasis.Characteristic) is NotJudgedReason reason)
        {
            return bare with { Reason = reason };
        }

        double strength = member.Material!.Timber!.Bearing;
        FactorProduct factors = new En1995Factors(member.Section!, member.Material).Bearing;
        if (TimberOutline.Of(member.Section!)?.Width is not double width)
        {
            return bare.Limited(strength, factors).Without(NotJudgedReason.NoBearingWidth);
        }

        CheckTerm across = new(CheckSymbol.BearingWidth, width, CheckUnit.Length);
        bare = factors.Value is double product
            ? bare with { LengthFor = push => LengthFor(push / (strength * product * width), place) }
            : bare;
        if (seat.Length is not double length)
        {
            return bare.Limited(strength, factors, across).Without(NotJudgedReason.NoBearingLength);
        }

        double effective = EffectiveLength(length, place);
        (double near, double far) = BesideOf(length, place);
        return (bare with { PerAction = 1 / (width * effective), DemandBy = CheckFormula.EffectiveBearingStress }).Limited(
            strength,
            factors,
            across,
            Term.Length(CheckSymbol.BearingLength, length),
            Term.Length(CheckSymbol.NearGrain, near),
            Term.Length(CheckSymbol.FarGrain, far),
            Term.Length(CheckSymbol.EffectiveBearingLength, effective, CheckFormula.EnTimberBearingLength));
    }

    /// <summary>
    /// lef: up to 30 mm more on each side, not past the end, nor more than the bearing or half the clear distance [m].
    /// </summary>
    /// <param name="length">Length of the bearing [m].</param>
    /// <param name="place">Where its middle stands; the bearing beside it counts as one of the same length.</param>
    internal static double EffectiveLength(double length, SeatPlace place)
    {
        (double near, double far) = BesideOf(length, place);
        return length + near + far;
    }

    /// <summary>What the grain on either side adds, towards the nearer and the farther end of the beam [m].</summary>
    private static (double Near, double Far) BesideOf(double length, SeatPlace place)
    {
        double inward = Math.Max(0, Math.Min(Math.Min(Beside, length), (place.ShortestBay - length) / 2));
        return (Beyond(place.ToEnd), Beyond(place.ToFarEnd));

        double Beyond(double toEnd) => Math.Min(inward, Math.Max(0, toEnd - length / 2));
    }

    /// <summary>The least length whose effective length is enough [m].</summary>
    /// <param name="effective">The effective length that is enough [m].</param>
    /// <param name="place">Where the bearing's middle stands.</param>
    internal static double LengthFor(double effective, SeatPlace place)
    {
        // The effective length never falls as the bearing grows, so halving finds it to the last digit.
        double low = 0;
        double high = effective;
        for (double middle = high / 2; low < middle && middle < high; middle = (low + high) / 2)
        {
            (low, high) = EffectiveLength(middle, place) < effective ? (middle, high) : (low, middle);
        }

        return high;
    }
}
