using System.Collections.Immutable;
using FieldCheck.Mechanics.HandMethods;

namespace FieldCheck.Reporting.Working;

/// <summary>The words above each row of the three-moment equation.</summary>
internal static class ThreeMomentRowWords
{
    /// <summary>The row in general.</summary>
    internal static ImmutableArray<string> General(HandRemark.ThreeMomentRow row)
    {
        (string l, string nba, string nbc) = row.HasRatios ? ("Lr", "n_AB K_BA", "n_BC K_BC") : ("L", "K_BA", "K_BC");
        string moves = row.HasMovements ? " + 6 (y_B - y_A) / L_AB - 6 (y_C - y_B) / L_BC" : "";
        List<string> sentences =
        [
            "Each bay between two supports is bent by its own loads and by the moments M over its ends, sagging positive. The beam has no kink over a support, so both bays turn alike there. For three neighbours A, B, C that says (three-moment equation of Clapeyron):",
            $"M_A {l}_AB + 2 M_B ({l}_AB + {l}_BC) + M_C {l}_BC = -({nba} + {nbc}){moves}",
            "K_BA is the load term of the bay A to B at B: 6 EI times the turn that the loads give it there as a simple span. K_BC is that of the bay B to C at B.",
        ];
        if (row.HasRatios)
        {
            sentences.Add("Sections differ: n is EI of the first bay over EI of the bay, and Lr = n L.");
        }

        if (row.HasMovements)
        {
            sentences.Add("y is EI of the first bay times the movement down; over a firm support that does not settle it is nothing.");
        }

        if (row.HasShear)
        {
            sentences.Add("Shear bends the beam too: with g = 6 EI / (GA L) of a bay, Lr becomes Lr - g beside its far moment, and 2 Lr becomes 2 Lr + g beside its near one.");
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
        string row = $"Row at {node} for the bay to {other}: held against turning, as if a span of no length followed beyond it, so that {node} is the middle one of three: 2 M L here, M L at {other}.";
        if (held.Imposed is not HandNumber turn)
        {
            return [row];
        }

        string sign = held.AtRight ? "added to" : "taken from";
        return [row, $"The support turns it by r = {numbers.Text(turn)} (radians, counter-clockwise): 6 EI r is {sign} the known side."];
    }

    /// <summary>A row at an end that a spring holds against turning.</summary>
    internal static ImmutableArray<string> TurnSpring(
        HandRemark.TurnSpring spring, WorkingNames names, CarriedNumbers numbers)
    {
        (string node, string other) = (names.Node(spring.Node), names.Node(spring.Other));
        return
        [
            $"Row at {node} for the bay to {other}: a spring of {numbers.Say(spring.Stiffness)} a radian resists turning.",
            $"Its couple is what M jumps by at {node}, and over its stiffness it is the turn: as at a held end, with e_{node} = 6 EI / stiffness times the jump besides.",
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
        return
        [
            $"{node} can move down: y_{node} is unknown, and the balance of forces across at {node} gives a row for it. The end moments of a bay lift {node} by (M near - M far) / L{spring} against what the bays as simple spans and the loads at {node} press down.",
        ];
    }
}
