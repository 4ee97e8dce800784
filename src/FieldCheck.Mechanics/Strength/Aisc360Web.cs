using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Strength;

/// <summary>The upright web of an I or a channel over a support without stiffeners, AISC 360-16 J10.2 and J10.3.</summary>
/// <param name="Steel">The member.</param>
/// <param name="Flange">Thickness of the flange [m].</param>
/// <param name="Web">Thickness of the web [m].</param>
/// <param name="Depth">Depth [m].</param>
/// <param name="Fillet">From the outer face of the flange to the end of the fillet [m].</param>
internal sealed record Aisc360Web(SteelMember Steel, double Flange, double Web, double Depth, double Fillet)
{
    /// <summary>Beyond this share of the depth a bearing at an end counts by the second formula of J10.3(b) [–].</summary>
    private const double LongBearing = 0.2;

    /// <returns>Null where the member has no single upright web.</returns>
    internal static Aisc360Web? Of(SteelMember steel) => steel.Shape switch
    {
        _ when steel.Section.IsFlat => null,
        SectionShape.I shape => new(
            steel, shape.FlangeThickness, shape.WebThickness, shape.Depth, WebPlate.FilletDepth(shape)),
        SectionShape.Channel shape => new(
            steel, shape.FlangeThickness, shape.WebThickness, shape.Depth, WebPlate.FilletDepth(shape)),
        _ => null,
    };

    /// <summary>What the bearing of an end may not be shorter than, J10.2 [m]; null inside.</summary>
    internal double? LeastLength(SeatPlace place) => IsEnd(place) ? Fillet : null;

    /// <summary>Local yielding, J10.2.</summary>
    internal Nominal Yielding(Seat seat, SeatPlace place)
    {
        double spread = IsEnd(place) ? 2.5 : 5;
        double LengthFor(double push) =>
            Math.Max(LeastLength(place) ?? 0, push / (Steel.Yield * Web) - spread * Fillet);

        return Strength(CheckClause.Aisc360WebYielding, AiscFactors.Surest, seat, LengthFor, bearing =>
            (Steel.Yield * Web * (spread * Fillet + bearing),
            CheckFormula.AiscWebYielding,
            [
                Term.Stress(CheckSymbol.Yield, Steel.Yield),
                Term.Length(CheckSymbol.WebThickness, Web),
                Term.Length(CheckSymbol.FilletDepth, Fillet),
                Term.Length(CheckSymbol.BearingLength, bearing),
                Term.Number(CheckSymbol.FilletSpread, spread),
            ]));
    }

    /// <summary>Local crippling, J10.3.</summary>
    internal Nominal Crippling(Seat seat, SeatPlace place)
    {
        bool isEnd = place.ToEnd < Depth / 2;
        double share = isEnd ? 0.40 : 0.80;
        double ratio = Math.Pow(Web / Flange, 1.5);
        double bare = share * Web * Web * Math.Sqrt(Steel.Modulus * Steel.Yield * Flange / Web);
        double LengthFor(double push)
        {
            double spread = Math.Max(0, push / bare - 1) / ratio;
            return Depth * (isEnd && spread > 3 * LongBearing ? (spread + LongBearing) / 4 : spread / 3);
        }

        bool IsLong(double bearing) => isEnd && bearing / Depth > LongBearing;

        double StrengthOn(double bearing)
        {
            double part = bearing / Depth;
            double grown = IsLong(bearing) ? 4 * part - LongBearing : 3 * part;
            return bare * (1 + grown * ratio);
        }

        return Strength(CheckClause.Aisc360WebCrippling, AiscFactors.Crippling, seat, LengthFor, bearing =>
            (StrengthOn(bearing),
            IsLong(bearing) ? CheckFormula.AiscWebCripplingOnLong : CheckFormula.AiscWebCrippling,
            [
                Term.Stress(CheckSymbol.Modulus, Steel.Modulus),
                Term.Stress(CheckSymbol.Yield, Steel.Yield),
                Term.Length(CheckSymbol.WebThickness, Web),
                Term.Length(CheckSymbol.FlangeThickness, Flange),
                Term.Length(CheckSymbol.Depth, Depth),
                Term.Length(CheckSymbol.BearingLength, bearing),
                Term.Number(CheckSymbol.CripplingShare, share),
            ]));
    }

    private bool IsEnd(SeatPlace place) => place.ToEnd <= Depth;

    private static Nominal Strength(
        CheckClause clause,
        AiscFactors factors,
        Seat seat,
        Func<double, double> lengthFor,
        Func<double, (double Force, CheckFormula By, ImmutableArray<CheckTerm> Terms)> on)
    {
        if (seat.Length is not double bearing)
        {
            return Nominal.Unknown(clause, NotJudgedReason.NoBearingLength) with { LengthFor = lengthFor, Factors = factors };
        }

        (double force, CheckFormula by, ImmutableArray<CheckTerm> terms) = on(bearing);
        return new Nominal(clause, force, [.. terms, Term.Force(CheckSymbol.NominalForce, force, by)])
        {
            LengthFor = lengthFor,
            Factors = factors,
        };
    }
}
