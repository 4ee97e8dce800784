using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Strength;

/// <summary>What section modulus a check would need, the area and all else as they are.</summary>
internal static class NeededModulus
{
    private const int MostSteps = 100;

    private const double Accuracy = 1e-12;

    /// <summary>The modulus that plain bending needs; null where it is not known.</summary>
    internal static ModulusNeed? OfBending(StrengthProblem problem, SectionCheck check)
    {
        Section? section = problem.Members[check.Span ?? 0].Section;
        bool isPlastic = IsPlastic(check.Unit, check.Terms);
        return (isPlastic ? section?.PlasticModulus : section?.SectionModulus) * check.Utilisation is double needed
            ? new ModulusNeed(check.Kind, needed, isPlastic)
            : null;
    }

    /// <summary>The modulus that bending with a force along needs; infinite where the force alone is too much.</summary>
    internal static ModulusNeed? OfSum(StrengthProblem problem, SectionCheck check, BeamDemands demands)
    {
        BasisDemands own = demands.Of(check.Basis);
        MemberSpans? of = MemberSpans.Of(problem.Members)
            .FirstOrDefault(one => one.Spans.Contains(check.Span ?? 0));
        if (of?.Member.Section is not Section section || own.Obstacle is not null)
        {
            return null;
        }

        MemberDemands member = new(own, of.Spans);
        return check.Unit == CheckUnit.Stress ? OfStress(section, check, member) : OfRule(problem, of.Member, check, member);
    }

    private static ModulusNeed? OfStress(Section section, SectionCheck check, MemberDemands member) =>
        (section.SectionModulus, section.Area, check.Limit) is (double modulus, double area, double limit)
            ? new ModulusNeed(
                check.Kind, modulus * Times(member, 1 / (area * limit), 1 / (area * limit), 1 / (modulus * limit)), false)
            : null;

    private static ModulusNeed? OfRule(StrengthProblem problem, Member of, SectionCheck check, MemberDemands member)
    {
        IStrengthRule? rule = StrengthRule.Of(problem.Rules);
        Resistance? bending = rule?.Of(of, member.Actions).FirstOrDefault(one => one.Kind == CheckKind.Bending);
        if (bending?.Limit is not double limit)
        {
            return null;
        }

        bool isPlastic = IsPlastic(bending.Unit, bending.Terms);
        return (isPlastic ? of.Section?.PlasticModulus : of.Section?.SectionModulus) is double modulus
            ? new ModulusNeed(
                check.Kind,
                modulus * Times(
                    member, Per(rule!.Axial(of, isTension: true)), Per(rule.Axial(of, isTension: false)), bending.PerAction / limit),
                isPlastic)
            : null;
    }

    /// <summary>
    /// So many times the modulus brings the greatest sum to one. It is a greatest of sums that are linear in one over the
    /// modulus, so that steps along its tangent come down on it from the far side.
    /// </summary>
    private static double Times(MemberDemands member, double perTension, double perCompression, double perMoment)
    {
        double share = 1;
        for (int step = 0; step < MostSteps; step++)
        {
            CombinedDemand sum = CombinedDemand.Of(member, perTension, perCompression, perMoment * share);
            double moment = perMoment * sum.Moment;
            double axial = sum.Sum.Value - share * moment;
            if (axial >= 1)
            {
                return double.PositiveInfinity;
            }

            double next = moment > 0 ? (1 - axial) / moment : 4 * share;
            if (Math.Abs(next - share) <= Accuracy * share)
            {
                return 1 / next;
            }

            share = next;
        }

        return 1 / share;
    }

    private static double Per(Resistance? resistance) => resistance?.Limit is double limit ? resistance.PerAction / limit : 0;

    private static bool IsPlastic(CheckUnit unit, ImmutableArray<CheckTerm> terms) =>
        unit == CheckUnit.Moment && terms.Any(term => term.Symbol == CheckSymbol.PlasticModulus);
}
