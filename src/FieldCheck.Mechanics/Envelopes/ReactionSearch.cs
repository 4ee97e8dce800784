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

    private GovernedRange Range(int support, ReactionComponent component)
    {
        double imposed = sum.Reaction(-1, support, component);
        double[] parts =
            [.. Enumerable.Range(0, sum.Parts.Length).Select(part => sum.Reaction(part, support, component))];
        return new GovernedRange(Greatest(imposed, parts, 1), Greatest(imposed, parts, -1));
    }

    private Governed Greatest(double imposed, double[] parts, int sense)
    {
        Leader<int> leader = new(Size(imposed, parts), 1);
        foreach (int combination in combinations)
        {
            double value = sense * imposed;
            for (int part = 0; part < parts.Length; part++)
            {
                double share = sense * sum.Factor(combination, part) * parts[part];
                value += sum.Parts[part].StandsAlways ? share : Math.Max(0, share);
            }

            leader.Take(value, 0, combination);
        }

        int governing = leader.Situation;
        double least = Leader<int>.Closeness * Size(imposed, parts);
        Situation situation = sum.Situation(
            governing, part => sense * sum.Factor(governing, part) * parts[part] > least, null);
        return new Governed(0 + sense * leader.Value, situation);
    }

    private double Size(double imposed, double[] parts)
    {
        double size = Math.Abs(imposed);
        foreach (int combination in combinations)
        {
            double all = Math.Abs(imposed);
            for (int part = 0; part < parts.Length; part++)
            {
                all += Math.Abs(sum.Factor(combination, part) * parts[part]);
            }

            size = Math.Max(size, all);
        }

        return size;
    }
}
