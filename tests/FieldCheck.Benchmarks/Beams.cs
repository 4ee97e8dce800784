using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Benchmarks;

/// <summary>The beams that are timed: continuous, on a pin and rollers, every load inside or over the joints.</summary>
internal static class Beams
{
    internal static BeamModel Typical => Continuous(spans: 3, loads: 10);

    internal static BeamModel Long => Continuous(spans: 20, loads: 100);

    internal static BeamModel Largest => Continuous(spans: 50, loads: 500);

    /// <summary>A chain of spans with three loads on each.</summary>
    internal static BeamModel Chain(int spans) => Continuous(spans, 3 * spans);

    private static BeamModel Continuous(int spans, int loads)
    {
        ImmutableArray<Span> drawn =
        [
            .. Enumerable.Range(0, spans).Select(i => new Span(4 + (i % 3), 8e6 + (1e6 * (i % 5)), 1e9)),
        ];
        BeamModel bare = new(drawn, [], [], [], []);
        ImmutableArray<double> joints = bare.JointPositions;
        return new BeamModel(
            drawn,
            [Support.Pin(0), .. joints.Skip(1).Select(joint => Support.Roller(joint))],
            [],
            [new LoadCase("all", [.. Enumerable.Range(0, loads).Select(i => LoadOn(i, loads, joints))])],
            [new Combination("all", CombinationBasis.Service, [1])]);
    }

    private static Load LoadOn(int i, int loads, ImmutableArray<double> joints)
    {
        int span = (int)((long)i * (joints.Length - 1) / loads);
        double from = joints[span];
        double length = joints[span + 1] - from;
        double share = 0.15 + (0.2 * (i % 4));
        return (i % 3) switch
        {
            0 => new Load.Point(from + (share * length), Down: 5e3 + (100 * (i % 7))),
            1 => new Load.Distributed(from, from + length, StartIntensity: 2e3, EndIntensity: 2e3),
            _ => new Load.Distributed(from + (0.2 * length), from + (0.8 * length), 1e3, EndIntensity: 4e3),
        };
    }
}
