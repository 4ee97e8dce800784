namespace FieldCheck.Mechanics.Strength;

/// <summary>Finds the rule that a choice of rules means.</summary>
internal static class StrengthRule
{
    /// <returns>The rule; null: only stresses given outright are judged.</returns>
    internal static IStrengthRule? Of(StrengthRules rules) => rules switch
    {
        StrengthRules.ElasticAllowable => new ElasticAllowable(),
        StrengthRules.Aisc360Asd => new Aisc360(isLrfd: false),
        StrengthRules.Aisc360Lrfd => new Aisc360(isLrfd: true),
        StrengthRules.En1993 => new En1993(),
        StrengthRules.Nds => new Nds(),
        StrengthRules.En1995 => new En1995(),
        _ => null,
    };
}
