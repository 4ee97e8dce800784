using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Tests.Envelopes;

/// <summary>
/// Every pattern of a problem, one by one, by cutting of its own: slow, but it knows nothing of sums of signs.
/// </summary>
internal static class EveryPattern
{
    /// <summary>How many loads may stand or not stand.</summary>
    internal static int CountOf(EnvelopeProblem problem) => Optional(problem).Length;

    /// <summary>One model a pattern, each with the combinations of one basis.</summary>
    internal static IEnumerable<BeamModel> Of(EnvelopeProblem problem, CombinationBasis basis)
    {
        BeamModel model = problem.Model;
        (int Case, Load[] Loads)[] optional = Optional(problem);
        double[] held = Held(model);
        foreach (int set in Enumerable.Range(0, 1 << optional.Length))
        {
            yield return model with
            {
                Cases =
                [
                    .. model.Cases.Select((one, i) => new LoadCase(one.Name, problem.PatternCases.Contains(i)
                        ?
                        [
                            .. one.Loads.Where(load => IsAt(held, load)),
                            .. optional.Where((on, k) => on.Case == i && (set & (1 << k)) != 0).SelectMany(on => on.Loads),
                        ]
                        : one.Loads)),
                ],
                Combinations = [.. model.Combinations.Where(one => one.Basis == basis)],
            };
        }
    }

    private static (int Case, Load[] Loads)[] Optional(EnvelopeProblem problem) =>
    [
        .. from i in problem.PatternCases
           from bay in BaysOf(problem.Model)
           let loads = problem.Model.Cases[i].Loads.Select(load => On(bay, load)).OfType<Load>().ToArray()
           where loads.Length > 0
           select (i, loads),
    ];

    private static double[] Held(BeamModel model) =>
        [.. model.Supports.Where(one => one.Across is not Restraint.None).Select(one => one.Position)];

    private static IEnumerable<(double From, double To)> BaysOf(BeamModel model)
    {
        // Ends a metre beyond the beam: a load at a free end is then inside its overhang.
        double[] held = Held(model);
        double[] ends =
        [
            .. held[0] > 0 ? [-1.0] : Array.Empty<double>(),
            .. held,
            .. held[^1] < model.Length ? [model.Length + 1] : Array.Empty<double>(),
        ];
        return ends.Zip(ends.Skip(1));
    }

    private static bool IsAt(double[] held, Load load) => load switch
    {
        Load.Point point => held.Contains(point.Position),
        Load.Couple couple => held.Contains(couple.Position),
        _ => false,
    };

    private static Load? On((double From, double To) bay, Load load)
    {
        switch (load)
        {
            case Load.Point point:
                return point.Position > bay.From && point.Position < bay.To ? load : null;
            case Load.Couple couple:
                return couple.Position > bay.From && couple.Position < bay.To ? load : null;
            case Load.Distributed spread:
                double from = Math.Max(bay.From, spread.From);
                double to = Math.Min(bay.To, spread.To);
                return from < to ? spread.Between(from, to) : null;
            default:
                throw new ArgumentOutOfRangeException(nameof(load), load, "Not a load.");
        }
    }

    private static Load.Distributed Between(this Load.Distributed spread, double from, double to)
    {
        double At(double x) => ((spread.StartIntensity * (spread.To - x)) + (spread.EndIntensity * (x - spread.From)))
            / (spread.To - spread.From);
        return new Load.Distributed(from, to, At(from), At(to), spread.ActsAlong);
    }
}
