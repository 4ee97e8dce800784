using System.Collections.Immutable;
using CsCheck;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Tests.Laws;

/// <summary>
/// Draws beams with everything that a model can hold. Places are whole multiples of 1/16 m and forces of 125 N, so
/// that mirroring and splitting stay exact in binary, and so that places coincide often: loads stand at supports,
/// hinges, joints and ends.
/// </summary>
internal static class RandomBeam
{
    internal const double Grid = 1.0 / 16;

    private static readonly Gen<double> Signed = Gen.Int[-160, 160].Select(n => n * 125.0);

    /// <summary>Beams of every kind, a good part of them mechanisms; supports act both ways.</summary>
    internal static readonly Gen<BeamModel> Any =
        from lengths in Gen.Int[4, 96].Array[1, 5]
        from spans in SpansOf(lengths)
        let joints = JointsOf(lengths)
        from supports in SupportsOn(joints)
        from hinges in HingesOn(joints, supports)
        let places = PlacesOf(joints, supports, hinges)
        from first in LoadsAt(places, 1)
        from second in LoadsAt(places, 0)
        select new BeamModel(
            spans,
            supports,
            hinges,
            [new LoadCase("dead", first), new LoadCase("live", second)],
            [new Combination("all", CombinationBasis.Service, [1, 1])]);

    /// <summary>Beams that stand, by exact rank.</summary>
    internal static readonly Gen<BeamModel> Stable = Any.Where(model => ExactKinematics.Freedoms(model) == 0);

    /// <summary>Half of the supports that can, act one way only; the beam stands while all of them touch.</summary>
    internal static readonly Gen<BeamModel> OneWay = WithOneWay(support => support.Rotation is not Restraint.Rigid);

    /// <summary>As <see cref="OneWay"/>, but what acts one way holds nothing besides; few supports.</summary>
    internal static readonly Gen<BeamModel> OneWayPlain = WithOneWay(support =>
            support is { Rotation: Restraint.None, Along: Restraint.None })
        .Where(model => model.Supports.Length <= 4);

    private static Gen<BeamModel> WithOneWay(Func<Support, bool> mayBe) =>
        from model in Stable
        from actions in Gen.Int[0, 3].Array[model.Supports.Length]
        select model with
        {
            Supports = [.. model.Supports.Zip(actions, (one, action) => mayBe(one) ? Acting(one, action) : one)],
        };

    private static Gen<ImmutableArray<Span>> SpansOf(int[] lengths) =>
        from flexural in Gen.Double[4, 8].Array[lengths.Length]
        from axial in Gen.Double[6, 9].Array[lengths.Length]
        from shear in Gen.Double[5, 8].Array[lengths.Length]
        from hasShear in Gen.Int[0, 2]
        select ImmutableArray.CreateRange(Enumerable.Range(0, lengths.Length).Select(i => new Span(
            lengths[i] * Grid,
            Math.Pow(10, flexural[i]),
            Math.Pow(10, axial[i]),
            hasShear == 0 || (hasShear == 1 && i % 2 == 0) ? null : Math.Pow(10, shear[i]))));

    private static int[] JointsOf(int[] lengths) =>
        [.. Enumerable.Range(0, lengths.Length + 1).Select(k => lengths.Take(k).Sum())];

    private static Gen<int> PlaceOn(int[] special, int length) =>
        Gen.Frequency((3, Gen.OneOf(special)), (2, Gen.Int[0, length]));

    private static Gen<ImmutableArray<Support>> SupportsOn(int[] joints) =>
        from places in PlaceOn(joints, joints[^1]).Array[1, 6]
        let distinct = places.Distinct().Order().ToArray()
        from supports in SupportAt.Array[distinct.Length]
        select ImmutableArray.CreateRange(distinct.Zip(supports, (place, at) => at(place * Grid)));

    private static Gen<Func<double, Support>> SupportAt =>
        from kind in Gen.Frequency((4, Gen.Const(0)), (5, Gen.Const(1)), (2, Gen.Int[2, 4]), (3, Gen.Int[5, 8]))
        from gradient in Gen.OneOf(Gradient.Drawn)
        from stiffness in Gen.Double[3, 7]
        from turning in Gen.Double[3, 7]
        from settlement in Gen.Int[-20, 20]
        from rotation in Gen.Int[-10, 10]
        from moves in Gen.Int[0, 3]
        select (Func<double, Support>)(x => Kind(kind, x, gradient, Math.Pow(10, stiffness), Math.Pow(10, turning)) with
        {
            Settlement = moves == 1 ? settlement / 1024.0 : 0,
            ImposedRotation = moves == 2 ? rotation / 2048.0 : 0,
        });

    private static Support Kind(int kind, double x, Gradient gradient, double stiffness, double turning) => kind switch
    {
        0 => Support.Pin(x),
        1 => Support.Roller(x),
        2 => Support.Fixed(x),
        3 => Support.Guide(x),
        4 => Support.Roller(x, gradient.Angle),
        5 => Support.Spring(x, stiffness),
        6 => Support.Pin(x) with { Rotation = new Restraint.Spring(turning) },
        7 => Support.Roller(x, gradient.Angle) with { Rotation = new Restraint.Spring(turning) },
        _ => Support.Spring(x, stiffness) with { Rotation = new Restraint.Spring(turning) },
    };

    private static Gen<ImmutableArray<double>> HingesOn(int[] joints, ImmutableArray<Support> supports) =>
        from places in PlaceOn(joints, joints[^1]).Array[0, 2]
        select ImmutableArray.CreateRange(places
            .Where(place => place > 0 && place < joints[^1])
            .Select(place => place * Grid)
            .Where(x => !supports.Any(support => support.Position == x && support.Rotation is not Restraint.None))
            .Distinct()
            .Order());

    private static int[] PlacesOf(int[] joints, ImmutableArray<Support> supports, ImmutableArray<double> hinges) =>
    [
        .. joints,
        .. supports.Select(support => (int)(support.Position / Grid)),
        .. hinges.SelectMany(hinge => Enumerable.Repeat((int)(hinge / Grid), 3)),
    ];

    private static Gen<ImmutableArray<Load>> LoadsAt(int[] places, int least) =>
        LoadAt(places).Array[least, 6].Select(loads => ImmutableArray.CreateRange(loads));

    private static Gen<Load> LoadAt(int[] places) =>
        from kind in Gen.Int[0, 6]
        from start in PlaceOn(places, places.Max())
        from end in PlaceOn(places, places.Max())
        from size in Signed
        from second in Signed
        from side in Gen.Bool
        select (Load)(kind switch
        {
            0 or 1 => new Load.Point(start * Grid, size),
            2 => new Load.Point(start * Grid, size, second),
            3 => new Load.Couple(start * Grid, size, side ? Side.Left : Side.Right),
            4 => Spread(start, end, size, size, false, places.Max()),
            5 => Spread(start, end, size, second, false, places.Max()),
            _ => Spread(start, end, size, second, true, places.Max()),
        });

    private static Load.Distributed Spread(int from, int to, double start, double end, bool along, int length)
    {
        (int left, int right) = from == to ? (0, length) : (Math.Min(from, to), Math.Max(from, to));
        return new Load.Distributed(left * Grid, right * Grid, start / 8, end / 8, along);
    }

    private static Support Acting(Support support, int action) => support with
    {
        Action = action switch
        {
            2 => SupportAction.PushesOnly,
            3 => SupportAction.HoldsDownOnly,
            _ => SupportAction.Both,
        },
    };
}
