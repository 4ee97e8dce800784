using System.Collections.Immutable;
using FieldCheck.Mechanics.HandMethods;

namespace FieldCheck.Reporting.Working;

/// <summary>The words above each row of the three-moment equation.</summary>
internal static class ThreeMomentRowWords
{
    /// <summary>The row in general.</summary>
    internal static ImmutableArray<string> General(HandRemark.ThreeMomentRow row)
    {
        (string l, string near, string far) = row.HasRatios ? ("Lr", "n_ij K_ji", "n_jk K_jk") : ("L", "K_ji", "K_jk");
        string moves = row.HasMovements ? " + 6 (y_j - y_i) / L_ij - 6 (y_k - y_j) / L_jk" : "";
        List<string> sentences =
        [
            "Each bay between two supports is bent by its own loads and by the moments M over its ends, sagging positive. The beam has no kink over a support, so both bays turn alike there. For any three neighbours i, j, k, from left to right, that says (three-moment equation of Clapeyron):",
            $"M_i {l}_ij + 2 M_j ({l}_ij + {l}_jk) + M_k {l}_jk = -({near} + {far}){moves}",
            "K_ji is the load term of the bay i to j at j: 6 EI times the turn that the loads give it there as a simple span. K_jk is that of the bay j to k at j.",
        ];
        if (row.HasShear)
        {
            sentences.Add($"The beam gives in shear too: beside the far moment of a bay {l} becomes {l} - g, beside its near one 2 {l} becomes 2 {l} + g, and a couple inside the bay counts with g times its size besides.");
        }

        return [.. sentences];
    }

    /// <summary>A row over a node where two bays turn alike.</summary>
    internal static ImmutableArray<string> TurnsAgree(HandRemark.TurnsAgree turns, WorkingNames names) =>
    [
        $"Row over {names.Node(turns.Node)}, between {names.Node(turns.Left)} and {names.Node(turns.Right)}: both bays turn alike.",
    ];

    /// <summary>A row at an end that is held against turning.</summary>
    internal static ImmutableArray<string> TurnIsHeld(
        HandRemark.TurnIsHeld held, WorkingNames names, CarriedNumbers numbers)
    {
        (string node, string other) = (names.Node(held.Node), names.Node(held.Other));
        string row = $"Row at {node} for the bay to {other}: held against turning, as if a span of no length followed beyond it, so that {node} is the middle one of three: its M counts with 2 L, that of {other} with L.";
        if (held.Imposed is not HandNumber turn)
        {
            return [row];
        }

        string sign = held.AtRight ? "added to" : "taken from";
        return [row, $"The support turns it by r = {numbers.Text(turn)} (radians, counter-clockwise): 6 EI r, with EI of the first bay, is {sign} the known side."];
    }

    /// <summary>A row at an end that a spring holds against turning.</summary>
    internal static ImmutableArray<string> TurnSpring(
        HandRemark.TurnSpring spring, WorkingNames names, CarriedNumbers numbers)
    {
        (string node, string other) = (names.Node(spring.Node), names.Node(spring.Other));
        return
        [
            $"Row at {node} for the bay to {other}: a spring of {numbers.Say(spring.Stiffness)} a radian resists turning.",
            $"Its couple is what M jumps by at {node}{(spring.HasCouple ? ", less the couple that loads the beam there" : "")}; over the stiffness that is the turn. So the row is that of a held end, with e_{node} times that couple besides: e_{node} = 6 EI of the first bay / stiffness.",
        ];
    }

    /// <summary>A row for a node that moves.</summary>
    internal static ImmutableArray<string> NodeBalance(HandRemark.NodeBalance balance, WorkingNames names)
    {
        string node = names.Node(balance.Node);
        string spring = (balance.HasSpring, balance.Settles) switch
        {
            (true, true) => $", and its spring by k (y_{node} - ys_{node}) / EI,",
            (true, false) => $", and its spring by k y_{node} / EI,",
            _ => "",
        };
        string joint = names.IsJoint(balance.Node) ? $"{node} is a joint at which the section changes. " : "";
        return
        [
            $"{joint}{node} can move down: y_{node} is unknown, and the balance of forces across at {node} gives a row for it. The end moments of a bay lift {node} by (M near - M far) / L{spring} against what the bays as simple spans and the loads at {node} press down.",
        ];
    }
}
