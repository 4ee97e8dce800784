using System.Collections.Immutable;
using System.Diagnostics;
using FieldCheck.Mechanics.HandMethods;
using FieldCheck.Reporting.Tables;

namespace FieldCheck.Reporting.Working;

/// <summary>The words of the three-moment working.</summary>
internal static class ThreeMomentWords
{
    /// <summary>A name, as "M_B" or "L_AB".</summary>
    internal static string NameOf(HandName name, WorkingNames names) => name.Role switch
    {
        HandRole.SupportMoment => $"M_{names.Node(name.Index)}",
        HandRole.MomentLeft => $"ML_{names.Node(name.Index)}",
        HandRole.MomentRight => $"MR_{names.Node(name.Index)}",
        HandRole.ScaledMovement => name.Part == 0 ? $"y_{names.Node(name.Index)}" : $"ys_{names.Node(name.Index)}",
        HandRole.NodeMovement => $"d_{names.Node(name.Index)}",
        HandRole.BayLength => $"L_{Bay(name, names)}",
        HandRole.RigidityRatio => $"n_{Bay(name, names)}",
        HandRole.ReducedLength => $"Lr_{Bay(name, names)}",
        HandRole.Rigidity => $"EI_{Bay(name, names)}",
        HandRole.ShearRigidity => $"GA_{Bay(name, names)}",
        HandRole.ShearLength => $"g_{Bay(name, names)}",
        HandRole.LoadTermLeft => $"K_{Bay(name, names)}",
        HandRole.LoadTermRight => $"K_{Bay(Turned(name), names)}",
        HandRole.SimpleLeft => $"F_{Bay(name, names)}",
        HandRole.SimpleRight => $"F_{Bay(Turned(name), names)}",
        HandRole.MomentShare => $"Q_{Bay(name, names)}",
        HandRole.FromBayLeft => $"a{names.LoadSuffix(name)}",
        HandRole.FromBayRight => $"b{names.LoadSuffix(name)}",
        HandRole.Settlement => $"s_{names.Suffix(name.Index)}",
        HandRole.ImposedTurn => $"r_{names.Suffix(name.Index)}",
        HandRole.Stiffness => $"k_{names.Suffix(name.Index)}",
        HandRole.TurnStiffness => $"c_{names.Suffix(name.Index)}",
        HandRole.TurnLength => $"e_{names.Suffix(name.Index)}",
        HandRole.AxialRigidity => $"EA{name.Index + 1}",
        HandRole.StretchOfOne => $"f_{names.Suffix(name.Index)}",
        HandRole.ShiftByLoads => $"u_{names.Suffix(name.Index)}",
        _ => throw new UnreachableException(),
    };

    /// <summary>The name of a step.</summary>
    internal static string Step(HandStep step, WorkingWords words) => step switch
    {
        HandStep.ThreeMoments three =>
            $"From {words.Place(three.From)} to {words.Place(three.To)}: the three-moment equation",
        HandStep.ReactionsFromMoments => "From the moments to the reactions",
        _ => throw new UnreachableException(),
    };

    /// <summary>A remark in one or more sentences.</summary>
    internal static ImmutableArray<string> Remark(HandRemark remark, WorkingWords words)
    {
        WorkingNames names = words.Names;
        return remark switch
        {
            HandRemark.ThreeMomentRow row => ThreeMomentRowWords.General(row),
            HandRemark.TurnsAgree turns => ThreeMomentRowWords.TurnsAgree(turns, names),
            HandRemark.TurnIsHeld held => ThreeMomentRowWords.TurnIsHeld(held, names, words.Numbers),
            HandRemark.TurnSpring spring => ThreeMomentRowWords.TurnSpring(spring, names, words.Numbers),
            HandRemark.NodeBalance balance => ThreeMomentRowWords.NodeBalance(balance, names),
            HandRemark.LoadTermOf term => LoadTerms(term, names),
            HandRemark.SimpleSpan bay =>
                [$"The bay {names.Node(bay.Left)} to {names.Node(bay.Right)} as a simple span: the force at {names.Node(bay.Left)} from moments about {names.Node(bay.Right)}, the rest at {names.Node(bay.Right)}."],
            HandRemark.EndForces end => EndForces(end),
            HandRemark.NodeSettles { HasSpring: true } settles =>
                [$"The foot of the spring at {names.Node(settles.Node)} settles: ys = EI of the first bay times that."],
            HandRemark.NodeSettles settles =>
                [$"{names.Node(settles.Node)} settles: y = EI of the first bay times its settlement."],
            HandRemark.OverhangMoment overhang =>
                [$"Beyond {names.Node(overhang.Node)} the beam overhangs: M there is force times arm, negative (hogging) for a force down."],
            HandRemark.HingeHasNoMoment hinge => [HingeHasNoMoment(hinge)],
            HandRemark.EndsTurnFreely ends =>
                [$"At {BeamWords.List([.. ends.Nodes.Select(names.Node)])} nothing holds against turning and nothing beyond bends it: M = 0 there."],
            HandRemark.MomentJumps jumps => [Jumps(names.Node(jumps.Node))],
            HandRemark.SlopedRoller roller =>
                Sloped(names.Suffix(roller.Support), names.Suffix(roller.Pin), roller.HasShift),
            HandRemark.SpringMoves spring =>
                [$"How far {names.Support(spring.Support)} moves down: reaction / stiffness{(spring.Settles ? ", on top of its settlement" : "")}."],
            _ => throw new UnreachableException(),
        };
    }

