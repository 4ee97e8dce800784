using System.Collections.Immutable;
using CsCheck;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Tests.Laws;

namespace FieldCheck.Mechanics.Tests.HandMethods;

/// <summary>Draws beams that statics alone cannot solve, one kind at a time, with loads of every kind.</summary>
internal static class HandBeams
{
    private const double Grid = RandomBeam.Grid;

    private static readonly Gen<double> Signed = Gen.Int[-160, 160].Select(n => n * 125.0);

    /// <summary>Many rigid level supports, some of which settle; sections that differ; ends free, held or clamped.</summary>
    internal static readonly Gen<BeamModel> Continuous =
        from bays in Gen.Int[8, 96].Array[2, 7]
        from overhangs in Gen.Int[0, 24].Array[2]
        from clamped in Gen.Int[0, 3].Array[2]
        from settlements in Gen.Int[-20, 20].Array[bays.Length + 1]
        from settles in Gen.Int[0, 2].Array[bays.Length + 1]
        from turn in Gen.Int[-10, 10]
        let places = Places(overhangs[0], bays)
        let supports = ImmutableArray.CreateRange(places.Select((place, i) =>
            ClampedOrRoller(i == 0 ? clamped[0] : i == bays.Length ? clamped[1] : 1, place, turn / 2048.0) with
            {
                Settlement = settles[i] == 0 ? settlements[i] / 1024.0 : 0,
            }))
        from model in Loaded(supports, places[^1] + (overhangs[1] * Grid), [])
        select model;

    /// <summary>Both ends clamped or guided, one or two hinges inside, rollers between.</summary>
    internal static readonly Gen<BeamModel> Hinged =
        from bays in Gen.Int[16, 96].Array[1, 4]
        from ends in Gen.Int[2, 4].Array[2]
        from shares in Gen.Int[1, 15].Array[2]
        from bay in Gen.Int[0, 3].Array[2]
        let places = Places(0, bays)
        let supports = ImmutableArray.CreateRange(places.Select((place, i) =>
            i == 0 ? HeldEnd(ends[0], place) : i == bays.Length ? HeldEnd(Math.Min(ends[1], 3), place) : Support.Roller(place)))
        let hinges = ImmutableArray.CreateRange(shares
            .Zip(bay, (share, index) => Hinge(places, bays, index % bays.Length, share))
            .Distinct()
            .Order())
        from model in Loaded(supports, places[^1], hinges)
        where ExactKinematics.Freedoms(model) == 0
        select model;

    /// <summary>Springs across and in rotation among rigid supports.</summary>
    internal static readonly Gen<BeamModel> Sprung =
        from bays in Gen.Int[8, 64].Array[2, 5]
        from kinds in Gen.Int[0, 3].Array[bays.Length + 1]
        from across in Gen.Double[3, 8].Array[bays.Length + 1]
        from turning in Gen.Double[3, 8].Array[bays.Length + 1]
        from settlements in Gen.Int[-20, 20].Array[bays.Length + 1]
        let places = Places(0, bays)
        let supports = ImmutableArray.CreateRange(places.Select((place, i) =>
            OnSpring(kinds[i], place, Math.Pow(10, across[i]), Math.Pow(10, turning[i])) with
            {
                Settlement = i % 2 == 0 ? settlements[i] / 1024.0 : 0,
            }))
        from model in Loaded(supports, places[^1], [])
        where ExactKinematics.Freedoms(model) == 0
        select model;

    /// <summary>A pin, rollers, one of them on a slope.</summary>
    internal static readonly Gen<BeamModel> Sloped =
        from bays in Gen.Int[8, 64].Array[2, 4]
        from pin in Gen.Int[0, 4]
        from slope in Gen.Int[0, 4]
        where pin <= bays.Length && slope <= bays.Length && pin != slope
        from gradient in Gen.OneOf(Gradient.Drawn)
        from settlement in Gen.Int[-20, 20]
        let places = Places(4, bays)
        let supports = ImmutableArray.CreateRange(places.Select((place, i) =>
            i == pin ? Support.Pin(place)
            : i == slope ? Support.Roller(place, gradient.Angle) with { Settlement = settlement / 1024.0 }
            : Support.Roller(place)))
        from model in Loaded(supports, places[^1] + 1, [])
        select model;

