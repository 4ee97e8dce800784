using System.Diagnostics;
using FieldCheck.Mechanics.Checks;

namespace FieldCheck.Sheet.Stated;

/// <summary>The words for what a stated figure comes to; everywhere the same.</summary>
public static class VerdictWords
{
    /// <summary>The word, as "LOW".</summary>
    /// <param name="verdict">The verdict.</param>
    public static string Of(ReactionVerdict verdict) => verdict switch
    {
        ReactionVerdict.Agrees => "AGREES",
        ReactionVerdict.Low => "LOW",
        ReactionVerdict.High => "HIGH",
        ReactionVerdict.WithinBand => "WITHIN BAND",
        ReactionVerdict.NotJudged => "NOT JUDGED",
        _ => throw new UnreachableException(),
    };

    /// <summary>The word with what it means for the support, as "LOW (unsafe side)"; of a stated least push HIGH is unsafe.</summary>
    /// <param name="figure">The figure.</param>
    public static string WithSide(StatedFigure figure)
    {
        ArgumentNullException.ThrowIfNull(figure);
        string side = IsTooMuchPush(figure) ? " (unsafe side)"
            : figure.Verdict != ReactionVerdict.Low ? ""
            : figure.Comparison?.IsWrongWay == true ? " (wrong way)"
            : " (unsafe side)";
        return Of(figure.Verdict) + side;
    }

    /// <summary>
    /// Whether a stated least push is more than what is found: what holds the beam down is chosen by it, so that this is the unsafe
    /// side.
    /// </summary>
    /// <param name="figure">The figure.</param>
    internal static bool IsTooMuchPush(StatedFigure figure) =>
        figure is { Verdict: ReactionVerdict.High, Against.Extreme: "min", Stated: > 0 }
            && figure.Component == ReactionComponent.Vertical;
}
