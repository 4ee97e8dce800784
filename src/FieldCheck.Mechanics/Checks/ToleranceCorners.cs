using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Checks;

/// <summary>Where a beam that is itself uncertain is looked at: at its corners, or one input at a time.</summary>
internal static class ToleranceCorners
{
    /// <summary>Up to so many inputs every corner is taken: 64 of them.</summary>
    private const int MostForCorners = 6;

    /// <summary>Of a large beam fewer, so that an answer comes before the next key: corners times spans and loads.</summary>
    private const int MostWork = 1000;

    /// <summary>Whether every corner is taken, and not only one input at a time.</summary>
    /// <param name="halves">Half width of every input, in its own unit; zero for those that stay.</param>
    /// <param name="model">The beam.</param>
    internal static bool AreFew(ImmutableArray<double> halves, BeamModel model)
    {
        int moving = Moving(halves).Length;
        int size = model.Spans.Length + model.Cases.Sum(one => one.Loads.Length);
        return moving <= MostForCorners && (1 << moving) * size <= MostWork;
    }

    /// <summary>The beam as measured, each input by itself at both ends, and every corner.</summary>
    /// <param name="halves">Half width of every input, in its own unit; zero for those that stay.</param>
    internal static IEnumerable<ImmutableArray<double>> Together(ImmutableArray<double> halves)
    {
        int[] moving = Moving(halves);
        IEnumerable<ImmutableArray<double>> corners = [[.. halves.Select(_ => 0.0)]];
        foreach (int input in moving)
        {
            corners = corners.SelectMany(one => new[] { -1, 1 }.Select(side => one.SetItem(input, side * halves[input])));
        }

        // One input has no corners but its ends.
        return moving.Length < 2 ? Alone(halves) : Alone(halves).Concat(corners);
    }

    /// <summary>The beam as measured, then each input by itself at both ends.</summary>
    internal static IEnumerable<ImmutableArray<double>> Alone(ImmutableArray<double> halves)
    {
        ImmutableArray<double> none = [.. halves.Select(_ => 0.0)];
        return
        [
            none,
            .. Moving(halves).SelectMany(i => new[] { none.SetItem(i, -halves[i]), none.SetItem(i, halves[i]) }),
        ];
    }

    private static int[] Moving(ImmutableArray<double> halves) =>
        [.. Enumerable.Range(0, halves.Length).Where(i => halves[i] > 0)];
}
