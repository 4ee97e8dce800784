using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Strength;

/// <summary>What a rule lets one member carry in one respect, and how that is worked out.</summary>
internal sealed record Resistance
{
    internal required CheckKind Kind { get; init; }

    internal required CheckClause Clause { get; init; }

    /// <summary>Unit of the limit, and of the demand once it is made from the action.</summary>
    internal required CheckUnit Unit { get; init; }

    /// <summary>The limit; null: not judged.</summary>
    internal double? Limit { get; init; }

    /// <summary>How the limit comes from <see cref="Terms"/>; null where it is given, or the product of its factors.</summary>
    internal CheckFormula? LimitBy { get; init; }

    /// <summary>How the demand comes from the action and <see cref="Terms"/>; null where it is the action.</summary>
    internal CheckFormula? DemandBy { get; init; }

    /// <summary>Demand per unit of the action, as 1/S where the limit is a stress; the action is |M| or |V|.</summary>
    internal double PerAction { get; init; } = 1;

    internal NotJudgedReason? Reason { get; init; }

    /// <summary>The factor that is missing, where that is the reason.</summary>
    internal FactorKind? Missing { get; init; }

    /// <summary>Every number on the way to the limit, in the order of the work.</summary>
    internal ImmutableArray<CheckTerm> Terms { get; init; } = [];

    /// <summary>
    /// Length of bearing [m] that would be enough for a push [N], with everything else as it is; null where a rule knows
    /// none.
    /// </summary>
    internal Func<double, double>? LengthFor { get; init; }

    /// <summary>Length of bearing [m] that the rule asks for whatever the push; null: none.</summary>
    internal double? LeastLength { get; init; }

    /// <summary>The factors that a strength of timber was multiplied by, in the order of the rules.</summary>
    internal ImmutableArray<StrengthFactor> Factors { get; init; } = [];
}