    /// <summary>The two ends of a bay, the one in question first.</summary>
    internal static string Bay(int one, int other, WorkingNames names)
    {
        (string near, string far) = (names.Node(one), names.Node(other));
        return near.Length == 1 && far.Length == 1 ? near + far : $"{near}_{far}";
    }

    private static string Bay(HandName name, WorkingNames names) => Bay(name.Index, name.Part, names);

    private static HandName Turned(HandName name) => new(name.Role, name.Part, name.Index);

    private static ImmutableArray<string> EndForces(HandRemark.EndForces end)
    {
        List<string> sentences =
        [
            "F are the forces at the ends of each bay as a simple span. Its end moments add Q = (M right - M left) / L, up at its left end and down at its right end. A support gives the sum of what meets there.",
        ];
        if (end.HasCouples)
        {
            sentences.Add("The couple of a support is M just left of it less M just right of it, and less a couple that loads the beam there.");
        }

        if (end.HasHinges)
        {
            sentences.Add("A hinge carries what the bay on its right needs: up on that bay, down on the one to its left.");
        }

        return [.. sentences];
    }

    private static string HingeHasNoMoment(HandRemark.HingeHasNoMoment hinge)
    {
        string name = WorkingNames.Hinge(hinge.Hinge);
        string moment = hinge.HasCouples
            ? $"In {name} itself M = 0; just beside it M is what the couples there bring: left of it the couple on its left, right of it the couple on its right turned round"
            : $"In {name} M = 0";
        return hinge.IsHeld
            ? $"{moment}. So no row is needed over it."
            : $"{moment}. How far it moves down is not known, and takes the place of M.";
    }

    private static string Jumps(string node) =>
        $"A couple loads the beam at {node}, so M jumps there: ML_{node} is just left of it, and MR_{node}, just right of it, is less by the couple, counter-clockwise positive.";

    private static ImmutableArray<string> Sloped(string roller, string pin, bool hasShift)
    {
        string gives = $"The surface at {roller} slopes. Pushed, {roller} slides along it as far as the beam between {pin} and {roller} stretches or shortens. So it gives way across like a spring with k = cosine^2 / (f sine^2); f is the stretch under a force of one, length over EA.";
        return hasShift
            ? [gives, $"The loads along the beam move {roller} to the right by u, each by what it stretches between {pin} and itself. That counts as a settlement of u sine / cosine, down where the surface falls to the right."]
            : [gives];
    }

    private static ImmutableArray<string> LoadTerms(HandRemark.LoadTermOf term, WorkingNames names)
    {
        (int near, int far) = term.AtRight ? (term.Right, term.Left) : (term.Left, term.Right);
        string distance = term.AtRight ? "a" : "b";
        string head = $"Load term K_{Bay(near, far, names)}, of the bay between {names.Node(far)} and {names.Node(near)} at {names.Node(near)}";
        return term.Rules.IsEmpty
            ? [$"{head}:"]
            : [$"{head}, with {distance} the distance from {names.Node(far)}:", .. term.Rules.Select(rule => Rule(rule, distance, names.Node(near)))];
    }

    private static string Rule(HandLoadTerm rule, string x, string near) => rule switch
    {
        HandLoadTerm.Point => $"A force W at one place: K = W {x} (L^2 - {x}^2) / L.",
        HandLoadTerm.Uniform => $"W spread evenly over a length c: K = W {x} (L^2 - {x}^2 - c^2 / 4) / L.",
        HandLoadTerm.GrowsNear =>
            $"W spread over c, growing towards {near}: K = W ({x} (L^2 - {x}^2 - c^2 / 6) + c^3 / 135) / L.",
        HandLoadTerm.GrowsAway =>
            $"W spread over c, growing away from {near}: K = W ({x} (L^2 - {x}^2 - c^2 / 6) - c^3 / 135) / L.",
        HandLoadTerm.WholeUniform => "W spread evenly over the whole bay: K = W L^2 / 4.",
        HandLoadTerm.WholeGrowsNear => $"W growing over the whole bay towards {near}: K = 4 W L^2 / 15.",
        HandLoadTerm.WholeGrowsAway => $"W growing over the whole bay away from {near}: K = 7 W L^2 / 30.",
        HandLoadTerm.Couple => x == "a"
            ? "A couple T, counter-clockwise: K = -T (L^2 - 3 a^2) / L."
            : "A couple T, counter-clockwise: K = T (L^2 - 3 b^2) / L.",
        _ => throw new UnreachableException(),
    };
}
