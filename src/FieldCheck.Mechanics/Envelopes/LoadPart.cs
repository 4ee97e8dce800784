using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Envelopes;

/// <summary>Loads of one case that stand or do not stand together.</summary>
/// <param name="Case">Index of the case.</param>
/// <param name="Stretch">Index in <see cref="Bays.All"/>; -1: they stand always.</param>
/// <param name="Loads">The loads.</param>
internal sealed record LoadPart(int Case, int Stretch, ImmutableArray<Load> Loads)
{
    internal bool StandsAlways => Stretch < 0;

    /// <summary>The parts of every case that some combination takes; parts without loads are left out.</summary>
    internal static ImmutableArray<LoadPart> Of(EnvelopeProblem problem, Bays bays)
    {
        ImmutableArray<LoadPart>.Builder parts = ImmutableArray.CreateBuilder<LoadPart>();
        for (int i = 0; i < problem.Model.Cases.Length; i++)
        {
            ImmutableArray<Load> loads = problem.Model.Cases[i].Loads;
            if (loads.IsEmpty || problem.Model.Combinations.All(combination => combination.Factors[i] == 0))
            {
                continue;
            }

            parts.AddRange(problem.PatternCases.Contains(i) ? Cut(i, loads, bays) : [new LoadPart(i, -1, loads)]);
        }

        return parts.ToImmutable();
    }

    private static IEnumerable<LoadPart> Cut(int loadCase, ImmutableArray<Load> loads, Bays bays)
    {
        yield return new LoadPart(loadCase, -1, [.. loads.Where(bays.IsOnNone)]);
        for (int stretch = 0; stretch < bays.All.Length; stretch++)
        {
            ImmutableArray<Load> on = bays.PartsOn(loads, stretch);
            if (!on.IsEmpty)
            {
                yield return new LoadPart(loadCase, stretch, on);
            }
        }
    }
}
