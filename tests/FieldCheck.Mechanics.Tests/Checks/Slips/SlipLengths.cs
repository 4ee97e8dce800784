using System.Collections.Immutable;
using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Tests.Checks.Slips;

/// <summary>Slips of units with lengths and single loads.</summary>
internal static class SlipLengths
{
    private const double Foot = 0.3048;

    private static readonly double[] OfLength = [1 / Foot, Foot, 12, 1.0 / 12];

    private static readonly double[] OfForce = [1000, 4.4482216152605, 9.80665, 9.80665 / 4.4482216152605];

    /// <summary>Every length and place in another unit.</summary>
    internal static SlipDraw Draw(Random random, SlipBeam beam)
    {
        double ratio = SlipKinds.Pick(random, OfLength);
        ImmutableArray<double> longer = [.. beam.Spans.Select(span => ratio * span)];
        double end = (beam with { Spans = longer }).Length;
        return new SlipDraw(
            beam,
            beam with { Spans = longer, Dead = Stretched(beam.Dead), Live = Stretched(beam.Live) },
            slip => slip is Slip.LengthUnits);

        ImmutableArray<Load> Stretched(ImmutableArray<Load> loads) =>
            [.. loads.Select(load => At(load, place => Math.Min(end, ratio * place)))];
    }

    /// <summary>The size of one load in another unit.</summary>
    internal static SlipDraw OneLoad(Random random, SlipBeam beam)
    {
        int index = random.Next(beam.Loads.Length);
        double ratio = SlipKinds.Pick(random, beam.Loads[index] switch
        {
            Load.Point => OfForce,
            Load.Couple => [.. OfForce, 1 / Foot, 12, 4.4482216152605 * Foot],
            _ => [.. OfForce, 1 / Foot, 12, 4.4482216152605 / Foot],
        });
        double scale = random.Next(2) == 0 ? ratio : 1 / ratio;
        int told = beam.FirstLoad + index;
        return new SlipDraw(
            beam,
            SlipKinds.Replaced(beam, index, SlipKinds.Sized(beam.Loads[index], scale)),
            slip => slip is Slip.LoadUnits one && one.Load == told)
        {
            AsGoodAs = scale < 1 ? new Slip.LoadLeftOut(told) : null,
        };
    }

    /// <summary>The place of one load in another unit.</summary>
    internal static SlipDraw? OnePlace(Random random, SlipBeam beam)
    {
        double ratio = SlipKinds.Pick(random, OfLength);
        return SlipKinds.OneOf<Load>(
            random,
            beam,
            load => Fits(load, beam.Length / ratio) ? At(load, place => ratio * place) : null,
            index => slip => slip is Slip.PlaceUnits one && one.Load == index);
    }

    /// <summary>The length of one spread load in another unit.</summary>
    internal static SlipDraw? OneStretch(Random random, SlipBeam beam)
    {
        double ratio = SlipKinds.Pick(random, OfLength);
        return SlipKinds.OneOf<Load.Distributed>(
            random,
            beam,
            load => load.From + ratio * (load.To - load.From) <= beam.Length
                ? At(load, place => load.From + ratio * (place - load.From))
                : null,
            index => slip => slip is Slip.StretchUnits one && one.Load == index,
            index => ratio < 1 ? new Slip.LoadLeftOut(index) : null);
    }

    private static bool Fits(Load load, double length) => load switch
    {
        Load.Point point => point.Position <= length,
        Load.Couple couple => couple.Position <= length,
        Load.Distributed spread => spread.From > 0 && spread.To <= length,
        _ => false,
    };

    private static Load At(Load load, Func<double, double> place) => load switch
    {
        Load.Point point => new Load.Point(place(point.Position), point.Down),
        Load.Couple couple => new Load.Couple(place(couple.Position), couple.Moment),
        Load.Distributed spread => new Load.Distributed(
            place(spread.From), place(spread.To), spread.StartIntensity, spread.EndIntensity),
        _ => throw new ArgumentOutOfRangeException(nameof(load)),
    };
}
