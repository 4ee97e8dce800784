using FieldCheck.Mechanics.Strength;

namespace FieldCheck.Sheet.Strength;

/// <summary>What an answer about other loads or other sections is judged by, and what it leaves out.</summary>
public static class JudgedByWords
{
    /// <summary>What is judged, what is not though it was asked for, and whether strength is; a sentence or two.</summary>
    /// <param name="checks">The checks of the beam; one at least.</param>
    public static string Of(BeamChecks checks)
    {
        ArgumentNullException.ThrowIfNull(checks);
        string[] judged = Kinds(checks, isJudged: true);
        string[] open = Kinds(checks, isJudged: false);
        string by = judged.Length == 0 ? "Judged by: nothing" : $"Judged by: {string.Join(", ", judged)}";
        string strength = IsStrengthJudged(checks) ? ""
            : (judged.Length == 0 ? "" : " only") + "; strength was not judged"
                + (checks.All.Any(check => CheckKindWords.IsOfStrength(check.Figures.Kind)) ? "" : ": no strengths or rules are given");
        return $"{by}{strength}." + (open.Length == 0 ? "" : $" NOT JUDGED: {string.Join(", ", open)}.");
    }

    /// <summary>The same; empty where strength is judged and nothing is NOT JUDGED.</summary>
    /// <param name="checks">The checks of the beam.</param>
    public static string Caveat(BeamChecks checks)
    {
        ArgumentNullException.ThrowIfNull(checks);
        return checks.All.IsEmpty || (IsStrengthJudged(checks) && Kinds(checks, isJudged: false).Length == 0)
            ? ""
            : Of(checks);
    }

    /// <summary>What is not checked at all, in one sentence.</summary>
    /// <param name="checks">The checks of the beam; one at least.</param>
    public static string NotChecked(BeamChecks checks)
    {
        ArgumentNullException.ThrowIfNull(checks);
        return $"Not checked: {string.Join(", ", checks.NotChecked)}.";
    }

    private static bool IsStrengthJudged(BeamChecks checks) => checks.All.Any(
        check => CheckKindWords.IsOfStrength(check.Figures.Kind) && check.Figures.Verdict != CheckVerdict.NotJudged);

    // A kind that is judged of one span and not of another is said with its span.
    private static string[] Kinds(BeamChecks checks, bool isJudged)
    {
        ILookup<bool, string> kinds = checks.All.ToLookup(IsJudged, KindOf);
        HashSet<string> both = [.. kinds[true].Intersect(kinds[false])];
        return
        [
            .. checks.All
                .Where(check => IsJudged(check) == isJudged)
                .Select(check => both.Contains(KindOf(check)) ? check.What : KindOf(check))
                .Distinct(),
        ];
    }

    private static bool IsJudged(BeamCheck check) => check.Figures.Verdict != CheckVerdict.NotJudged;

    private static string KindOf(BeamCheck check) => CheckKindWords.InShort(check.Figures.Kind);
}
