using System.Collections.Immutable;

namespace FieldCheck.Mechanics.HandMethods;

/// <content>What the three-moment method says.</content>
public abstract partial record HandRemark
{
    /// <summary>The three-moment row in general.</summary>
    /// <param name="HasRatios">True: sections differ, lengths are multiplied with their rigidity ratios.</param>
    /// <param name="HasMovements">True: nodes move.</param>
    /// <param name="HasShear">True: shear deforms the beam.</param>
    public sealed record ThreeMomentRow(bool HasRatios, bool HasMovements, bool HasShear) : HandRemark;

    /// <summary>A row follows: the bays at both sides of a node turn there alike.</summary>
    /// <param name="Left">The node to its left.</param>
    /// <param name="Node">The node.</param>
    /// <param name="Right">The node to its right.</param>
    public sealed record TurnsAgree(int Left, int Node, int Right) : HandRemark;

    /// <summary>A row follows: the end of a bay cannot turn, or turns as imposed.</summary>
    /// <param name="Node">The node that is held.</param>
    /// <param name="Other">The node at the bay's other end.</param>
    /// <param name="AtRight">True: the node is the bay's right end.</param>
    /// <param name="Imposed">The turn imposed, counter-clockwise, as a plain number; null: none.</param>
    public sealed record TurnIsHeld(int Node, int Other, bool AtRight, HandNumber? Imposed) : HandRemark;

    /// <summary>A row follows: the turn at a node is the couple of its spring over its stiffness.</summary>
    /// <param name="Node">The node.</param>
    /// <param name="Other">The node at the other end of the bay whose turn is taken.</param>
    /// <param name="AtRight">True: the node is that bay's right end.</param>
    /// <param name="Stiffness">Moment for a turn of one.</param>
    /// <param name="HasCouple">True: a couple loads the beam there besides.</param>
    public sealed record TurnSpring(int Node, int Other, bool AtRight, HandNumber Stiffness, bool HasCouple)
        : HandRemark;

    /// <summary>A row follows: the forces at a node that can move are in balance.</summary>
    /// <param name="Node">The node.</param>
    /// <param name="HasSpring">True: a spring carries it.</param>
    /// <param name="Settles">True: that spring's foot settles.</param>
    public sealed record NodeBalance(int Node, bool HasSpring, bool Settles) : HandRemark;

    /// <summary>A support settles: its movement is known, or that of its spring's foot.</summary>
    /// <param name="Node">The node.</param>
    /// <param name="HasSpring">True: the foot of a spring.</param>
    public sealed record NodeSettles(int Node, bool HasSpring) : HandRemark;

    /// <summary>Load terms of a bay follow.</summary>
    /// <param name="Left">The node at its left.</param>
    /// <param name="Right">The node at its right.</param>
    /// <param name="AtRight">True: of its right end.</param>
    /// <param name="Rules">Rules that no load term before has used.</param>
    public sealed record LoadTermOf(int Left, int Right, bool AtRight, ImmutableArray<HandLoadTerm> Rules)
        : HandRemark;

    /// <summary>The bay's loads are carried to its ends as if it were a simple span.</summary>
    /// <param name="Left">The node at its left.</param>
    /// <param name="Right">The node at its right.</param>
    public sealed record SimpleSpan(int Left, int Right) : HandRemark;

    /// <summary>The moment over an outermost node follows from what overhangs.</summary>
    /// <param name="Node">The node.</param>
    /// <param name="IsLeft">True: the overhang is on its left.</param>
    public sealed record OverhangMoment(int Node, bool IsLeft) : HandRemark;

    /// <summary>A hinge carries no moment; its movement takes the moment's place among the unknowns.</summary>
    /// <param name="Hinge">Index of the hinge.</param>
    /// <param name="IsHeld">True: a support holds it across, and it does not move.</param>
    /// <param name="HasCouples">True: couples load the beam beside it, and are the moments there.</param>
    public sealed record HingeHasNoMoment(int Hinge, bool IsHeld, bool HasCouples) : HandRemark;

    /// <summary>Forces at the ends of bays: of simple spans, and what the end moments add.</summary>
    /// <param name="HasCouples">True: a support holds against turning.</param>
    /// <param name="HasHinges">True: a force in a hinge is found.</param>
    public sealed record EndForces(bool HasCouples, bool HasHinges) : HandRemark;

    /// <summary>At outermost nodes nothing holds the beam against turning and nothing overhangs: the moment is nothing.</summary>
    /// <param name="Nodes">The nodes.</param>
    public sealed record EndsTurnFreely(ImmutableArray<int> Nodes) : HandRemark;

    /// <summary>A couple acts over a node: the moment falls there by the couple, counter-clockwise.</summary>
    /// <param name="Node">The node.</param>
    public sealed record MomentJumps(int Node) : HandRemark;

    /// <summary>A sloped roller acts as a spring across, because the beam stretches.</summary>
    /// <param name="Support">The roller.</param>
    /// <param name="Pin">The support that holds along.</param>
    /// <param name="HasShift">True: loads along the beam stretch it too.</param>
    public sealed record SlopedRoller(int Support, int Pin, bool HasShift) : HandRemark;

    /// <summary>The movement of a spring support is its reaction over its stiffness.</summary>
    /// <param name="Support">The support.</param>
    /// <param name="Settles">True: the spring's foot settles too.</param>
    public sealed record SpringMoves(int Support, bool Settles) : HandRemark;
}
