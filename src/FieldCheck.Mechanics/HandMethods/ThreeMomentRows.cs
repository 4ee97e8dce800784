using System.Collections.Immutable;

namespace FieldCheck.Mechanics.HandMethods;

/// <summary>The rows of the system: turns that agree, turns that are held, nodes in balance.</summary>
internal sealed class ThreeMomentRows
{
    private readonly ThreeMomentGroup _group;
    private readonly List<HandEquation> _rows = [];

    private ThreeMomentRows(ThreeMomentGroup group) => _group = group;

    /// <summary>Writes one row for each unknown.</summary>
    internal static ImmutableArray<HandEquation> Write(ThreeMomentGroup group)
    {
        ThreeMomentRows rows = new(group);
        if (group.Bays.IsEmpty)
        {
            return [];
        }

        group.Writer.Say(new HandRemark.ThreeMomentRow(
            group.Bays.Any(bay => bay.Ratio is not null),
            group.Nodes.Any(node => !node.Movement.IsNil),
            group.Bays.Any(bay => bay.ShearLength is not null)));
        foreach (ThreeMomentNode node in group.Nodes)
        {
            rows.Turns(node);
            rows.Balance(node);
        }

        return [.. rows._rows];
    }

    private void Turns(ThreeMomentNode node)
    {
        (ThreeMomentBay? left, ThreeMomentBay? right) = (node.BayLeft, node.BayRight);
        if (node.IsClamped)
        {
            Clamped(node, left, atRight: true);
            Clamped(node, right, atRight: false);
            return;
        }

        if (left is not null && right is not null && node.Hinge is null)
        {
            _group.Writer.Say(new HandRemark.TurnsAgree(left.Left.Index, node.Index, right.Right.Index));
            ThreeMomentRow row = new(HandUnit.OfRigidity);
            AddTurn(row, left, atRight: true);
            AddTurn(row, right, atRight: false);
            Write(row);
        }

        if (node.TurnStiffness is not null)
        {
            TurnSpring(node);
        }
    }

    private void Clamped(ThreeMomentNode node, ThreeMomentBay? bay, bool atRight)
    {
        if (bay is null)
        {
            return;
        }

        _group.Writer.Say(new HandRemark.TurnIsHeld(
            node.Index, (atRight ? bay.Left : bay.Right).Index, atRight, node.ImposedTurn));
        ThreeMomentRow row = new(HandUnit.OfRigidity);
        AddTurn(row, bay, atRight);
        if (node.ImposedTurn is HandNumber turn)
        {
            HandFormula known = (HandFormula)6 * _group.Comparison * turn;
            row.AddKnown(atRight ? -known : known);
        }

        Write(row);
    }

    /// <summary>The spring's couple is the jump of the moment; over its stiffness, that is the turn of the beam.</summary>
    private void TurnSpring(ThreeMomentNode node)
    {
        bool atRight = node.BayRight is null;
        ThreeMomentBay bay = (atRight ? node.BayLeft : node.BayRight)!;
        _group.Writer.Say(new HandRemark.TurnSpring(
            node.Index, (atRight ? bay.Left : bay.Right).Index, atRight, node.TurnStiffness!, node.Couple is not null));
        ThreeMomentRow row = new(HandUnit.OfRigidity);
        AddTurn(row, bay, atRight);
        int sign = atRight ? 1 : -1;
        HandNumber length = node.TurnLength!;
        row.Add(sign, length, node.MomentLeft);
        row.Add(-sign, length, node.MomentRight);
        if (node.Couple is HandFormula couple)
        {
            row.Add(-sign, length, new HandQuantity(null, couple));
        }

        Write(row);
    }

    /// <summary>Adds 6 EI times the turn of a bay's end: clockwise the left one, counter-clockwise the right one.</summary>
    private static void AddTurn(ThreeMomentRow row, ThreeMomentBay bay, bool atRight)
    {
        (ThreeMomentNode near, ThreeMomentNode far) = atRight ? (bay.Right, bay.Left) : (bay.Left, bay.Right);
        HandQuantity nearMoment = atRight ? near.MomentLeft : near.MomentRight;
        HandQuantity farMoment = atRight ? far.MomentRight : far.MomentLeft;
        if (atRight)
        {
            AddBending(1, farMoment, -1);
            AddBending(2, nearMoment, 1);
        }
        else
        {
            AddBending(2, nearMoment, 1);
            AddBending(1, farMoment, -1);
        }

        row.Add(6, (HandFormula)1 / bay.Length, far.Movement);
        row.Add(-6, (HandFormula)1 / bay.Length, near.Movement);
        if (bay.LoadTerm(atRight) is HandNumber term)
        {
            row.AddKnown(bay.Ratio is HandNumber ratio ? (HandFormula)ratio * term : term);
        }

        if (bay.ShearLength is HandNumber shear)
        {
            foreach (ThreeMomentLoad couple in bay.Couples)
            {
                HandFormula product = (HandFormula)shear * couple.Size;
                row.AddKnown(couple.IsPositive == atRight ? product : -product);
            }
        }

        void AddBending(int times, HandQuantity moment, int shearSign)
        {
            row.Add(times, bay.Reduced, moment);
            if (bay.ShearLength is HandNumber shearLength)
            {
                row.Add(shearSign, shearLength, moment);
            }
        }
    }

    private void Balance(ThreeMomentNode node)
    {
        if (node.Movement.Unknown is null)
        {
            return;
        }

        _group.Writer.Say(new HandRemark.NodeBalance(
            node.Index, node.IsHeldAcross, node.ScaledSettlement is not null));
        ThreeMomentRow row = new(HandUnit.OfForce);
        if (node.BayLeft is ThreeMomentBay left)
        {
            row.Add(-1, (HandFormula)1 / left.Length, left.Left.MomentRight);
            row.Add(1, (HandFormula)1 / left.Length, node.MomentLeft);
            AddDown(left.EndRight());
        }

        if (node.BayRight is ThreeMomentBay right)
        {
            row.Add(1, (HandFormula)1 / right.Length, node.MomentRight);
            row.Add(-1, (HandFormula)1 / right.Length, right.Right.MomentLeft);
            AddDown(right.EndLeft());
        }

        if (node.IsHeldAcross)
        {
            HandFormula stiffness = (HandFormula)node.Stiffness! / _group.Comparison;
            row.Add(1, stiffness, node.Movement);
            row.Add(-1, stiffness, HandQuantity.Of(node.ScaledSettlement));
        }

        node.Down.ForEach(down => row.AddKnown(-down));
        Write(row);

        void AddDown(HandNumber? down)
        {
            if (down is not null)
            {
                row.AddKnown(-(HandFormula)down);
            }
        }
    }

    private void Write(ThreeMomentRow row) => _rows.Add(row.Write(_group.Writer, _rows.Count + 1));
}
