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
        HandRemark.LoadTurned turned =>
            [$"The factor of {words.Names.LoadName(turned.Load)} is negative: it acts the other way round."],
        HandRemark.LoadIsSplit split => [Split(split)],
        HandRemark.TurnsSide turns =>
            [$"It stands at a hinge, and turns the part on its {(turns.Side == Side.Left ? "left" : "right")}."],
        HandRemark.NoLoads => ["No load stands on the beam in this combination."],
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
        string name = words.Names.Suffix(holds.Support) is var suffix && suffix == support.Label
            ? support.Label
            : $"{support.Label} (called {suffix} below)";
        string kind = support.Support.SurfaceSlope == 0 ? support.Kind
            : $"{support.Kind} on a surface that rises {words.Numbers.Figures.Write(words.Numbers.Figures.FromSi(Math.Abs(support.Support.SurfaceSlope), HandUnit.OfAngle), HandUnit.OfAngle)} deg to the {(support.Support.SurfaceSlope > 0 ? "right" : "left")}";
        return $"{name}, {kind}, at x = {words.Numbers.Say(holds.Place)}{words.Typed.OfSupport(holds.Support)}. {does}{doesNot}{Gap(support, words)}";
    }

    private static string Gap(NamedSupport support, WorkingWords words) => support.HasGap
        ? $" There is a gap of {new BeamWords(words.Beam).MovementSize(support.Support.Settlement)} to close first."
        : "";

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
        string along = count.CountsAlong
            ? "along, across and turning"
            : "across and turning (along, nothing acts and nothing holds it)";
        return
        [
            $"Unknowns: {(count.Unknowns.IsEmpty ? "none" : words.List(count.Unknowns))}: {count.Unknowns.Length}.",
            $"Equations: {along}{hinges}: {count.Equations}.",
            Follows(count),
        ];
    }

    private static string Follows(HandRemark.Count count) => count switch
    {
        { DegreeAlong: < 0 } => "Along, something acts and nothing holds against it: it can move.",
        { DegreeAcross: < 0 } => "Fewer unknowns than equations: what holds it is not enough, it can move.",
        { CanMove: true } => "Enough in number, but not in the right places: it can move.",
        { Degree: 0 } => "As many unknowns as equations: statics alone gives the reactions.",
        { DegreeAcross: 0 } =>
            $"Across, as many as equations: statics alone is enough there. Along, {Many(count.DegreeAlong)}: the stretch of the beam has to be asked too.",
        { IsTied: true } =>
            $"That is {Many(count.DegreeAcross)}: statics alone is not enough, the bending of the beam has to be asked too, and, where a surface slopes, its stretch.",
        { DegreeAlong: 0 } =>
            $"That is {Many(count.DegreeAcross)}: statics alone is not enough, the bending of the beam has to be asked too.",
        _ => $"That is {Many(count.DegreeAcross)} across, and {Many(count.DegreeAlong)} along: statics alone is not enough, the bending and the stretch of the beam have to be asked too.",
    };

    private static string Many(int extra) => extra == 1 ? "one unknown too many" : $"{extra} unknowns too many";

    private static string LoadIs(HandRemark.LoadIs load, WorkingWords words)
    {
        NamedLoad named = words.Names.Load(load.Load);
        string size = words.Typed.SizeOf(named) is { Length: > 0 } typed ? typed
            : named.Row is null ? "its weight per length"
            : new LoadWords(new BeamWords(words.Beam)).Size(named.Load);
        return $"{WorkingWords.Capital(words.Names.LoadInFull(load.Load))}: {size},"
            + $" from x = {words.Numbers.Say(load.From)}{words.Typed.OfLoad(named, isStart: true)}"
            + $" to x = {words.Numbers.Say(load.To)}{words.Typed.OfLoad(named, isStart: false)}.";
    }

    private static string Split(HandRemark.LoadIsSplit split)
    {
        IEnumerable<string> parts = split.Shapes.Select((shape, i) => $"{(char)('a' + (split.First + i))} {ShapeWords(shape)}");
        return $"Its parts: {BeamWords.List([.. parts])}.";
    }

    private static string ShapeWords(HandShape shape) => shape switch
    {
        HandShape.Uniform => "is even",
        HandShape.Rising => "grows to the right",
        _ => "grows to the left",
    };

    private static string LetsGo(HandRemark.LetsGo lets, WorkingWords words)
    {
        Support support = words.Beam.Supports[lets.Support].Support;
        string label = words.Names.Support(lets.Support);
        string would = support.Action == SupportAction.PushesOnly
            ? "would have to pull the beam down, and it can only push"
            : "would have to push, and it can only hold down";
        string worst = lets.IsWorst ? ", more than any other that would have to act as it cannot" : "";
        string all = support.Along is Restraint.None ? "" : ", and what it holds along goes with it";
        return $"{label} {would}{worst}. It lets go{all}: the working starts again without it.";
    }
}
