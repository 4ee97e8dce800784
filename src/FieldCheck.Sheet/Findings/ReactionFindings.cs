using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Sheet.Findings;

/// <summary>What must be said of single supports: which are pulled and which let go, in any case considered.</summary>
/// <param name="beam">The beam.</param>
/// <param name="combinations">Its answers.</param>
/// <param name="envelopes">Over all its situations, where there are more than the combinations; else none.</param>
/// <param name="solver">Solves a situation that governs.</param>
internal sealed class ReactionFindings(
    BuiltBeam beam,
    ImmutableArray<CombinationResponse> combinations,
    ImmutableArray<Envelope> envelopes,
    BeamSolver solver)
{
    /// <summary>A pull below this share of the largest force on the beam is rounding [–].</summary>
    private const double Rounding = 1e-9;

    internal IEnumerable<Message> All()
    {
        foreach (Situation situation in envelopes.Select(envelope => envelope.WithoutAnswer.FirstOrDefault()).OfType<Situation>())
        {
            yield return new Message(
                Severity.Fault,
                MessageCodes.Tips,
                $"The beam tips, or has no answer,{SituationWords.After(beam, situation)}: the figures are without that.");
        }

        for (int support = 0; support < beam.Supports.Length; support++)
        {
            if (Pulled(support) is Message pulled)
            {
                yield return pulled;
            }

            if (LetGo(support) is Message letGo)
            {
                yield return letGo;
            }
        }
    }

    /// <summary>The greatest pull that a support meant to act both ways takes.</summary>
    private Message? Pulled(int support)
    {
        NamedSupport named = beam.Supports[support];
        Pull? worst = (envelopes.IsEmpty ? OfCombinations(support) : OfSituations(support)).MaxBy(pull => pull.Size);
        if (worst is null || named.Support.Action != SupportAction.Both || worst.Size <= Rounding * worst.Largest)
        {
            return null;
        }

        string size = beam.Display.Say(worst.Size, QuantityKind.Force);
        string way = named.Support.SurfaceSlope == 0 ? "down" : "along the normal of its surface";
        return named.ActsAsWritten
            ? new Message(
                Severity.Note, MessageCodes.HoldsDown, $"{named.Label} holds {size} {way}{worst.When}, as written.")
            : new Message(
                Severity.Caution, MessageCodes.Uplift, $"{named.Label} must hold {size} {way}{worst.When}: is it tied?");
    }

    private IEnumerable<Pull> OfCombinations(int support) => combinations.Select(answer =>
    {
        Reaction reaction = answer.Response.Reactions[support];
        return new Pull(
            -(reaction.Normal ?? reaction.Vertical),
            answer.Response.Reactions.Max(one => Math.Max(Math.Abs(one.Vertical), Math.Abs(one.Horizontal))),
            combinations.Length > 1 ? $" under {TextSafety.ForTerminal(answer.Combination.Name)}" : "");
    });

    /// <summary>On a slope the push across is a fixed part of the push along the normal.</summary>
    private IEnumerable<Pull> OfSituations(int support) => envelopes.Select(envelope =>
    {
        Governed least = envelope.Reactions[support].Vertical.Min;
        return new Pull(
            -least.Value / Math.Cos(beam.Supports[support].Support.SurfaceSlope),
            envelope.Reactions.Max(one => Math.Max(Math.Abs(one.Vertical.Min.Value), Math.Abs(one.Vertical.Max.Value))),
            SituationWords.After(beam, least.Situation));
    });

    private Message? LetGo(int support)
    {
        NamedSupport named = beam.Supports[support];
        string[] names =
        [
            .. combinations.Where(answer => answer.Response.Reactions[support].IsLiftedOff)
                .Select(answer => TextSafety.ForTerminal(answer.Combination.Name)),
        ];
        string? when = names.Length > 0 ? $" under {string.Join(", ", names)}" : Loose(support);
        string how = named.Support.Action == SupportAction.HoldsDownOnly ? "goes slack" : "lifts off";
        return when is null
            ? null
            : new Message(
                Severity.Caution, MessageCodes.LiftsOff, $"{named.Label} {how}{when}: it carries nothing there.");
    }

    /// <summary>A situation in which a support lets go although it carries under every combination; null: none.</summary>
    private string? Loose(int support) => beam.Supports[support].Support.Action == SupportAction.Both
        ? null
        : envelopes
            .Select(envelope => envelope.Reactions[support].Vertical)
            .Select(range => beam.Supports[support].Support.Action == SupportAction.PushesOnly ? range.Min : range.Max)
            .Where(governed => EnvelopeSearch.Respond(beam.Situations, governed.Situation, solver) is BeamResponse response
                && response.Reactions[support].IsLiftedOff)
            .Select(governed => SituationWords.After(beam, governed.Situation))
            .FirstOrDefault();

    /// <summary>How much a reaction pulls the beam onto its support [N], negative where it pushes; and when.</summary>
    private sealed record Pull(double Size, double Largest, string When);
}
