namespace FieldCheck.Mechanics.Envelopes;

/// <summary>A part of a reaction.</summary>
internal enum ReactionComponent
{
    /// <summary>Force along the beam.</summary>
    Horizontal,

    /// <summary>Force across the beam.</summary>
    Vertical,

    /// <summary>Moment.</summary>
    Moment,
}
