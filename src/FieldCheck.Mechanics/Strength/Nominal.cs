using System.Collections.Immutable;

namespace FieldCheck.Mechanics.Strength;

/// <summary>A nominal strength of AISC 360 with the work to it, before its safety or resistance factor.</summary>
/// <param name="Clause">The section of the standard that it comes from.</param>
/// <param name="Value">The strength [N or N·m]; null: not judged.</param>
/// <param name="Terms">The work.</param>
internal sealed record Nominal(CheckClause Clause, double? Value, ImmutableArray<CheckTerm> Terms)
{
    /// <summary>Why there is no value.</summary>
    internal NotJudgedReason? Reason { get; init; }

    /// <summary>Length of bearing [m] that would carry a nominal push [N]; null where it plays no part.</summary>
    internal Func<double, double>? LengthFor { get; init; }

    /// <summary>Its safety and resistance factors.</summary>
    internal AiscFactors Factors { get; init; } = AiscFactors.Usual;

    internal static Nominal Unknown(CheckClause clause, NotJudgedReason reason, params ImmutableArray<CheckTerm> terms) =>
        new(clause, null, terms) { Reason = reason };

    /// <summary>The one that limits; of equal ones the first.</summary>
    internal static Nominal Least(params ReadOnlySpan<Nominal> strengths)
    {
        Nominal least = strengths[0];
        foreach (Nominal strength in strengths)
        {
            if (least.Reason is null && (strength.Reason is not null || strength.Value < least.Value))
            {
                least = strength;
            }
        }

        return least;
    }
}
