using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Strength;

/// <summary>Which supports a beam is lifted off from, or pulls at, over all that its combinations let happen.</summary>
internal static class LettingGo
{
    /// <summary>A pull below this share of the largest reaction is rounding [–].</summary>
    private const double Rounding = 1e-9;

    /// <summary>The support pulled most of those that nobody said to hold the beam down; null: none is pulled.</summary>
    internal static int? PulledMost(StrengthProblem problem, IEnumerable<Envelope> envelopes)
    {
        if (problem.Untied.IsEmpty)
        {
            return null;
        }

        Envelope[] all = [.. envelopes];
        int most = problem.Untied.MinBy(support => Least(all, support));
        return Least(all, most) < -Rounding * Largest(all) ? most : null;
    }

    /// <summary>True: the beam lifts off from a support that only pushes.</summary>
    /// <remarks>
    /// Looked at where it is pressed least, and where it would be pulled most could it be: where nothing stands on the beam it is
    /// pressed as little.
    /// </remarks>
    internal static bool IsLiftedOff(EnvelopeProblem problem, int support, BeamSolver solver)
    {
        if (problem.Model.Supports[support].Action != SupportAction.PushesOnly)
        {
            return false;
        }

        Envelope[] all = [.. EnvelopeSearch.Find(problem, solver)];
        if (all.Length == 0 || Least(all, support) > Rounding * Largest(all))
        {
            return false;
        }

        BeamModel model = problem.Model;
        BeamModel held = model with
        {
            Supports = model.Supports.SetItem(support, model.Supports[support] with { Action = SupportAction.Both }),
        };
        return all.Concat(EnvelopeSearch.Find(problem with { Model = held }, solver))
            .Select(envelope => envelope.Reactions[support].Vertical.Min.Situation)
            .Distinct()
            .Any(situation => EnvelopeSearch.Respond(problem, situation, solver)?.Reactions[support].IsLiftedOff == true);
    }

    private static double Least(Envelope[] all, int support) =>
        all.Min(envelope => envelope.Reactions[support].Vertical.Min.Value);

    private static double Largest(Envelope[] all) => all
        .SelectMany(envelope => envelope.Reactions)
        .SelectMany(reaction => new[] { reaction.Vertical, reaction.Horizontal })
        .Max(range => Math.Max(Math.Abs(range.Max.Value), Math.Abs(range.Min.Value)));
}
