namespace FieldCheck.Mechanics.HandMethods;

/// <summary>A place where bays meet: a support, a hinge, a change of section.</summary>
/// <param name="index">Its number, see <see cref="HandPlaces"/>.</param>
/// <param name="place">Where it lies.</param>
internal sealed class ThreeMomentNode(int index, HandNumber place)
{
    internal int Index { get; } = index;

    internal HandNumber Place { get; } = place;

    internal ThreeMomentBay? BayLeft { get; set; }

    internal ThreeMomentBay? BayRight { get; set; }

    /// <summary>Index of the support that holds it; null: none does.</summary>
    internal int? Support { get; init; }

    /// <summary>Index of the hinge here; null: none.</summary>
    internal int? Hinge { get; init; }

    /// <summary>True: a support keeps it from moving across, or resists that.</summary>
    internal bool IsHeldAcross { get; set; }

    /// <summary>True: a support keeps it from turning.</summary>
    internal bool IsClamped { get; init; }

    /// <summary>Turn that the support imposes, counter-clockwise; null: nil.</summary>
    internal HandNumber? ImposedTurn { get; init; }

    /// <summary>Moment for a turn of one; null: no spring resists turning.</summary>
    internal HandNumber? TurnStiffness { get; init; }

    /// <summary>6 times the rigidity of comparison over <see cref="TurnStiffness"/>: a length.</summary>
    internal HandNumber? TurnLength { get; set; }

    /// <summary>Force for a movement of one; null: no spring resists movement across.</summary>
    internal HandNumber? Stiffness { get; set; }

    /// <summary>How far the support settles, down; null: nil.</summary>
    internal HandNumber? Settlement { get; set; }

    /// <summary>The settlement times the rigidity of comparison; null: nil.</summary>
    internal HandNumber? ScaledSettlement { get; set; }

    /// <summary>Loads that stand here, or on what overhangs beyond, positive down.</summary>
    internal List<HandFormula> Down { get; } = [];

    /// <summary>Couples that load the beam here, positive counter-clockwise; null: none.</summary>
    internal HandFormula? Couple { get; set; }

    /// <summary>Bending moment just left of it, sagging.</summary>
    internal HandQuantity MomentLeft { get; set; } = HandQuantity.Nil;

    /// <summary>Bending moment just right of it, sagging.</summary>
    internal HandQuantity MomentRight { get; set; } = HandQuantity.Nil;

    /// <summary>Movement down times the rigidity of comparison.</summary>
    internal HandQuantity Movement { get; set; } = HandQuantity.Nil;

    internal HandName Name(HandRole role) => new(role, Index);
}
