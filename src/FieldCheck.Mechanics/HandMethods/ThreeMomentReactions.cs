namespace FieldCheck.Mechanics.HandMethods;

/// <summary>Carries support moments on to reactions and hinge forces.</summary>
internal sealed class ThreeMomentReactions
{
    private readonly ThreeMomentGroup _group;
    private readonly HandBeam _beam;
    private readonly HandWriter _writer;
    private readonly Dictionary<HandName, HandNumber> _found;
    private readonly Dictionary<ThreeMomentBay, HandNumber> _shares = [];

    private ThreeMomentReactions(ThreeMomentGroup group, Dictionary<HandName, HandNumber> found)
    {
        _group = group;
        _beam = group.Beam;
        _writer = group.Writer;
        _found = found;
    }

    /// <summary>Writes the reactions into the beam.</summary>
    /// <param name="group">The group.</param>
    /// <param name="found">Its unknowns.</param>
    internal static void Write(ThreeMomentGroup group, Dictionary<HandName, HandNumber> found)
    {
        ThreeMomentReactions reactions = new(group, found);
        group.Writer.Begin(new HandStep.ReactionsFromMoments());
        group.Writer.Say(new HandRemark.EndForces(
            group.Nodes.Any(node => node.Support is int support && group.Beam.HoldsTurn(support)),
            group.Nodes.Any(node => node.Hinge is not null)));
        reactions.Jumps();
        foreach (ThreeMomentBay bay in group.Bays)
        {
            reactions.Share(bay);
        }

        foreach (ThreeMomentNode node in group.Nodes)
        {
            reactions.AtNode(node);
        }
    }

    /// <summary>Moments just right of a node that a loading couple acts on.</summary>
    private void Jumps()
    {
        foreach (ThreeMomentNode node in _group.Nodes)
        {
            if (node.MomentRight is { Unknown: not null, Known: not null } jumping)
            {
                HandNumber right = _writer.Find(jumping.With(_found)!, node.Name(HandRole.MomentRight));
                node.MomentRight = HandQuantity.Of(right);
            }
        }
    }

    private void Share(ThreeMomentBay bay)
    {
        bay.EndRight();
        HandFormula? left = bay.Left.MomentRight.With(_found);
        HandFormula? right = bay.Right.MomentLeft.With(_found);
        if (left is null && right is null)
        {
            return;
        }

        HandFormula difference = left is null ? right! : right is null ? -left : right - left;
        _shares.Add(bay, _writer.Find(difference / bay.Length, bay.Name(HandRole.MomentShare)));
    }

    private void AtNode(ThreeMomentNode node)
    {
        if (node.Support is int support)
        {
            if (node.IsHeldAcross)
            {
                List<HandFormula> all = [.. FromLeft(node), .. FromRight(node), .. node.Down];
                _beam.Vertical[support] = Total(all, new HandName(HandRole.Vertical, support));
            }

            if (_beam.HoldsTurn(support))
            {
                _beam.Couple[support] = Couple(node, new HandName(HandRole.Couple, support));
            }
        }

        if (node.Hinge is int hinge && node.BayRight is not null)
        {
            List<HandFormula> all = [.. FromRight(node)];
            _beam.HingeForce[hinge] = Total(all, new HandName(HandRole.HingeForce, hinge));
            _beam.HingeLiftsLeft[hinge] = false;
        }

        if (node.Movement.Unknown is HandName unknown && _beam.Model.HasAbsoluteStiffness)
        {
            Movement(node, _found[unknown]);
        }
    }

    private HandNumber Total(List<HandFormula> terms, HandName name) => _writer.Find(
        terms.Count == 1 ? terms[0] : HandFormula.Total(terms, HandUnit.OfForce), name);

    private IEnumerable<HandFormula> FromLeft(ThreeMomentNode node)
    {
        if (node.BayLeft?.EndRight() is HandNumber end)
        {
            yield return end;
        }

        if (node.BayLeft is ThreeMomentBay bay && _shares.TryGetValue(bay, out HandNumber? share))
        {
            yield return -(HandFormula)share;
        }
    }

    private IEnumerable<HandFormula> FromRight(ThreeMomentNode node)
    {
        if (node.BayRight?.EndLeft() is HandNumber end)
        {
            yield return end;
        }

        if (node.BayRight is ThreeMomentBay bay && _shares.TryGetValue(bay, out HandNumber? share))
        {
            yield return share;
        }
    }

    private HandNumber Couple(ThreeMomentNode node, HandName name)
    {
        HandFormula?[] parts =
        [
            node.MomentLeft.With(_found),
            node.Couple is HandFormula couple ? -couple : null,
            node.MomentRight.With(_found) is HandFormula right ? -right : null,
        ];
        HandFormula[] terms = [.. parts.OfType<HandFormula>()];
        return _writer.Find(terms.Length == 1 ? terms[0] : HandFormula.Total(terms, HandUnit.OfMoment), name);
    }

    private void Movement(ThreeMomentNode node, HandNumber scaled)
    {
        HandFormula movement = (HandFormula)scaled / _group.Comparison;
        if (node.IsHeldAcross)
        {
            _writer.Say(new HandRemark.SpringMoves(node.Support!.Value, node.Settlement is not null));
            movement = (HandFormula)_beam.Vertical[node.Support.Value]! / node.Stiffness!;
            movement = node.Settlement is HandNumber settled ? movement + settled : movement;
        }

        _writer.Find(movement, node.Name(HandRole.NodeMovement));
    }
}
