using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Reporting.Tables;

/// <summary>Reactions, with their directions in words.</summary>
internal static class ReactionTable
{
    /// <summary>One row for each support: label, place, what it gives, and whether it holds.</summary>
    internal static ImmutableArray<string> Lines(BuiltBeam beam, BeamResponse response, int width)
    {
        BeamWords words = new(beam);
        ImmutableArray<string> names = [.. beam.Supports.Select(support => support.Label)];
        ImmutableArray<string> places =
            [.. beam.Supports.Select(support => words.Say(support.Support.Position, QuantityKind.Length))];
        ImmutableArray<ImmutableArray<string>> parts = AlignedParts(words, response);
        int nameWidth = names.Max(name => (int?)name.Length) ?? 0;
        int placeWidth = places.Max(place => (int?)place.Length) ?? 0;
        return
        [
            .. beam.Supports.SelectMany((support, i) => TextFlow.Join(
                [
                    $"  {names[i].PadRight(nameWidth)}  at {places[i].PadLeft(placeWidth)}",
                    .. parts[i],
                    .. Remarks(words, support, response.Reactions[i]),
                ],
                "   ",
                width,
                indent: 6)),
        ];
    }

    /// <summary>What is to be said beside a reaction: HELD or LIFTS where it pulls, the push on a slope.</summary>
    internal static ImmutableArray<string> Remarks(BeamWords words, NamedSupport support, Reaction reaction)
    {
        if (reaction.IsLiftedOff)
        {
            return BeamWords.IsSlack(support.Support, reaction) ? [] : ["LIFTS"];
        }

        string[] slope = reaction.Normal is double normal
            ? [$"({words.Say(Math.Abs(normal), QuantityKind.Force)} square to its surface)"]
            : [];
        string[] held = words.IsDown(reaction)
            ? ["(must be held down)", IsMeantToHold(support) ? "HELD" : "LIFTS"]
            : [];
        return [.. slope, .. held];
    }

    /// <summary>Whether the sheet says that a support can hold down.</summary>
    internal static bool IsMeantToHold(NamedSupport support) =>
        support.ActsAsWritten && support.Support.Action is not SupportAction.PushesOnly;

    /// <summary>What every support gives; the first parts begin with as many blanks as line up their units.</summary>
    internal static ImmutableArray<ImmutableArray<string>> AlignedParts(BeamWords words, BeamResponse response)
    {
        ImmutableArray<ImmutableArray<string>> parts = [.. response.Reactions.Select((reaction, i) => words.Parts(words.Beam.Model.Supports[i], reaction))];
        int widest = parts.Max(part => NumberWidth(part[0])) ?? 0;
        return [.. parts.Select(part => part.SetItem(0, Blanks(widest - NumberWidth(part[0])) + part[0]))];
    }

    private static string Blanks(int? count) => new(' ', count ?? 0);

    private static int? NumberWidth(string part) =>
        char.IsDigit(part[0]) ? part.IndexOf(' ', StringComparison.Ordinal) : null;
}