    /// <summary>
    /// Two propped cantilevers that carry a span between two hinges; rollers may stand under the hinges too.
    /// </summary>
    internal static readonly Gen<BeamModel> Suspended =
        from bays in Gen.Int[8, 64].Array[5]
        from under in Gen.Bool.Array[2]
        let places = Places(0, bays)
        let rollers = new[] { 1, 2, 3, 4 }.Where(i => i is 1 or 4 || under[i - 2])
        from model in Loaded(
            [Support.Fixed(0), .. rollers.Select(i => Support.Roller(places[i])), Support.Fixed(places[5])],
            places[5],
            [places[2], places[3]])
        select model;

    private static double[] Places(int first, int[] bays) =>
        [.. Enumerable.Range(0, bays.Length + 1).Select(k => (first + bays.Take(k).Sum()) * Grid)];

    private static double Hinge(double[] places, int[] bays, int bay, int share) =>
        places[bay] + (Math.Max(1, bays[bay] * share / 16) * Grid);

    private static Support ClampedOrRoller(int kind, double x, double turn) => kind switch
    {
        0 => Support.Fixed(x) with { ImposedRotation = turn },
        _ => Support.Roller(x),
    };

    private static Support HeldEnd(int kind, double x) => kind switch
    {
        2 => Support.Fixed(x),
        3 => Support.Fixed(x) with { Along = Restraint.Free },
        _ => Support.Guide(x),
    };

    private static Support OnSpring(int kind, double x, double across, double turning) => kind switch
    {
        0 => Support.Pin(x),
        1 => Support.Spring(x, across),
        2 => Support.Roller(x) with { Rotation = new Restraint.Spring(turning) },
        _ => Support.Spring(x, across) with { Rotation = new Restraint.Spring(turning) },
    };

    /// <summary>Spans of different sections and loads of every kind on them.</summary>
    private static Gen<BeamModel> Loaded(
        ImmutableArray<Support> supports, double length, ImmutableArray<double> hinges) =>
        from cuts in Gen.Int[1, (int)(length / Grid) - 1].Array[0, 2]
        let joints = cuts.Distinct().Order().Select(cut => cut * Grid).Prepend(0).Append(length).ToArray()
        from flexural in Gen.Double[5, 7].Array[joints.Length - 1]
        from shear in Gen.Double[6, 8]
        from hasShear in Gen.Int[0, 3]
        from isEven in Gen.Bool
        from loads in LoadOn(length, [.. supports.Select(support => support.Position), .. hinges]).Array[1, 6]
        let holdsAlong = supports.Any(support => support.Along is not Restraint.None)
        select new BeamModel(
            [
                .. Enumerable.Range(1, joints.Length - 1).Select(i => new Span(
                    joints[i] - joints[i - 1],
                    Math.Pow(10, isEven ? flexural[0] : flexural[i - 1]),
                    Math.Pow(10, isEven ? flexural[0] : flexural[i - 1]) * 100,
                    hasShear == 0 ? Math.Pow(10, shear) : null)),
            ],
            supports,
            hinges,
            [new LoadCase("all", [.. loads.Select(load => holdsAlong ? load : WithoutAlong(load))])],
            [new Combination("all", CombinationBasis.Service, [1.5])]);

    private static Load WithoutAlong(Load load) => load switch
    {
        Load.Point point => new Load.Point(point.Position, point.Down),
        Load.Distributed spread => new Load.Distributed(spread.From, spread.To, spread.StartIntensity, spread.EndIntensity),
        _ => load,
    };

    private static Gen<Load> LoadOn(double length, double[] special) =>
        from kind in Gen.Int[0, 6]
        from start in PlaceOn(length, special)
        from end in PlaceOn(length, special)
        from size in Signed
        from second in Signed
        from side in Gen.Bool
        select (Load)(kind switch
        {
            0 or 1 => new Load.Point(start, size),
            2 => new Load.Point(start, size, second),
            3 => new Load.Couple(start, size, side ? Side.Left : Side.Right),
            4 => Spread(start, end, size, size, false, length),
            5 => Spread(start, end, size, second, false, length),
            _ => Spread(start, end, size, second, true, length),
        });

    private static Gen<double> PlaceOn(double length, double[] special) => Gen.Frequency(
        (1, Gen.OneOf(special)), (2, Gen.Int[0, (int)(length / Grid)].Select(place => place * Grid)));

    private static Load.Distributed Spread(double from, double to, double start, double end, bool along, double length)
    {
        (double left, double right) = from == to ? (0, length) : (Math.Min(from, to), Math.Max(from, to));
        return new Load.Distributed(left, right, start / 8, end / 8, along);
    }
}
