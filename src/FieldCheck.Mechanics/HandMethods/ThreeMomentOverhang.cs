namespace FieldCheck.Mechanics.HandMethods;

/// <summary>What acts beyond the outermost nodes: statics alone gives the moment that it brings to them.</summary>
/// <param name="writer">Takes the lines.</param>
internal sealed class ThreeMomentOverhang(HandWriter writer)
{
    private readonly List<Force> _forces = [];
    private readonly List<Couple> _couples = [];

    /// <summary>A force across.</summary>
    /// <param name="Actor">What it comes from.</param>
    /// <param name="Down">Its size, positive down.</param>
    /// <param name="Place">Where it acts.</param>
    internal sealed record Force(HandActor Actor, HandFormula Down, HandNumber Place);

    /// <summary>A couple.</summary>
    /// <param name="Actor">What it comes from.</param>
    /// <param name="Turn">Its size, positive counter-clockwise.</param>
    /// <param name="Place">Where it acts.</param>
    internal sealed record Couple(HandActor Actor, HandFormula Turn, HandNumber Place);

    internal void Add(Force force) => _forces.Add(force);

    internal void Add(Couple couple) => _couples.Add(couple);

    /// <summary>Writes the moment over an outermost node: force times arm, sagging positive.</summary>
    /// <returns>The moment just outside the node; null: nothing acts beyond it.</returns>
    internal HandNumber? Moment(ThreeMomentNode node, bool isLeft)
    {
        bool IsBeyond(HandNumber place) =>
            isLeft ? place.Value < node.Place.Value : place.Value > node.Place.Value;
        (HandActor Actor, HandFormula Moment)[] parts =
        [
            .. _forces.Where(force => IsBeyond(force.Place)).Select(force => (force.Actor, Moment(force, node))),
            .. _couples.Where(couple => IsBeyond(couple.Place))
                .Select(couple => (couple.Actor, isLeft ? -couple.Turn : couple.Turn)),
        ];
        if (parts.Length == 0)
        {
            return null;
        }

        writer.Say(new HandRemark.OverhangMoment(node.Index, isLeft));
        bool jumps = node.IsClamped || node.TurnStiffness is not null || node.Couple is not null;
        HandName name = node.Name(
            !jumps ? HandRole.SupportMoment : isLeft ? HandRole.MomentLeft : HandRole.MomentRight);
        return parts.Length == 1
            ? writer.Find(parts[0].Moment, name)
            : writer.Find(
                HandFormula.Total(
                    parts.Select(part => (HandFormula)writer.Find(part.Moment, part.Actor)), HandUnit.OfMoment),
                name);
    }

    private static HandFormula Moment(Force force, ThreeMomentNode node)
    {
        HandNumber arm = HandNumber.Distance(force.Place, node.Place);
        return force.Down is HandFormula.Minus up ? up.Formula * arm : -(force.Down * arm);
    }
}
