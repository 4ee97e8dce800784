using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Envelopes;

/// <summary>Tells under which combinations a support can let go.</summary>
internal static class LiftOff
{
    /// <summary>
    /// Whether it can: there is a gap to close, or among all its situations, were every support to act both ways, is one
    /// in which a support that acts one way is pulled. Else no support ever lets go, and answers add up.
    /// </summary>
    internal static bool IsPossible(Superposition sum, int combination)
    {
        ImmutableArray<Support> supports = sum.Problem.Model.Supports;
        if (supports.Any(support => support.Action != SupportAction.Both && support.Settlement != 0))
        {
            return true;
        }

        ReactionSearch search = new(sum, [combination]);
        for (int i = 0; i < supports.Length; i++)
        {
            if (supports[i].Action != SupportAction.Both && IsPulled(search.Range(i, ReactionComponent.Vertical), supports[i].Action))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>On a slope the part across the beam has the sense of the push.</summary>
    private static bool IsPulled(GovernedRange vertical, SupportAction action)
    {
        double nothing = Leader<int>.Closeness * Math.Max(Math.Abs(vertical.Max.Value), Math.Abs(vertical.Min.Value));
        return action == SupportAction.PushesOnly ? vertical.Min.Value < -nothing : vertical.Max.Value > nothing;
    }
}
