using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Sheet.Building;

/// <summary>Weight of the sections as a load: one a span, from joint to joint.</summary>
internal static class OwnWeight
{
    private const string Label = "own weight";

    /// <param name="row">The self_weight table, or null: not counted.</param>
    /// <param name="sticks">What each span is made of; null where that is not known, which has been told.</param>
    /// <param name="joints">Positions of the joints [m]; null when they are not known.</param>
    /// <param name="problems">Takes what is missing.</param>
    internal static ImmutableArray<NamedLoad> Read(
        Row? row, ImmutableArray<Stick?> sticks, ImmutableArray<double>? joints, ProblemList problems)
    {
        if (row is null)
        {
            return [];
        }

        if (!row.Has("case"))
        {
            row.Refuse("case", ProblemText.NoCaseOfWeight);
        }

        ImmutableArray<NamedLoad>.Builder loads = ImmutableArray.CreateBuilder<NamedLoad>(sticks.Length);
        for (int span = 0; span < sticks.Length; span++)
        {
            if (sticks[span] is { WeightPerLength: null } stick)
            {
                TellMissing(stick, span, problems);
            }
            else if (sticks[span]?.WeightPerLength is double weight && joints is { } at)
            {
                Load load = new Load.Distributed(at[span], at[span + 1], weight, weight);
                loads.Add(new NamedLoad(load, row.Text("case") ?? "", Label, null));
            }
        }

        return loads.ToImmutable();
    }

    private static void TellMissing(Stick stick, int span, ProblemList problems)
    {
        (string key, string missing) = stick switch
        {
            { Section: null } => (stick.KeyOfSection(span, ""), "a section"),
            { Section.Area: null } => (stick.KeyOfSection(span, "weight"), "the weight of its section"),
            _ => (stick.KeyOfMaterial(span, "density"), "the density of its material"),
        };
        problems.Add(key, ProblemText.NoWeight(span, missing));
    }
}
