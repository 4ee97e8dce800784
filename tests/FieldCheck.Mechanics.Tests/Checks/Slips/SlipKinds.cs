using System.Collections.Immutable;
using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Tests.Checks.Slips;

/// <summary>Every kind of slip, each made directly on the data of the beam.</summary>
internal static class SlipKinds
{
    private static readonly double[] Factors = [1.2, 1.25, 1.3, 1.35, 1.4, 1.5, 1.6, 1.7];

    internal static readonly ImmutableArray<SlipKind> All =
    [
        new("own weight left out", (_, beam) => new(
            beam, beam with { HasWeight = false }, slip => slip is Slip.OwnWeightLeftOut)),
        new("own weight put in", (_, beam) => new(
            beam with { HasWeight = false }, beam, slip => slip is Slip.OwnWeightPutIn)),
        new("another combination", (_, beam) => Factored(
            beam, SlipBeam.OtherDead, SlipBeam.OtherLive)),
        new("factored for service", (random, beam) => Factored(beam, Pick(random, Factors))),
        new("service for factored", (random, beam) => Factored(beam, 1 / Pick(random, Factors))),
        new("a factor on variable loads", (random, beam) => Factored(beam, 1, Pick(random, Factors))),
        new("factors of a code", (random, beam) => Pick(random, 0, 1) == 0
            ? Factored(beam, 1.35, 1.5)
            : Factored(beam, 1.2, 1.6)),
        new("service for factors of a code", (random, beam) => Pick(random, 0, 1) == 0
            ? Factored(beam with { DeadFactor = 1.35, LiveFactor = 1.5 }, 1, 1)
            : Factored(beam with { DeadFactor = 1.2, LiveFactor = 1.6 }, 1, 1)),
        new("a factor, and own weight left out", (random, beam) => WithoutWeight(beam, Pick(random, Factors))),
        new("ends swapped", (_, beam) => new(beam, null, slip => slip is Slip.EndsSwapped)
        {
            Figures = figures => [.. figures.Reverse()],
        }),
        new("figures in another unit", (random, beam) => OtherUnits(random, beam)),
        new("moments in another unit", (random, beam) => OtherMoments(random, beam with { IsBuiltIn = true })),
        new("lengths in another unit", SlipLengths.Draw),
        new("a load left out", (random, beam) => One(
            random, beam, load => null, (load, index) => slip => slip is Slip.LoadLeftOut one && one.Load == index)),
        new("a load doubled", (random, beam) => OneOf<Load.Point>(
            random, beam, load => Sized(load, 2), index => slip => slip is Slip.LoadDoubled one && one.Load == index)),
        new("half or double the width", (random, beam) => Width(random, beam)),
        new("half or double the width of all", (random, beam) => WidthOfAll(beam, Pick(random, 0.5, 2))),
        new("a load from the other end", (random, beam) => OneOf<Load>(
            random,
            beam,
            load => Mirrored(load, beam.Length),
            index => slip => slip is Slip.LoadFromOtherEnd one && one.Load == index)),
        new("a load lumped", (random, beam) => OneOf<Load.Distributed>(
            random,
            beam,
            load => new Load.Point((load.From + load.To) / 2, Total(load)),
            index => slip => slip is Slip.LoadLumped one && one.Load == index)),
        new("a load spread over the beam", (random, beam) => OneOf<Load.Point>(
            random,
            beam,
            load => new Load.Distributed(0, beam.Length, load.Down / beam.Length, load.Down / beam.Length),
            index => slip => slip is Slip.LoadSpread one && one.Load == index)),
        new("a load in another unit", (random, beam) => SlipLengths.OneLoad(random, beam)),
        new("a place in another unit", (random, beam) => SlipLengths.OnePlace(random, beam)),
        new("a stretch in another unit", (random, beam) => SlipLengths.OneStretch(random, beam)),
        new("simple spans assumed", (_, beam) => new(
            beam, beam with { AreSpansSimple = true }, slip => slip is Slip.SimpleSpans)) { LeastSpans = 2 },
        new("a hinge overlooked", (_, beam) => new(
            beam with { HingeAt = beam.Joints[1] + beam.Spans[1] / 4 }, beam, slip => slip is Slip.HingeOverlooked))
        { LeastSpans = 2 },
        new("loads of a case on some bays", SlipPatterns.Draw) { LeastSpans = 2 },
        new("a support moved (fitted)", SlipPatterns.MoveSupport),
        new("a load missing (fitted)", (_, beam) => beam.Live is [Load.Point, _, ..]
            ? new(beam with { Live = beam.Live[1..] }, beam, slip => slip is Slip.LoadMissing)
            : null),
    ];

    internal static T Pick<T>(Random random, params ReadOnlySpan<T> from) => from[random.Next(from.Length)];

