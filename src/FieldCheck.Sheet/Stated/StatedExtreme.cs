using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;

namespace FieldCheck.Sheet.Stated;

/// <summary>Which end of an envelope a figure states.</summary>
/// <param name="Support">The support, as an index into those of the model.</param>
/// <param name="Component">Which component.</param>
/// <param name="IsMax">True: the algebraic greatest; false: the least.</param>
internal sealed record StatedExtreme(int Support, ReactionComponent Component, bool IsMax)
{
    /// <summary>That end of an envelope.</summary>
    internal Governed Of(ImmutableArray<ReactionEnvelope> reactions)
    {
        ReactionEnvelope reaction = reactions[Support];
        GovernedRange range = Component == ReactionComponent.Vertical ? reaction.Vertical
            : Component == ReactionComponent.Horizontal ? reaction.Horizontal
            : reaction.Moment;
        return IsMax ? range.Max : range.Min;
    }
}
