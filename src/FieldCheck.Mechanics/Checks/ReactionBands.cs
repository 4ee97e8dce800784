namespace FieldCheck.Mechanics.Checks;

/// <summary>The bands of one support's reaction.</summary>
/// <param name="Horizontal">Force along the beam [N], positive to the right.</param>
/// <param name="Vertical">Force across the beam [N], positive up.</param>
/// <param name="Moment">Moment [N·m], positive counter-clockwise.</param>
public sealed record ReactionBands(Band Horizontal, Band Vertical, Band Moment)
{
    /// <summary>One of the three.</summary>
    /// <param name="component">Which.</param>
    public Band Of(ReactionPart component) => component switch
    {
        ReactionPart.Horizontal => Horizontal,
        ReactionPart.Vertical => Vertical,
        _ => Moment,
    };
}
