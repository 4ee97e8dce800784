using System.Collections.Immutable;
using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Sheet.Findings;

/// <summary>What must be said of what may be within the plus or minus, though it is not so at the figures typed.</summary>
/// <param name="beam">The beam.</param>
/// <param name="combinations">Its answers as typed.</param>
/// <param name="bands">How well they are known.</param>
internal sealed class BandFindings(
    BuiltBeam beam, ImmutableArray<CombinationResponse> combinations, ToleranceBands bands)
{
    /// <summary>What stands in place of all that would be said here.</summary>
    internal static readonly Message NotFollowed = new(
        Severity.Note,
        MessageCodes.NotFollowed,
        "Too much is uncertain to be followed at every key: whether the beam tips or a support is pulled within what was measured, "
            + "fieldcheck check FILE and the record say.");

    private const string Within = "within what was measured";

    /// <summary>How many inputs are named for one pull.</summary>
    private const int MostNamed = 3;

    /// <summary>Where the beam has no answer, and the supports that may let go.</summary>
    internal IEnumerable<Message> All() =>
    [
        .. bands.Gap is ToleranceGap gap ? [Of(gap)] : Array.Empty<Message>(),
        .. Enumerable.Range(0, beam.Supports.Length).Select(LetsGo).OfType<Message>(),
    ];

    /// <summary>A support that is not pulled as typed and may be.</summary>
    /// <param name="support">Its index; it acts both ways.</param>
    internal Message? MayBePulled(int support)
    {
        if (Most(support) is not Pull most)
        {
            return null;
        }

        NamedSupport named = beam.Supports[support];
        string says = $"{named.Label} may have to hold {Size(most)} {Way(named)} {Within}{Under(most.Combination)}"
            + $"{By(most, support)}";
        return named.ActsAsWritten
            ? new Message(Severity.Note, MessageCodes.HoldsDown, $"{says}, as written.")
            : new Message(Severity.Caution, MessageCodes.UpliftWithin, $"{says}: is it tied?");
    }

    /// <summary>Up to how much more a support may be pulled, in words that follow a sentence; empty where it is not more.</summary>
    /// <param name="support">Its index.</param>
    /// <param name="pull">How much it is pulled as typed [N].</param>
    internal string Further(int support, double pull) =>
        Most(support) is Pull most && beam.Display.Say(most.Size, QuantityKind.Force) != beam.Display.Say(pull, QuantityKind.Force)
            && most.Size > pull
            ? $" {char.ToUpperInvariant(Within[0])}{Within[1..]} up to {Size(most)}{Under(most.Combination)}{By(most, support)}."
            : "";

    private Message Of(ToleranceGap gap)
    {
        string at = Listed(Offsets(gap.Offsets));
        (string code, string what) = gap.Outcome switch
        {
            BeamOutcome.Tips tips => (MessageCodes.TipsWithin, $"the beam tips{Under(IndexOf(tips.Combination))}"),
            BeamOutcome.CanMove => (MessageCodes.TipsWithin, "the beam can move"),
            BeamOutcome.Undecided => (MessageCodes.TipsWithin, "the beam has no answer"),
            _ => (MessageCodes.BandNotWhole, "no beam is left"),
        };
        return new Message(
            Severity.Caution, code, $"{char.ToUpperInvariant(Within[0])}{Within[1..]} {what}: with {at}. The bands are without that.");
    }

    private Message? LetsGo(int support)
    {
        NamedSupport named = beam.Supports[support];
        foreach (int combination in Enumerable.Range(0, combinations.Length))
        {
            if (bands.LetsGo(combination, support) is { } offsets)
            {
                string how = named.Support.Action == SupportAction.HoldsDownOnly ? "goes slack" : "lifts off";
                string at = Listed(Offsets(offsets));
                return new Message(
                    Severity.Caution,
                    MessageCodes.LiftsOffWithin,
                    $"{named.Label} {how} {Within}{Under(combination)}: with {at} it carries nothing.");
            }
        }

        return null;
    }

    private IEnumerable<string> Offsets(IEnumerable<double> offsets) => offsets
        .Select((offset, index) => (Offset: offset, Index: index))
        .Where(one => one.Offset != 0)
        .Select(one => $"{(one.Offset < 0 ? "-" : "+")}{Input(one.Index)}");

    /// <summary>The greatest pull that the bands let happen; null where there is none.</summary>
    private Pull? Most(int support)
    {
        double slope = Math.Cos(beam.Supports[support].Support.SurfaceSlope);
        Pull most = Enumerable.Range(0, combinations.Length)
            .Select(combination => new Pull(-bands.Reaction(combination, support).Vertical.Low / slope, combination))
            .MaxBy(pull => pull.Size);
        double largest = combinations[most.Combination].Response.Reactions
            .Max(reaction => Math.Max(Math.Abs(reaction.Vertical), Math.Abs(reaction.Horizontal)));
        return most.Size > ReactionFindings.Rounding * largest ? most : null;
    }

    private string Size(Pull pull) => beam.Display.Say(pull.Size, QuantityKind.Force);

    private static string Way(NamedSupport named) => ReactionFindings.Way(named.Support.SurfaceSlope != 0);

    private string Under(int combination) => string.Concat(
        combinations.Length > 1 ? $" under {TextSafety.ForTerminal(combinations[combination].Combination.Name)}" : "",
        beam.Varies ? ", with all loads on and nothing rolling" : "");

    private string By(Pull pull, int support)
    {
        string[] inputs =
        [
            .. bands.Ranking(pull.Combination, support, ReactionPart.Vertical)
                .Where(effect => beam.Display.Say(-effect.Down, QuantityKind.Force) != beam.Display.Say(0, QuantityKind.Force))
                .Take(MostNamed)
                .Select(effect => Input(effect.Input)),
        ];
        return inputs.Length == 0 ? "" : $" ({string.Join(", then ", inputs)})";
    }

    private string Input(int index) => TextSafety.ForTerminal($"{beam.Uncertain[index].Width} {beam.Uncertain[index].Words}");

    private static string Listed(IEnumerable<string> items)
    {
        string[] all = [.. items];
        return all.Length > 1 ? $"{string.Join(", ", all[..^1])} and {all[^1]}" : string.Concat(all);
    }

    private int IndexOf(Combination combination) =>
        Math.Max(0, beam.Model.Combinations.Select(one => one.Name).ToList().IndexOf(combination.Name));

    /// <param name="Size">How hard a support is pulled [N]; negative where it is pushed.</param>
    /// <param name="Combination">Under which combination.</param>
    private readonly record struct Pull(double Size, int Combination);
}
