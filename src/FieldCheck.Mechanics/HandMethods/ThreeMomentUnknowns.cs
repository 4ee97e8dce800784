using System.Collections.Immutable;

namespace FieldCheck.Mechanics.HandMethods;

/// <summary>Says of each node which moments and movements are known and which are not.</summary>
internal static class ThreeMomentUnknowns
{
    /// <summary>Sets the moments and movements of all nodes; what is known is written.</summary>
    internal static void Put(ThreeMomentGroup group)
    {
        SayFreeEnds(group);
        foreach (ThreeMomentNode node in group.Nodes)
        {
            PutMoments(group, node);
            if (group.Bays.IsEmpty)
            {
                continue;
            }

            if (node.IsHeldAcross && group.Beam.IsSloped(node.Support!.Value))
            {
                ThreeMomentSlope.Put(group, node);
            }

            PutMovement(group, node);
            if (node.TurnStiffness is HandNumber stiffness)
            {
                node.TurnLength = group.Writer.Find(
                    group.SixTimesOver(stiffness), new HandName(HandRole.TurnLength, node.Support!.Value));
            }
        }
    }

    private static void SayFreeEnds(ThreeMomentGroup group)
    {
        ImmutableArray<int> free =
        [
            .. group.Nodes
                .Where(node => (node.BayLeft is null) != (node.BayRight is null) && node.Couple is null)
                .Where(node => !node.IsClamped && node.TurnStiffness is null)
                .Where(node => node.MomentLeft.IsNil && node.MomentRight.IsNil)
                .Select(node => node.Index),
        ];
        if (!free.IsEmpty)
        {
            group.Writer.Say(new HandRemark.EndsTurnFreely(free));
        }
    }

    private static void PutMoments(ThreeMomentGroup group, ThreeMomentNode node)
    {
        HandWriter writer = group.Writer;
        if (node.Hinge is int hinge)
        {
            writer.Say(new HandRemark.HingeHasNoMoment(
                hinge,
                node.IsHeldAcross && node.Stiffness is null,
                !node.MomentLeft.IsNil || !node.MomentRight.IsNil));
            node.MomentLeft = Known(writer, node.MomentLeft, node.Name(HandRole.MomentLeft));
            node.MomentRight = Known(writer, node.MomentRight, node.Name(HandRole.MomentRight));
        }
        else if (node.IsClamped || node.TurnStiffness is not null)
        {
            HandQuantity? outside = node.BayLeft is null ? node.MomentLeft
                : node.BayRight is null ? node.MomentRight
                : null;
            bool isPlainEnd = node.Couple is null && outside is { IsNil: true };
            node.MomentLeft = node.BayLeft is null
                ? node.MomentLeft
                : HandQuantity.Of(node.Name(isPlainEnd ? HandRole.SupportMoment : HandRole.MomentLeft));
            node.MomentRight = node.BayRight is null
                ? node.MomentRight
                : HandQuantity.Of(node.Name(isPlainEnd ? HandRole.SupportMoment : HandRole.MomentRight));
        }
        else if (node.BayLeft is null)
        {
            node.MomentRight = Known(
                writer, Sum(node.MomentLeft, -1, node.Couple), node.Name(HandRole.MomentRight));
        }
        else if (node.BayRight is null)
        {
            node.MomentLeft = Known(
                writer, Sum(node.MomentRight, 1, node.Couple), node.Name(HandRole.MomentLeft));
        }
        else if (node.Couple is HandFormula couple)
        {
            writer.Say(new HandRemark.MomentJumps(node.Index));
            node.MomentLeft = HandQuantity.Of(node.Name(HandRole.MomentLeft));
            node.MomentRight = new HandQuantity(node.MomentLeft.Unknown, -couple);
        }
        else
        {
            node.MomentLeft = node.MomentRight = HandQuantity.Of(node.Name(HandRole.SupportMoment));
        }
    }

    private static void PutMovement(ThreeMomentGroup group, ThreeMomentNode node)
    {
        HandName name = node.Name(HandRole.ScaledMovement);
        bool isRigid = node.IsHeldAcross && node.Stiffness is null;
        HandNumber? settled = null;
        if (node.IsHeldAcross && node.Settlement is HandNumber settlement)
        {
            group.Writer.Say(new HandRemark.NodeSettles(node.Index, !isRigid));
            settled = group.Writer.Find(
                (HandFormula)group.Comparison * settlement, name with { Part = isRigid ? 0 : 1 });
        }

        node.ScaledSettlement = isRigid ? null : settled;
        node.Movement = isRigid ? HandQuantity.Of(settled) : HandQuantity.Of(name);
    }

    private static HandQuantity Sum(HandQuantity known, int sign, HandFormula? couple) => couple is null
        ? known
        : new(null, known.Known is HandFormula moment ? moment + Signed(sign, couple) : Signed(sign, couple));

    private static HandFormula Signed(int sign, HandFormula formula) => sign > 0 ? formula : -formula;

    /// <summary>Gives a known moment a line of its own, if it has none.</summary>
    private static HandQuantity Known(HandWriter writer, HandQuantity quantity, HandName name) =>
        quantity.Known is null or HandFormula.Known
            ? quantity
            : HandQuantity.Of(writer.Find(quantity.Known, name));
}
