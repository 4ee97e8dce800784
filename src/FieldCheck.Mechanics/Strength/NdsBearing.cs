using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Strength;

/// <summary>Bearing across the grain, NDS 3.10, with the factor C_b of short bearings away from the end.</summary>
internal static class NdsBearing
{
    private const double Inch = 0.0254;

    /// <summary>What the wood beside a short bearing helps by [m].</summary>
    private const double Help = 0.375 * Inch;

    /// <summary>C_b of a bearing of 1/2 in, the shortest that the table of NDS 3.10.4 has; shorter ones get no more [–].</summary>
    private const double MostHelp = 1.75;

    private const double ShorterThan = 6 * Inch;
    private const double FromEnd = 3 * Inch;

    internal static Resistance Of(Member member, Seat seat, SeatPlace place)
    {
        Resistance bare = TimberResistance.Stress(CheckKind.Bearing, CheckClause.NdsBearing, null);
        if (TimberResistance.WhyNot(member, TimberBasis.Reference) is NotJudgedReason reason)
        {
            return bare with { Reason = reason };
        }

        double strength = member.Material!.Timber!.Bearing;
        FactorProduct factors = new NdsFactors(member.Section!, member.Material).Bearing;
        if (TimberOutline.Of(member.Section!)?.Width is not double width)
        {
            return bare.Limited(strength, factors).Without(NotJudgedReason.NoBearingWidth);
        }

        CheckTerm across = new(CheckSymbol.BearingWidth, width, CheckUnit.Length);
        double perLength = strength * factors.Value!.Value * width;
        bare = bare with { LengthFor = push => LengthFor(push / perLength, place) };
        return seat.Length is not double length
            ? bare.Limited(strength, factors, across).Without(NotJudgedReason.NoBearingLength)
            : (bare with { PerAction = 1 / (width * length), DemandBy = CheckFormula.BearingStress }).Limited(
                strength,
                factors.With(FactorKind.BearingArea, BearingAreaFactor(length, place), after: FactorKind.Incising),
                [
                    across,
                    Term.Length(CheckSymbol.BearingLength, length),
                    .. BearingAreaFactor(length, place) is > 1 and double help
                        ? [Term.Number(CheckSymbol.BearingAreaFactor, help, CheckFormula.NdsBearingArea)]
                        : Array.Empty<CheckTerm>(),
                ]);
    }

    /// <summary>C_b of NDS 3.10.4 [–].</summary>
    /// <param name="length">Length of the bearing [m].</param>
    /// <param name="place">Where its middle stands.</param>
    internal static double BearingAreaFactor(double length, SeatPlace place) =>
        length < ShorterThan * (1 - 1e-9) && place.ToEnd - length / 2 >= FromEnd * (1 - 1e-9)
            ? Math.Min((length + Help) / length, MostHelp)
            : 1;

    /// <summary>The least length that is enough, C_b counted where it then holds [m].</summary>
    /// <param name="plain">The length that would be enough without C_b [m].</param>
    /// <param name="place">Where the bearing's middle stands.</param>
    internal static double LengthFor(double plain, SeatPlace place)
    {
        double helped = Math.Max(plain - Help, plain / MostHelp);
        return BearingAreaFactor(helped, place) > 1 ? helped : plain;
    }
}
