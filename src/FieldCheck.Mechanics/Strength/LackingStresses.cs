using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Strength;

/// <summary>Spans without a stress that another span of the beam has: what is asked of one is asked of all.</summary>
internal static class LackingStresses
{
    private static readonly ImmutableArray<CheckKind> Kinds = [CheckKind.Bending, CheckKind.Shear];

    /// <summary>One check for each span and kind, never judged; under the basis of the stresses that are given.</summary>
    /// <param name="members">The members of the beam.</param>
    /// <param name="demands">What the combinations of one basis ask.</param>
    internal static IEnumerable<SectionCheck> Of(ImmutableArray<MemberSpans> members, BasisDemands demands) =>
        from kind in Kinds
        where BasisOf(kind, members) == demands.Basis
        from of in members
        where Given(of.Member.Material?.Allowable, kind) is null && Given(of.Member.Material?.Design, kind) is null
        from span in of.Spans
        select Lacking(kind, of.Member, span, demands);

    private static CombinationBasis? BasisOf(CheckKind kind, ImmutableArray<MemberSpans> members) =>
        members.Any(one => Given(one.Member.Material?.Allowable, kind) is not null) ? CombinationBasis.Service
        : members.Any(one => Given(one.Member.Material?.Design, kind) is not null) ? CombinationBasis.Factored
        : null;

    private static double? Given(Strengths? strengths, CheckKind kind) =>
        kind == CheckKind.Shear ? strengths?.Shear : strengths?.Bending;

    private static SectionCheck Lacking(CheckKind kind, Member member, int span, BasisDemands demands)
    {
        SectionCheck check = new()
        {
            Kind = kind,
            Basis = demands.Basis,
            Clause = CheckClause.Given,
            Unit = CheckUnit.Stress,
            Span = span,
            Reason = member.Material is null ? NotJudgedReason.NoMaterial : NotJudgedReason.NoLimit,
        };
        if (demands.Obstacle is not null)
        {
            return check;
        }

        MemberDemands own = new(demands, [span]);
        return kind == CheckKind.Shear
            ? own.Shear.Place(check) with { Terms = [new CheckTerm(CheckSymbol.Shear, own.Shear.Value, CheckUnit.Force)] }
            : own.Moment.Place(check) with { Terms = [new CheckTerm(CheckSymbol.Moment, own.Moment.Value, CheckUnit.Moment)] };
    }
}
