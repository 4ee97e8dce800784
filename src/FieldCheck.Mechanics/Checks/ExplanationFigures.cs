using System.Diagnostics;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Checks;

/// <summary>Takes the figures that are stated out of the reactions of all supports.</summary>
internal static class ExplanationFigures
{
    /// <summary>The value of one part of a reaction [N or N·m].</summary>
    internal static double Of(Reaction reaction, ReactionPart part) => part switch
    {
        ReactionPart.Vertical => reaction.Vertical,
        ReactionPart.Horizontal => reaction.Horizontal,
        ReactionPart.Moment => reaction.Moment,
        _ => throw new UnreachableException(),
    };

    /// <summary>The figures in the order in which they are stated [N or N·m].</summary>
    internal static double[] Of(StatedSet stated, ReadOnlySpan<Reaction> reactions)
    {
        double[] figures = new double[stated.Figures.Length];
        for (int i = 0; i < figures.Length; i++)
        {
            ReactionFigure figure = stated.Figures[i];
            figures[i] = Of(reactions[figure.Support], figure.Part);
        }

        return figures;
    }
}
