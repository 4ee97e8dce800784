using System.Collections.Immutable;
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
/// <param name="worst">Further situations, where patterns or rolling loads let more happen; else none.</param>
/// <param name="within">What may be within the plus or minus; null where nothing is uncertain.</param>
internal sealed class ReactionFindings(
    BuiltBeam beam, ImmutableArray<CombinationResponse> combinations, WorstReactions? worst, BandFindings? within = null)
{
    /// <summary>A pull below this share of the largest force on the beam is rounding [–].</summary>
    internal const double Rounding = 1e-9;

    private readonly ImmutableArray<Answer> _answers =
    [
        .. combinations.Select(answer => new Answer(
            answer.Response,
            combinations.Length > 1 ? $" under {TextSafety.ForTerminal(answer.Combination.Name)}" : "")),
        .. from one in worst?.Answers ?? []
           where one.Response is not null
           select new Answer(one.Response, SituationWords.After(beam, one.Situation)),
    ];

    internal IEnumerable<Message> All() =>
    [
        .. (worst?.Answers ?? []).Where(one => one.Response is null).Take(1).Select(one => new Message(
            Severity.Fault,
            MessageCodes.Tips,
            $"The beam tips, or has no answer,{SituationWords.After(beam, one.Situation)}: the figures are without that.")),
        .. Enumerable.Range(0, beam.Supports.Length)
            .SelectMany(support => new[] { Pulled(support), LetGo(support) })
            .OfType<Message>(),
        .. within?.All() ?? [],
    ];

    /// <summary>Which way a support pulls.</summary>
    internal static string Way(bool isSloped) => isSloped ? "along the normal of its surface" : "down";

    /// <summary>The greatest pull that a support meant to act both ways takes.</summary>
    private Message? Pulled(int support)
    {
        NamedSupport named = beam.Supports[support];
        Answer? most = _answers.MaxBy(answer => Pull(answer.Response.Reactions[support]));
        if (most is null || named.Support.Action != SupportAction.Both)
        {
            return null;
        }

        Reaction reaction = most.Response.Reactions[support];
        if (Pull(reaction) <= Rounding * LargestForce(most.Response))
        {
            return within?.MayBePulled(support);
        }

        string least = worst is { AreEnds: false } ? "at least " : "";
        string size = least + beam.Display.Say(Pull(reaction), QuantityKind.Force);
        string way = Way(reaction.Normal is not null);
        string further = within?.Further(support, Pull(reaction)) ?? "";
        return named.ActsAsWritten
            ? new Message(
                Severity.Note, MessageCodes.HoldsDown, $"{named.Label} holds {size} {way}{most.When}, as written.{further}")
            : new Message(
                Severity.Caution, MessageCodes.Uplift, $"{named.Label} must hold {size} {way}{most.When}: is it tied?{further}");
    }

    private Message? LetGo(int support)
    {
        NamedSupport named = beam.Supports[support];
        string[] when =
        [
            .. combinations.Where(answer => answer.Response.Reactions[support].IsLiftedOff)
                .Select(answer => TextSafety.ForTerminal(answer.Combination.Name)),
        ];
        Answer? loose = _answers.FirstOrDefault(answer => answer.Response.Reactions[support].IsLiftedOff);
        string how = named.Support.Action == SupportAction.HoldsDownOnly ? "goes slack" : "lifts off";
        return loose is null
            ? null
            : new Message(
                Severity.Caution,
                MessageCodes.LiftsOff,
                $"{named.Label} {how}{(when.Length > 0 ? $" under {string.Join(", ", when)}" : loose.When)}: "
                    + "it carries nothing there.");
    }

    /// <summary>How much a reaction pulls the beam onto its support [N]; negative where it pushes.</summary>
    private static double Pull(Reaction reaction) => -(reaction.Normal ?? reaction.Vertical);

    private static double LargestForce(BeamResponse response) => response.Reactions
        .Max(reaction => Math.Max(Math.Abs(reaction.Vertical), Math.Abs(reaction.Horizontal)));

    /// <summary>An answer of the beam, and in what case, in words that follow a sentence.</summary>
    private sealed record Answer(BeamResponse Response, string When);
}
