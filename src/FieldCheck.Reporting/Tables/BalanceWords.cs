using System.Collections.Immutable;
using FieldCheck.Mechanics.Checks;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Stated;

namespace FieldCheck.Reporting.Tables;

/// <summary>Whether stated figures carry the loads, in sentences.</summary>
internal static class BalanceWords
{
    internal static ImmutableArray<string> Of(BeamWords words, StatedBalance stated)
    {
        ReactionBalance balance = stated.Balance;
        string under = string.Concat(new StatedWords(words).Answer(stated.Against).Select(answer => $", {answer}"));
        string source = stated.Source is null ? "" : $", as {TypedLetters.Name(words.Beam, stated.Source)} has them";
        return
        [
            $"sum of the stated figures{under}{source}: "
                + $"{Side(words, balance.Forces, QuantityKind.Force, "up", "down")}",
            balance.Moments is BalanceSide moments
                ? $"their moments about {stated.About}: "
                    + Side(words, moments, QuantityKind.Moment, "counter-clockwise", "clockwise")
                : "their moments: not every moment that a support gives is stated",
            .. balance switch
            {
                { Closes: false } when stated.IsWithinBands =>
                    ["every figure agrees or is within its band: the plus or minus of what was measured may explain this too"],
                { Lacking: BalancingLoad load } => [Lacking(words, load)],
                { Forces.Closes: true, Moments.Closes: false } =>
                    ["the forces close and their moments do not: no load left out of them or put in does that"],
                _ => (string[])[],
            },
        ];
    }

    private static string Side(BeamWords words, BalanceSide side, QuantityKind kind, string held, string loaded)
    {
        string verdict = side.Closes ? "closes" : "DOES NOT CLOSE";
        string allowed = words.Say(side.Allowed, kind);
        string off = words.Say(Math.Abs(side.Difference), kind);
        bool isShort = Math.Sign(side.Difference) != Math.Sign(side.Loads);
        string by = words.IsNothing(side.Difference, kind) ? "" : isShort ? $"short by {off}, " : $"over by {off}, ";
        return $"{Sense(side.Stated, held, loaded)} against loads {Sense(side.Loads, loaded, held)}, "
            + $"{by}allowed {allowed}: {verdict}";

        string Sense(double value, string positive, string negative)
        {
            string size = words.Say(Math.Abs(value), kind);
            return words.IsNothing(value, kind) ? size : $"{size} {(value > 0 ? positive : negative)}";
        }
    }

    private static string Lacking(BeamWords words, BalancingLoad load)
    {
        string size = words.Say(Math.Abs(load.Down), QuantityKind.Force);
        string place = words.Say(load.Position, QuantityKind.Length);
        string from = words.Say(load.From, QuantityKind.Length);
        string to = words.Say(load.To, QuantityKind.Length);
        string range = from == to ? "" : $" (from {from} to {to}, as the figures are rounded)";
        double length = words.Beam.Model.Length;
        double edge = BeamPlaces.SamePlace * length;
        string off = load.To < -edge || load.From > length + edge ? ", off the beam," : "";
        return load.Down > 0
            ? $"it is as if one load of {size} down at {place}{range}{off} were left out of them"
            : $"it is as if one load more, of {size} down at {place}{range}{off}, were in them";
    }
}
