using System.Numerics;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Tests.Laws;

/// <summary>
/// Whether any reactions of the allowed senses can balance the loads: exact, by trying every independent set of
/// reactions. Knows nothing of stiffness: a beam of supports that only push stands if and only if such a set exists.
/// </summary>
internal static class ExactStatics
{
    /// <summary>True when the loads can be balanced though every one-sense reaction gives the reserve already.</summary>
    /// <param name="model">A beam whose one-sense supports hold nothing but that one sense.</param>
    /// <param name="reserve">Force kept in every one-sense reaction [N].</param>
    internal static bool CanBalance(BeamModel model, Ratio reserve)
    {
        (Ratio[] Column, bool IsOneSense)[] reactions =
        [
            .. model.Supports.SelectMany(support => Columns(model, support)),
        ];
        Ratio[] wanted = Negated(Loads(model));
        foreach ((Ratio[] column, bool isOneSense) in reactions)
        {
            wanted = [.. wanted.Zip(column, (value, share) => isOneSense ? value - (reserve * share) : value)];
        }

        Ratio[][] rows = [.. wanted.Select((_, i) => reactions.Select(one => one.Column[i]).ToArray())];
        return Subsets(reactions.Length, atMost: wanted.Length).Any(columns =>
            ExactElimination.Solve(rows, wanted, columns) is Ratio[] found
            && columns.Zip(found).All(pair => !reactions[pair.First].IsOneSense || pair.Second.Sign >= 0));
    }

    // Equations: along, across, moment about x = 0, and for each hinge the moment about it of all that is left of it.
    private static Ratio[] Effect(BeamModel model, Ratio x, Ratio right, Ratio up, Ratio couple, bool isLeftPart) =>
    [
        right,
        up,
        couple + (up * x),
        .. model.Hinges.Select(hinge => Turning(Ratio.Of(hinge), x, up, couple, isLeftPart)),
    ];

    private static Ratio Turning(Ratio hinge, Ratio x, Ratio up, Ratio couple, bool isLeftPart) =>
        (x - hinge).Sign switch
        {
            < 0 => couple + (up * (x - hinge)),
            0 when isLeftPart => couple,
            _ => 0,
        };

    private static IEnumerable<(Ratio[] Column, bool IsOneSense)> Columns(BeamModel model, Support support)
    {
        Ratio x = Ratio.Of(support.Position);
        if (support.Along is not Restraint.None)
        {
            yield return (Effect(model, x, 1, 0, 0, true), false);
        }

        if (support.Across is not Restraint.None)
        {
            Gradient gradient = Gradient.Of(support.SurfaceSlope);
            Ratio sense = support.Action == SupportAction.HoldsDownOnly ? -1 : 1;
            Ratio right = sense * -gradient.Rise / gradient.Hypotenuse;
            yield return (
                Effect(model, x, right, sense * gradient.Run / gradient.Hypotenuse, 0, true),
                support.Action != SupportAction.Both);
        }

        if (support.Rotation is not Restraint.None)
        {
            yield return (Effect(model, x, 0, 0, 1, true), false);
        }
    }

    private static Ratio[] Loads(BeamModel model) => model.Cases
        .SelectMany(one => one.Loads)
        .SelectMany(load => Effects(model, load))
        .Aggregate(
            Effect(model, 0, 0, 0, 0, true),
            (sum, effect) => [.. sum.Zip(effect, (one, other) => one + other)]);

    private static IEnumerable<Ratio[]> Effects(BeamModel model, Load load) => load switch
    {
        Load.Point point =>
            [Effect(model, Ratio.Of(point.Position), Ratio.Of(point.Right), -Ratio.Of(point.Down), 0, true)],
        Load.Couple couple =>
            [Effect(model, Ratio.Of(couple.Position), 0, 0, Ratio.Of(couple.Moment), couple.Side == Side.Left)],
        Load.Distributed spread => Parts(model, spread),
        _ => throw new ArgumentOutOfRangeException(nameof(load), load, "Not a load."),
    };

    // Cut at the hinges; each part stands for two forces at its third points, which is exact for a trapezium.
    private static IEnumerable<Ratio[]> Parts(BeamModel model, Load.Distributed load)
    {
        double[] cuts = [load.From, .. model.Hinges.Where(hinge => hinge > load.From && hinge < load.To), load.To];
        foreach ((double from, double to) in cuts.Pairwise())
        {
            Ratio start = Ratio.Of(from);
            Ratio length = Ratio.Of(to) - start;
            Ratio first = Intensity(load, from) * length / 2;
            Ratio second = Intensity(load, to) * length / 2;
            yield return Effect(model, start + (length / 3), Along(load, first), Up(load, first), 0, true);
            yield return Effect(model, start + (length * 2 / 3), Along(load, second), Up(load, second), 0, true);
        }
    }

    private static Ratio Along(Load.Distributed load, Ratio force) => load.ActsAlong ? force : 0;

    private static Ratio Up(Load.Distributed load, Ratio force) => load.ActsAlong ? 0 : -force;

    private static Ratio Intensity(Load.Distributed load, double x)
    {
        Ratio share = (Ratio.Of(x) - Ratio.Of(load.From)) / (Ratio.Of(load.To) - Ratio.Of(load.From));
        Ratio start = Ratio.Of(load.StartIntensity);
        return start + ((Ratio.Of(load.EndIntensity) - start) * share);
    }

    private static Ratio[] Negated(Ratio[] values) => [.. values.Select(value => -value)];

    // No more reactions than equations: what more of them can balance, some independent set of them can.
    private static IEnumerable<int[]> Subsets(int count, int atMost) => Enumerable.Range(0, 1 << count)
        .Where(mask => BitOperations.PopCount((uint)mask) <= atMost)
        .Select(mask => Enumerable.Range(0, count).Where(i => ((mask >> i) & 1) == 1).ToArray());
}
