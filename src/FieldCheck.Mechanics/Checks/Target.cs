using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Checks;

/// <summary>A figure that adds up over loads: a part of a reaction, or a quantity on one side of a place.</summary>
internal readonly record struct Target
{
    /// <summary>Index of the support; -1 for a place.</summary>
    internal int Support { get; private init; }

    internal ReactionPart Part { get; private init; }

    /// <summary>Distance from the left end [m].</summary>
    internal double Position { get; private init; }

    internal Side Side { get; private init; }

    internal Curve Curve { get; private init; }

    internal bool IsReaction => Support >= 0;

    internal static Target Of(int support, ReactionPart part) => new() { Support = support, Part = part };

    internal static Target At(double position, Side side, Curve curve) =>
        new() { Support = -1, Position = position, Side = side, Curve = curve };

    internal double In(BeamResponse response)
    {
        if (IsReaction)
        {
            Reaction reaction = response.Reactions[Support];
            return Part switch
            {
                ReactionPart.Horizontal => reaction.Horizontal,
                ReactionPart.Vertical => reaction.Vertical,
                _ => reaction.Moment,
            };
        }

        (SectionState left, SectionState right) = response.At(Position);
        SectionState state = Side == Side.Left ? left : right;
        return Curve switch
        {
            Curve.Axial => state.Axial,
            Curve.Shear => state.Shear,
            Curve.Moment => state.Moment,
            Curve.Slope => state.Slope,
            _ => state.Deflection,
        };
    }
}
