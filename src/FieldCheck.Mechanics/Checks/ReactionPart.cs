namespace FieldCheck.Mechanics.Checks;

/// <summary>One part of a reaction.</summary>
public enum ReactionPart
{
    /// <summary>Force across the beam, positive up.</summary>
    Vertical,

    /// <summary>Force along the beam, positive to the right.</summary>
    Horizontal,

    /// <summary>Moment, positive counter-clockwise.</summary>
    Moment,
}