    /// <summary>A slip with one load, drawn among those of a kind; taken as another, or as none.</summary>
    internal static SlipDraw? OneOf<T>(
        Random random,
        SlipBeam beam,
        Func<T, Load?> taken,
        Func<int, Func<Slip, bool>> isIt,
        Func<int, Slip?>? asGoodAs = null)
        where T : Load
    {
        int[] those = [.. Enumerable.Range(0, beam.Loads.Length).Where(i => beam.Loads[i] is T)];
        if (those.Length == 0)
        {
            return null;
        }

        int index = Pick(random, those);
        return taken((T)beam.Loads[index]) is { } other
            ? new SlipDraw(beam, Replaced(beam, index, other), isIt(beam.FirstLoad + index))
            {
                AsGoodAs = asGoodAs?.Invoke(beam.FirstLoad + index),
            }
            : null;
    }

    internal static SlipBeam Replaced(SlipBeam beam, int index, params ImmutableArray<Load> others) =>
        index < beam.Dead.Length
            ? beam with { Dead = beam.Dead.RemoveAt(index).InsertRange(index, others) }
            : beam with { Live = beam.Live.RemoveAt(index - beam.Dead.Length).AddRange(others) };

    internal static Load Sized(Load load, double ratio) => load switch
    {
        Load.Point point => new Load.Point(point.Position, ratio * point.Down),
        Load.Couple couple => new Load.Couple(couple.Position, ratio * couple.Moment),
        Load.Distributed spread => new Load.Distributed(
            spread.From, spread.To, ratio * spread.StartIntensity, ratio * spread.EndIntensity),
        _ => throw new ArgumentOutOfRangeException(nameof(load)),
    };

    private static SlipDraw One(
        Random random, SlipBeam beam, Func<Load, Load?> taken, Func<Load, int, Func<Slip, bool>> isIt)
    {
        int index = random.Next(beam.Loads.Length);
        Load load = beam.Loads[index];
        ImmutableArray<Load> others = taken(load) is { } other ? [other] : [];
        return new SlipDraw(beam, Replaced(beam, index, others), isIt(load, beam.FirstLoad + index));
    }

    private static SlipDraw Factored(SlipBeam beam, double both) =>
        Factored(beam, both * beam.DeadFactor, both * beam.LiveFactor);

    private static SlipDraw Factored(SlipBeam beam, double dead, double live) => new(
        beam,
        beam with { DeadFactor = dead, LiveFactor = live },
        slip => slip is Slip.CommonFactor or Slip.OtherFactors or Slip.OtherCombination);

    private static SlipDraw WithoutWeight(SlipBeam beam, double factor) => new(
        beam,
        beam with { HasWeight = false, DeadFactor = factor, LiveFactor = factor },
        slip => slip is Slip.Together or Slip.CommonFactor or Slip.OtherCombination or Slip.OtherFactors);

    private static SlipDraw OtherUnits(Random random, SlipBeam beam)
    {
        double ratio = Pick(random, 1000, 4.4482216152605, 9.80665, 9.80665 / 4.4482216152605);
        double scale = random.Next(2) == 0 ? ratio : 1 / ratio;
        return new SlipDraw(beam, null, slip => slip is Slip.FigureUnits)
        {
            Figures = figures => [.. figures.Select(figure => scale * figure)],
        };
    }

    private static SlipDraw OtherMoments(Random random, SlipBeam beam)
    {
        double scale = Pick(random, 1 / 0.3048, 0.3048, 12, 1.0 / 12);
        return new SlipDraw(beam, null, slip => slip is Slip.MomentUnits)
        {
            Figures = figures => [.. figures[..^1], scale * figures[^1]],
        };
    }

    private static SlipDraw? Width(Random random, SlipBeam beam)
    {
        double factor = Pick(random, 0.5, 2);
        return OneOf<Load.Distributed>(
            random,
            beam,
            load => Sized(load, factor),
            index => slip => slip is Slip.TributaryWidth { Load: int one } && one == index);
    }

    private static SlipDraw? WidthOfAll(SlipBeam beam, double factor) =>
        beam.Loads.Count(load => load is Load.Distributed) < 2
            ? null
            : new SlipDraw(
                beam,
                beam with { Dead = Widened(beam.Dead, factor), Live = Widened(beam.Live, factor) },
                slip => slip is Slip.TributaryWidth { Load: null });

    private static ImmutableArray<Load> Widened(ImmutableArray<Load> loads, double factor) =>
        [.. loads.Select(load => load is Load.Distributed ? Sized(load, factor) : load)];

    private static double Total(Load.Distributed load) =>
        (load.StartIntensity + load.EndIntensity) / 2 * (load.To - load.From);

    private static Load Mirrored(Load load, double length) => load switch
    {
        Load.Point point => new Load.Point(length - point.Position, point.Down),
        Load.Couple couple => new Load.Couple(length - couple.Position, couple.Moment),
        Load.Distributed spread => new Load.Distributed(
            length - spread.To, length - spread.From, spread.EndIntensity, spread.StartIntensity),
        _ => throw new ArgumentOutOfRangeException(nameof(load)),
    };
}
