using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Sheet.Findings;

/// <summary>What must be said of single supports: which are pulled and which let go.</summary>
internal static class ReactionFindings
{
    /// <summary>A pull below this share of the largest force on the beam is rounding [–].</summary>
    private const double Rounding = 1e-9;

    internal static IEnumerable<Message> Of(BuiltBeam beam, ImmutableArray<CombinationResponse> combinations)
    {
        for (int support = 0; support < beam.Supports.Length; support++)
        {
            if (Pulled(beam, combinations, support) is Message pulled)
            {
                yield return pulled;
            }

            if (LetGo(beam.Supports[support], combinations, support) is Message letGo)
            {
                yield return letGo;
            }
        }
    }

    /// <summary>The greatest pull that a support meant to act both ways takes.</summary>
    private static Message? Pulled(BuiltBeam beam, ImmutableArray<CombinationResponse> combinations, int support)
    {
        NamedSupport named = beam.Supports[support];
        CombinationResponse? worst = combinations.MaxBy(answer => Pull(answer.Response.Reactions[support]));
        if (worst is null || named.Support.Action != SupportAction.Both)
        {
            return null;
        }

        Reaction reaction = worst.Response.Reactions[support];
        if (Pull(reaction) <= Rounding * LargestForce(worst.Response))
        {
            return null;
        }

        string size = beam.Display.Say(Pull(reaction), QuantityKind.Force);
        string way = reaction.Normal is null ? "down" : "along the normal of its surface";
        string when = combinations.Length > 1 ? $" under {TextSafety.ForTerminal(worst.Combination.Name)}" : "";
        return named.ActsAsWritten
            ? new Message(Severity.Note, MessageCodes.HoldsDown, $"{named.Label} holds {size} {way}{when}, as written.")
            : new Message(
                Severity.Caution, MessageCodes.Uplift, $"{named.Label} must hold {size} {way}{when}: is it tied?");
    }

    private static Message? LetGo(NamedSupport named, ImmutableArray<CombinationResponse> combinations, int support)
    {
        string[] when =
        [
            .. combinations.Where(answer => answer.Response.Reactions[support].IsLiftedOff)
                .Select(answer => TextSafety.ForTerminal(answer.Combination.Name)),
        ];
        if (when.Length == 0)
        {
            return null;
        }

        string how = named.Support.Action == SupportAction.HoldsDownOnly ? "goes slack" : "lifts off";
        return new Message(
            Severity.Caution,
            MessageCodes.LiftsOff,
            $"{named.Label} {how} under {string.Join(", ", when)}: it carries nothing there.");
    }

    /// <summary>How much a reaction pulls the beam onto its support [N]; negative where it pushes.</summary>
    private static double Pull(Reaction reaction) => -(reaction.Normal ?? reaction.Vertical);

    private static double LargestForce(BeamResponse response) => response.Reactions
        .Max(reaction => Math.Max(Math.Abs(reaction.Vertical), Math.Abs(reaction.Horizontal)));
}
