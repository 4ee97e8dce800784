using FieldCheck.Mechanics.Envelopes;
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
        Bays bays = Bays.Of(beam.Model);
        for (int i = 0; i < beam.Model.Cases.Length; i++)
        {
            ExplanationLoad[] loads =
            [
                .. beam.Loads.Where(load => load.Case == i && load is { Factor: not 0, IsOwnWeight: false }),
            ];
            LoadChange[][] onBay =
            [
                .. Enumerable.Range(0, bays.All.Length).Select(stretch => On(bays, loads, stretch)),
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
        [0, .. Bays.Of(model).All.Select(bay => bay.To)];

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

    private static LoadChange[] On(Bays bays, ExplanationLoad[] loads, int stretch) =>
    [
        .. from load in loads
           let part = bays.PartOn(load.Load, stretch)
           where part is not null
           select new LoadChange(part, -load.Factor, IsOwn: ReferenceEquals(part, load.Load)),
    ];
}
