using System.Collections.Immutable;

namespace FieldCheck.Mechanics.Strength;

/// <summary>Bending, shear, lateral stability and the force along a member by the rules chosen.</summary>
internal static class RuleChecks
{
    /// <summary>The checks of one member.</summary>
    internal static IEnumerable<SectionCheck> Of(MemberSpans of, IStrengthRule rule, BasisDemands demands)
    {
        if (demands.Obstacle is NotJudgedReason obstacle)
        {
            return rule.Of(of.Member, new MemberActions(0, 0, 0, 0, 0))
                .Where(one => one.Kind is CheckKind.Bending or CheckKind.Shear)
                .Select(one => Blank(one, rule) with { Span = of.Spans[0], Reason = obstacle, Missing = null });
        }

        MemberDemands member = new(demands, of.Spans);
        ImmutableArray<Resistance> resistances = rule.Of(of.Member, member.Actions);
        return
        [
            .. resistances.Select(one => Judge(one, rule, member)),
            .. member.HasAxial ? [RuleSum.Of(of.Member, resistances, rule, member)] : Array.Empty<SectionCheck>(),
        ];
    }

    /// <summary>A check of a resistance, without figures of what it must carry.</summary>
    internal static SectionCheck Blank(Resistance resistance, IStrengthRule rule) => new()
    {
        Kind = resistance.Kind,
        Basis = rule.Basis,
        Clause = resistance.Clause,
        Unit = resistance.Unit,
        Reason = resistance.Reason,
        Missing = resistance.Missing,
        DemandBy = resistance.DemandBy,
        LimitBy = resistance.LimitBy,
        Terms = resistance.Terms,
        Factors = resistance.Factors,
    };

    private static SectionCheck Judge(Resistance resistance, IStrengthRule rule, MemberDemands member)
    {
        (Demand demand, CheckTerm action) = resistance.Kind == CheckKind.Shear
            ? (member.Shear, new CheckTerm(CheckSymbol.Shear, member.Shear.Value, CheckUnit.Force))
            : (member.Moment, new CheckTerm(CheckSymbol.Moment, member.Moment.Value, CheckUnit.Moment));
        SectionCheck check = Blank(resistance, rule);
        check = check with
        {
            Terms = check.Terms.Any(term => term.Symbol == action.Symbol) ? check.Terms : [action, .. check.Terms],
        };
        return resistance.Limit is double limit && resistance.Reason is null
            ? demand.Judge(check, limit, resistance.PerAction)
            : demand.Place(check) with { Reason = resistance.Reason ?? NotJudgedReason.NoLimit };
    }
}
