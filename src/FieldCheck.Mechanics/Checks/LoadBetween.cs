using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Checks;

/// <summary>The most that may stand between two places, in one combination.</summary>
internal sealed class LoadBetween
{
    private readonly List<Spread> _spreads = [];
    private readonly List<Spread> _points = [];
    private readonly List<Spread> _pushes = [];
    private readonly List<Spread> _couples = [];

    internal LoadBetween(SuperposedBands bands)
    {
        BeamModel model = bands.Model;
        SortedSet<double> places = [.. model.NodePositions()];
        for (int c = 0; c < model.Cases.Length; c++)
        {
            double factor = bands.Factors[c] * bands.GreatestScale;
            if (factor == 0)
            {
                continue;
            }

            for (int i = 0; i < model.Cases[c].Loads.Length; i++)
            {
                LoadIndex index = new(c, i);
                Load load = model.Cases[c].Loads[i];
                Add(load, bands.Boxes.FirstOrDefault(box => box.Index == index), factor, places);
            }
        }

        Places = [.. places];
    }

    /// <summary>Nodes, and the ends of every load or of the range they may lie in [m].</summary>
    internal ImmutableArray<double> Places { get; }

    internal bool HasMovingCouple => _couples.Count > 0;

    /// <summary>
    /// The most intensity between two places, down and up for sign 1, up and down for -1; zero or greater [N/m].
    /// </summary>
    internal (double Down, double Up) Across(double from, double to, double sign) => Sum(_spreads, from, to, sign);

    /// <summary>The same of the forces that may stand strictly between, because they may move there [N].</summary>
    internal (double Down, double Up) Points(double from, double to, double sign) => Sum(_points, from, to, sign);

    /// <summary>The size of all forces along that may move in between [N].</summary>
    internal double Pushing(double from, double to) => Size(_pushes, from, to);

    /// <summary>The size of all couples that may move in between [N·m].</summary>
    internal double Turning(double from, double to) => Size(_couples, from, to);

    private static double Size(List<Spread> loads, double from, double to) => loads
        .Where(load => load.From < to && load.To > from)
        .Sum(load => Math.Max(Math.Abs(load.Least), Math.Abs(load.Most)));

    private static (double Down, double Up) Sum(List<Spread> loads, double from, double to, double sign)
    {
        (double down, double up) = (0, 0);
        foreach (Spread load in loads)
        {
            if (load.From < to && load.To > from)
            {
                down += Math.Max(0, load.Most);
                up += Math.Max(0, -load.Least);
            }
        }

        return sign > 0 ? (down, up) : (up, down);
    }

    private void Add(Load load, LoadBox? box, double factor, SortedSet<double> places)
    {
        switch (load)
        {
            case Load.Distributed spread:
                (double from, double to) = box is null ? (spread.From, spread.To) : (box.From.Low, box.To.High);
                places.UnionWith([from, to]);
                if (box is not null)
                {
                    places.UnionWith([box.From.High, box.To.Low]);
                }

                if (!spread.ActsAlong)
                {
                    _spreads.Add(Of(from, to, Sizes(spread, box), factor));
                }

                break;
            case Load.Point point:
                (double low, double high) = box?.From ?? (point.Position, point.Position);
                places.UnionWith([low, high]);
                double[] factors = box is null ? [1] : [.. box.Sizes.Select(size => size.Start)];
                _points.Add(Of(low, high, factors.Select(one => one * point.Down), factor));
                _pushes.Add(Of(low, high, factors.Select(one => one * point.Right), factor));
                break;
            case Load.Couple couple:
                places.UnionWith(box is null ? [couple.Position] : [box.From.Low, box.From.High]);
                if (box is { Moves: true })
                {
                    IEnumerable<double> sizes = box.Sizes.Select(size => size.Start * couple.Moment);
                    _couples.Add(Of(box.From.Low, box.From.High, sizes, factor));
                }

                break;
        }
    }

    private static IEnumerable<double> Sizes(Load.Distributed load, LoadBox? box)
    {
        double scale = box is { KeepsTotal: true } ? (load.To - load.From) / (box.To.Low - box.From.High) : 1;
        return box is null
            ? [load.StartIntensity, load.EndIntensity]
            : box.Sizes.SelectMany(size => new[] { scale * size.Start, scale * size.End });
    }

    private static Spread Of(double from, double to, IEnumerable<double> sizes, double factor)
    {
        double[] all = [.. sizes.Select(size => factor * size)];
        return new Spread(from, to, all.Min(), all.Max());
    }

    private readonly record struct Spread(double From, double To, double Least, double Most);
}
