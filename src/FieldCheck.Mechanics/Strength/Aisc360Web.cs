using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Strength;

/// <summary>Local yielding of the web of an I or a channel over a support, AISC 360-16 J10.2.</summary>
internal static class Aisc360Web
{
    /// <returns>Null where the member has no single upright web.</returns>
    internal static Nominal? Of(SteelMember steel, Seat seat, SeatPlace place) => steel.Shape switch
    {
        _ when steel.Section.IsFlat => null,
        SectionShape.I shape => Yielding(
            steel, seat, place, WebPlate.FilletDepth(shape), shape.WebThickness, shape.Depth),
        SectionShape.Channel shape => Yielding(
            steel, seat, place, WebPlate.FilletDepth(shape), shape.WebThickness, shape.Depth),
        _ => null,
    };

    private static Nominal Yielding(
        SteelMember steel, Seat seat, SeatPlace place, double fillet, double web, double depth)
    {
        bool isEnd = place.ToEnd <= depth;
        double spread = isEnd ? 2.5 : 5;
        double LengthFor(double push) =>
            Math.Max(isEnd ? fillet : 0, push / (steel.Yield * web) - spread * fillet);

        if (seat.Length is not double bearing)
        {
            return Nominal.Unknown(CheckClause.Aisc360WebYielding, NotJudgedReason.NoBearingLength) with
            {
                LengthFor = LengthFor,
                IsSurest = true,
            };
        }

        double strength = steel.Yield * web * (spread * fillet + bearing);
        return new Nominal(
            CheckClause.Aisc360WebYielding,
            strength,
            [
                Term.Stress(CheckSymbol.Yield, steel.Yield),
                Term.Length(CheckSymbol.WebThickness, web),
                Term.Length(CheckSymbol.FilletDepth, fillet),
                Term.Length(CheckSymbol.BearingLength, bearing),
                Term.Number(CheckSymbol.FilletSpread, spread),
                Term.Force(CheckSymbol.NominalForce, strength),
            ])
        {
            LengthFor = LengthFor,
            IsSurest = true,
        };
    }
}
