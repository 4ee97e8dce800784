using System.Collections.Immutable;
using FieldCheck.Mechanics.Strength;

namespace FieldCheck.Sheet.Strength;

/// <summary>All that a beam is held against, and what is not looked at.</summary>
/// <param name="All">Every check asked for, in order of kind, span and support; may be empty.</param>
/// <param name="NotChecked">What was not checked, each in a few words; never empty where there are checks.</param>
public sealed record BeamChecks(ImmutableArray<BeamCheck> All, ImmutableArray<string> NotChecked)
{
    /// <summary>No checks: nothing is asked for, or the beam does not stand.</summary>
    public static BeamChecks None { get; } = new([], []);

    /// <summary>The check that is used up most; null where none is judged.</summary>
    public BeamCheck? Governing => All.Where(check => check.Figures.Reason is null).MaxBy(check => check.Figures.Utilisation);

    /// <summary>OVER where one is over, else NOT JUDGED where one is not judged, else OK; null without checks.</summary>
    public CheckVerdict? Verdict => All.IsEmpty ? null
        : All.Any(check => check.Figures.Verdict == CheckVerdict.Over) ? CheckVerdict.Over
        : All.Any(check => check.Figures.Verdict == CheckVerdict.NotJudged) ? CheckVerdict.NotJudged
        : CheckVerdict.Ok;
}
