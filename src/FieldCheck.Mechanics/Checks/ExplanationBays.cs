using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Checks;

/// <summary>Tries loads of one case on some bays only: patterns, and stages of a job.</summary>
/// <remarks>Spread loads are cut at the ends of bays; what stands exactly at a support always counts.</remarks>
internal static class ExplanationBays
{
    /// <summary>Up to so many loaded bays every choice is tried; of more, the usual ones.</summary>
    private const int MostTried = 4;

    internal static void Try(ExplanationBeam beam, ExplanationList found)
    {
        double[] ends = Ends(beam.Model);
        for (int i = 0; i < beam.Model.Cases.Length; i++)
        {
            ExplanationLoad[] loads =
            [
                .. beam.Loads.Where(load => load.Case == i && load is { Factor: not 0, IsOwnWeight: false }),
            ];
            LoadChange[][] onBay =
            [
                .. Enumerable.Range(1, ends.Length - 1).Select(k => On(beam.Model, loads, ends[k - 1], ends[k])),
            ];
            int[] loaded = [.. Enumerable.Range(0, onBay.Length).Where(bay => onBay[bay].Length > 0)];
            foreach (ulong choice in Choices(loaded.Length))
            {
                int[] kept = [.. loaded.Where((_, k) => IsIn(choice, k))];
                LoadChange[] off = [.. loaded.Except(kept).SelectMany(bay => onBay[bay])];
                found.Add(new Slip.Pattern(i, [.. kept]), 3, beam.With(off));
            }
        }
    }

    /// <summary>Ends of bays and overhangs [m], the beam's own among them.</summary>
    internal static double[] Ends(BeamModel model) =>
    [
        .. model.Supports
            .Where(support => support.Across is not Restraint.None)
            .Select(support => support.Position)
            .Append(0)
            .Append(model.Length)
            .Distinct()
            .Order(),
    ];

    private static bool IsIn(ulong choice, int bay) => ((choice >> (bay % 64)) & 1) != 0;

    /// <summary>Which of the loaded bays keep their load: some, and not all.</summary>
    private static IEnumerable<ulong> Choices(int bays)
    {
        if (bays < 2)
        {
            return [];
        }

        if (bays <= MostTried)
        {
            return Enumerable.Range(1, (1 << bays) - 2).Select(choice => (ulong)choice);
        }

        const ulong EveryOther = 0x5555_5555_5555_5555;
        IEnumerable<ulong> single = Enumerable.Range(0, Math.Min(bays, 64)).Select(bay => 1UL << bay);
        return [EveryOther, ~EveryOther, .. single, .. single.Select(one => ~one)];
    }

    private static LoadChange[] On(BeamModel model, ExplanationLoad[] loads, double from, double to)
    {
        // A free end belongs to its overhang.
        double left = IsFree(model, from) ? double.NegativeInfinity : from;
        double right = IsFree(model, to) ? double.PositiveInfinity : to;
        return
        [
            .. from load in loads
               let part = Part(load.Load, left, right)
               where part is not null
               select new LoadChange(part, -load.Factor),
        ];
    }

    private static bool IsFree(BeamModel model, double end) =>
        !model.Supports.Any(support => support.Position == end && support.Across is not Restraint.None);

    private static Load? Part(Load load, double from, double to) => load switch
    {
        Load.Point point => from < point.Position && point.Position < to ? load : null,
        Load.Couple couple => from < couple.Position && couple.Position < to ? load : null,
        Load.Distributed spread when from <= spread.From && spread.To <= to => load,
        Load.Distributed spread when spread.From < to && from < spread.To => Cut(spread, from, to),
        _ => null,
    };

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
