using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Strength;

/// <summary>One thing that a beam is held against.</summary>
public sealed record SectionCheck
{
    /// <summary>A demand that meets its limit but for this share of it is within it [–].</summary>
    private const double Rounding = 1e-9;

    /// <summary>What it is about.</summary>
    public required CheckKind Kind { get; init; }

    /// <summary>Basis of the combinations that it looks at.</summary>
    public required CombinationBasis Basis { get; init; }

    /// <summary>The rule that the limit comes from.</summary>
    public required CheckClause Clause { get; init; }

    /// <summary>
    /// Index of the span; null where it speaks of no single span. Of a bearing: the span of the stick that bears, or null of
    /// what it bears on.
    /// </summary>
    public int? Span { get; init; }

    /// <summary>
    /// Index of the bay among <see cref="Bays.Between"/>; −1 for the left overhang, their number for the right one; null
    /// where it speaks of none.
    /// </summary>
    public int? Bay { get; init; }

    /// <summary>
    /// Where several bays are looked at as one, past supports that give way or let go: the last of them, an overhang as in
    /// <see cref="Bay"/>; else null.
    /// </summary>
    public int? LastBay { get; init; }

    /// <summary>Index of the support in the model; null where it speaks of none.</summary>
    public int? Support { get; init; }

    /// <summary>Where the demand stands [m from the left end]; null where it is not known.</summary>
    public double? Position { get; init; }

    /// <summary>The situation that governs; null where none does, or for one case alone.</summary>
    public Situation? Situation { get; init; }

    /// <summary>Index of the case that it looks at alone; null: at combinations.</summary>
    public int? Case { get; init; }

    /// <summary>What demand and limit are.</summary>
    public required CheckUnit Unit { get; init; }

    /// <summary>The demand, never negative [N/m², N, N·m, m or –: see <see cref="Unit"/>]; null: not known.</summary>
    public double? Demand { get; init; }

    /// <summary>The limit [N/m², N, N·m, m or –: see <see cref="Unit"/>]; null: not known.</summary>
    public double? Limit { get; init; }

    /// <summary>How the demand comes from <see cref="Terms"/>; null where it is one of them, or found along the beam.</summary>
    public CheckFormula? DemandBy { get; init; }

    /// <summary>How the limit comes from <see cref="Terms"/>; null where it is given, or a strength times <see cref="Factors"/>.</summary>
    public CheckFormula? LimitBy { get; init; }

    /// <summary>Demand over limit [–]; null where one of them is not known.</summary>
    public double? Utilisation => Demand / Limit;

    /// <summary>Why it is not judged; null where it is.</summary>
    public NotJudgedReason? Reason { get; init; }

    /// <summary>The factor that is missing, where that is the reason.</summary>
    public FactorKind? Missing { get; init; }

    /// <summary>How well the demand is known.</summary>
    public EnvelopeCertainty Certainty { get; init; }

    /// <summary>True: the demand is put together from the worst of several situations, and may be somewhat too great.</summary>
    public bool IsBound { get; init; }

    /// <summary>Every number on the way, in the order of the work.</summary>
    public ImmutableArray<CheckTerm> Terms { get; init; } = [];

    /// <summary>The factors that a strength of timber was multiplied by.</summary>
    public ImmutableArray<StrengthFactor> Factors { get; init; } = [];

    /// <summary>What it comes to; a demand that meets its limit but for rounding is within it.</summary>
    public CheckVerdict Verdict => Reason is not null || Utilisation is not double used ? CheckVerdict.NotJudged
        : IsWithin(used) ? CheckVerdict.Ok
        : CheckVerdict.Over;

    /// <summary>Whether a demand is within its limit: one rule for every verdict and every search.</summary>
    /// <param name="utilisation">Demand over limit [–].</param>
    public static bool IsWithin(double utilisation) => utilisation <= 1 + Rounding;
}
