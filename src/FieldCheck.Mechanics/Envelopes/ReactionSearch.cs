using System.Collections.Immutable;

namespace FieldCheck.Mechanics.Envelopes;

/// <summary>The greatest and least reactions, where answers add up: sums of what adds and of what takes away.</summary>
internal sealed class ReactionSearch(Superposition sum, ImmutableArray<int> combinations)
{
    internal ImmutableArray<ReactionEnvelope> Find() =>
    [
        .. Enumerable.Range(0, sum.Problem.Model.Supports.Length).Select(support => new ReactionEnvelope(
            Range(support, ReactionComponent.Horizontal),
            Range(support, ReactionComponent.Vertical),
            Range(support, ReactionComponent.Moment))),
    ];

    /// <summary>The greatest and least of one part of one reaction.</summary>
    internal GovernedRange Range(int support, ReactionComponent component)
    {
        double imposed = sum.Reaction(-1, support, component);
        double[] parts =
            [.. Enumerable.Range(0, sum.Parts.Length).Select(part => sum.Reaction(part, support, component))];
        RollingRange[] trains = Trains(support, component);
        double size = Size(imposed, parts, trains);
        return new GovernedRange(
            Greatest(imposed, parts, trains, size, 1), Greatest(imposed, parts, trains, size, -1));
    }

    /// <summary>What every train alone does at most and at least, factor 1; none where it does nothing.</summary>
    private RollingRange[] Trains(int support, ReactionComponent component)
    {
        if (sum.Traffic is not Traffic traffic)
        {
            return [];
        }

        InfluenceRow influence = traffic.Influence.OfReaction(support, component);
        return influence.IsNothing
            ? []
            :
            [
                .. from train in traffic.Trains
                   let row = new TrainRow(train, traffic.Influence.Nodes, influence)
                   select new RollingRange(train, row.Greatest(1, train.IntervalCount), row.Greatest(-1, train.IntervalCount)),
            ];
    }

    private Governed Greatest(double imposed, double[] parts, RollingRange[] trains, double size, int sense)
    {
        Leader<(int Combination, RollingPlace? Rolling)> leader = new(size, 1);
        foreach (int combination in combinations)
        {
            double standing = sense * imposed;
            for (int part = 0; part < parts.Length; part++)
            {
                double share = sense * sum.Factor(combination, part) * parts[part];
                standing += sum.Parts[part].StandsAlways ? share : Math.Max(0, share);
            }

            leader.Take(standing, 0, (combination, null));
            foreach (RollingRange range in trains)
            {
                double scale = sense * sum.Traffic!.Factor(combination, range.Train);
                RollingPeak peak = scale > 0 ? range.Greatest : range.Least;
                if (scale != 0 && leader.CouldBeat(standing + Math.Abs(scale) * peak.Value))
                {
                    RollingPlace place = range.Train.PlaceOf(peak, jumpsBesideAxle: false);
                    leader.Take(standing + Math.Abs(scale) * peak.Value, 0, (combination, place));
                }
            }
        }

        (int governing, RollingPlace? rolling) = leader.Situation;
        double least = Leader<int>.Closeness * size;
        Situation situation = sum.Situation(
            governing, part => sense * sum.Factor(governing, part) * parts[part] > least, rolling);
        return new Governed(0 + sense * leader.Value, situation);
    }

    private double Size(double imposed, double[] parts, RollingRange[] trains)
    {
        double size = Math.Abs(imposed);
        foreach (int combination in combinations)
        {
            double all = Math.Abs(imposed);
            for (int part = 0; part < parts.Length; part++)
            {
                all += Math.Abs(sum.Factor(combination, part) * parts[part]);
            }

            foreach (RollingRange range in trains)
            {
                double train = Math.Max(range.Greatest.Value, range.Least.Value);
                all += Math.Abs(sum.Traffic!.Factor(combination, range.Train)) * train;
            }

            size = Math.Max(size, all);
        }

        return size;
    }

    private sealed record RollingRange(Train Train, RollingPeak Greatest, RollingPeak Least);
}
