using System.Collections.Immutable;
using FieldCheck.Mechanics.HandMethods;
using FieldCheck.Mechanics.Model;
using FieldCheck.Reporting.Tables;
using FieldCheck.Sheet.Building;

namespace FieldCheck.Reporting.Working;

/// <summary>What is said of supports, hinges and loads before anything is worked.</summary>
internal static class FreeBodyWords
{
    /// <summary>A remark of its kind; null for any other.</summary>
    internal static ImmutableArray<string>? Of(HandRemark remark, WorkingWords words) => remark switch
    {
        HandRemark.SupportHolds holds => [SupportHolds(holds, words)],
        HandRemark.HingeTurns hinge =>
            [$"{WorkingWords.Capital(WorkingNames.Hinge(hinge.Hinge))} at x = {words.Numbers.Say(hinge.Place)}: it turns freely, so the bending moment there is nothing."],
        HandRemark.Count count => Count(count, words),
        HandRemark.LoadLeftOut load => [$"{WorkingWords.Capital(words.Names.LoadName(load.Load))} has no part in this combination."],
        HandRemark.LoadIs load => [LoadIs(load, words)],
        HandRemark.LoadLeans leans =>
            [$"{WorkingWords.Capital(words.Names.LoadName(leans.Load))} is {words.Numbers.Say(leans.Size)}, leaning {words.Numbers.Say(leans.Lean)} from square to the beam, to the {(leans.Along == HandSense.Right ? "right" : "left")}: cosine for the part across, sine for the part along."],
        HandRemark.LoadIsCut cut => [$"It reaches over {words.Places(cut.Cuts)}, where the beam is taken apart: cut there."],
        HandRemark.LetsGo lets => [LetsGo(lets, words)],
        _ => null,
    };

    private static string SupportHolds(HandRemark.SupportHolds holds, WorkingWords words)
    {
        NamedSupport support = words.Beam.Supports[holds.Support];
        string[] can = [.. holds.Unknowns.Select(name => $"{HoldWords(name, support.Support)} ({words.Names.Of(name)}{Parts(name, words)})")];
        string[] cannot = [.. Cannot(support.Support)];
        string does = can.Length == 0 ? "It gives nothing." : $"It {BeamWords.List(can)}.";
        string doesNot = cannot.Length == 0 ? "" : $" It cannot hold {BeamWords.List(cannot, "or")}.";
        return $"{support.Label}, {support.Kind}, at x = {words.Numbers.Say(holds.Place)}{words.Typed.OfSupport(holds.Support)}. {does}{doesNot}";
    }

    /// <summary>A push square to a slope is worked by its parts across and along.</summary>
    private static string Parts(HandName name, WorkingWords words) => name.Role == HandRole.Normal
        ? $", in parts {words.Names.Of(new HandName(HandRole.Vertical, name.Index))} across and {words.Names.Of(new HandName(HandRole.Horizontal, name.Index))} along"
        : "";

    private static string HoldWords(HandName name, Support support) => name.Role switch
    {
        HandRole.Horizontal => "pushes or pulls along",
        HandRole.Couple => "holds against turning",
        HandRole.Normal => support.Action switch
        {
            SupportAction.PushesOnly => "only pushes, square to its surface",
            SupportAction.HoldsDownOnly => "only pulls, square to its surface",
            _ => "pushes or pulls square to its surface",
        },
        _ => support.Action switch
        {
            SupportAction.PushesOnly => "only pushes up",
            SupportAction.HoldsDownOnly => "only holds down",
            _ => "pushes up or holds down",
        },
    };

    private static IEnumerable<string> Cannot(Support support)
    {
        if (support.Along is Restraint.None)
        {
            yield return support.SurfaceSlope != 0 ? "along its surface" : "along the beam";
        }

        if (support.Across is Restraint.None)
        {
            yield return "up or down";
        }

        if (support.Rotation is Restraint.None)
        {
            yield return "against turning";
        }
    }

    private static ImmutableArray<string> Count(HandRemark.Count count, WorkingWords words)
    {
        string hinges = count.Hinges == 0 ? "" : $", and one for each hinge ({count.Hinges})";
        string along = count.IsHeldAlong ? "along, across and turning" : "across and turning; along nothing holds it";
        return
        [
            $"Unknowns: {(count.Unknowns.IsEmpty ? "none" : words.List(count.Unknowns))}: {count.Unknowns.Length}.",
            $"Equations: {along}{hinges}: {count.Equations}.",
            Follows(count),
        ];
    }

    private static string Follows(HandRemark.Count count)
    {
        (int extraAlong, int extraAcross) = (count.DegreeAlong, count.Degree - count.DegreeAlong);
        return count switch
        {
            { CanMove: true, Degree: >= 0 } => "Enough in number, but not in the right places: it can move.",
            { Degree: < 0 } => "Fewer unknowns than equations: nothing is left to hold it, it can move.",
            { Degree: 0 } => "As many unknowns as equations: statics alone gives the reactions.",
            _ when extraAcross <= 0 =>
                $"Across, as many as equations: statics alone is enough there. Along, {Many(extraAlong)}: the stretch of the beam has to be asked too.",
            _ when extraAlong <= 0 => $"That is {Many(extraAcross)}: statics alone is not enough, the bending of the beam has to be asked too.",
            _ => $"That is {Many(extraAcross)} across, and {Many(extraAlong)} along: statics alone is not enough, the bending and the stretch of the beam have to be asked too.",
        };
    }

    private static string Many(int extra) => extra == 1 ? "one unknown too many" : $"{extra} unknowns too many";

    private static string LoadIs(HandRemark.LoadIs load, WorkingWords words)
    {
        NamedLoad named = words.Names.Load(load.Load);
        return $"{WorkingWords.Capital(words.Names.LoadInFull(load.Load))}: {new LoadWords(new BeamWords(words.Beam)).Size(named.Load)}"
            + $" from x = {words.Numbers.Say(load.From)}{words.Typed.OfLoad(named, isStart: true)}"
            + $" to x = {words.Numbers.Say(load.To)}{words.Typed.OfLoad(named, isStart: false)}.";
    }

    private static string LetsGo(HandRemark.LetsGo lets, WorkingWords words)
    {
        string[] labels = [.. lets.Supports.Select(words.Names.Support)];
        bool pushes = words.Beam.Supports[lets.Supports[0]].Support.Action == SupportAction.PushesOnly;
        string would = pushes ? "would have to pull the beam down, and it can only push" : "would have to push, and it can only hold down";
        return $"{BeamWords.List(labels)} {would}. It lets go: the working starts again without it.";
    }
}
