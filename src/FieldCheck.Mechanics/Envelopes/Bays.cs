using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Envelopes;

/// <summary>The bays and overhangs of a beam: what a load may stand on or not.</summary>
/// <remarks>
/// A spread load is cut at their ends. What acts exactly at a support that holds across is on none of them and always
/// counts; what acts at a free end is on its overhang. A hinge cuts nothing.
/// </remarks>
public sealed class Bays
{
    private readonly bool _startsFree;
    private readonly bool _endsFree;

    private Bays(ImmutableArray<Bay> all, bool startsFree, bool endsFree)
    {
        All = all;
        _startsFree = startsFree;
        _endsFree = endsFree;
        bool isAllFree = startsFree && endsFree && all.Length == 1;
        LeftOverhang = startsFree ? all[0] : null;
        RightOverhang = endsFree && !isAllFree ? all[^1] : null;
        int first = startsFree ? 1 : 0;
        Between = all[first..(all.Length - (RightOverhang is null ? 0 : 1))];
    }

    /// <summary>The bays, left to right, overhangs apart; may be empty.</summary>
    public ImmutableArray<Bay> Between { get; }

    /// <summary>From a free left end to the first support that holds across, or null.</summary>
    /// <remarks>The whole beam where nothing holds it across.</remarks>
    public Bay? LeftOverhang { get; }

    /// <summary>From the last support that holds across to a free right end, or null.</summary>
    public Bay? RightOverhang { get; }

    /// <summary>The left overhang, the bays and the right overhang.</summary>
    internal ImmutableArray<Bay> All { get; }

    /// <summary>The bays of a beam.</summary>
    /// <param name="model">The beam.</param>
    public static Bays Of(BeamModel model)
    {
        ArgumentNullException.ThrowIfNull(model);
        double[] held =
        [
            .. model.Supports.Where(support => support.Across is not Restraint.None).Select(support => support.Position),
        ];
        double[] ends = [.. held.Append(0).Append(model.Length).Distinct().Order()];
        bool startsFree = held.Length == 0 || held[0] > 0;
        bool endsFree = held.Length == 0 || held[^1] < model.Length;
        return new Bays([.. ends.Zip(ends.Skip(1), (from, to) => new Bay(from, to))], startsFree, endsFree);
    }

    /// <summary>What of a load is on one of <see cref="All"/>; null: nothing.</summary>
    internal Load? PartOn(Load load, int stretch)
    {
        double from = _startsFree && stretch == 0 ? double.NegativeInfinity : All[stretch].From;
        double to = _endsFree && stretch == All.Length - 1 ? double.PositiveInfinity : All[stretch].To;
        return load switch
        {
            Load.Point point => from < point.Position && point.Position < to ? load : null,
            Load.Couple couple => from < couple.Position && couple.Position < to ? load : null,
            Load.Distributed spread when from <= spread.From && spread.To <= to => load,
            Load.Distributed spread when spread.From < to && from < spread.To => Cut(spread, from, to),
            _ => null,
        };
    }

    /// <summary>What of some loads is on one of <see cref="All"/>.</summary>
    internal ImmutableArray<Load> PartsOn(ImmutableArray<Load> loads, int stretch) =>
        [.. loads.Select(load => PartOn(load, stretch)).OfType<Load>()];

    /// <summary>Whether a load acts exactly at a support, and so on no bay.</summary>
    internal bool IsOnNone(Load load) =>
        load is not Load.Distributed && !Enumerable.Range(0, All.Length).Any(one => PartOn(load, one) is not null);

    /// <summary>What stands on one of <see cref="All"/>, in words that a person counts by.</summary>
    internal LoadedBays Loaded(IEnumerable<int> stretches)
    {
        int first = LeftOverhang is null ? 0 : 1;
        int[] loaded = [.. stretches.Order()];
        bool left = LeftOverhang is not null && loaded.Contains(0);
        bool right = RightOverhang is not null && loaded.Contains(All.Length - 1);
        return new LoadedBays(
            [.. loaded.Select(one => one - first).Where(bay => bay >= 0 && bay < Between.Length)], left, right);
    }

    /// <summary>Whether one of <see cref="All"/> is among what stands.</summary>
    internal bool IsLoaded(LoadedBays loaded, int stretch)
    {
        int bay = stretch - (LeftOverhang is null ? 0 : 1);
        return bay < 0 ? loaded.OnLeftOverhang
            : bay == Between.Length ? loaded.OnRightOverhang
            : loaded.Bays.Contains(bay);
    }

    private static Load.Distributed Cut(Load.Distributed spread, double from, double to)
    {
        double left = Math.Max(from, spread.From);
        double right = Math.Min(to, spread.To);
        double change = (spread.EndIntensity - spread.StartIntensity) / (spread.To - spread.From);
        return new Load.Distributed(
            left,
            right,
            spread.StartIntensity + change * (left - spread.From),
            spread.StartIntensity + change * (right - spread.From),
            spread.ActsAlong);
    }
}
