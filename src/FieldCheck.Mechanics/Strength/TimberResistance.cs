using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Strength;

/// <summary>What both rules on timber have in common: a stress, held against a strength times its factors.</summary>
internal static class TimberResistance
{
    /// <summary>Bending, without lateral stability.</summary>
    internal static Resistance Bending(
        Member member, TimberBasis basis, CheckClause clause, Func<Section, Material, FactorProduct> factors)
    {
        Resistance bare = Stress(CheckKind.Bending, clause, 1 / member.Section?.SectionModulus, CheckFormula.EdgeStress);
        return WhyNot(member, basis) is NotJudgedReason reason ? bare with { Reason = reason }
            : member.Section!.SectionModulus is double modulus ? bare.Limited(
                member.Material!.Timber!.Bending,
                factors(member.Section, member.Material),
                new CheckTerm(CheckSymbol.SectionModulus, modulus, CheckUnit.SectionModulus))
            : bare with { Reason = NotJudgedReason.NoSectionModulus };
    }

    /// <summary>Shear.</summary>
    /// <param name="member">The member.</param>
    /// <param name="basis">What its strengths must be.</param>
    /// <param name="clause">The rule.</param>
    /// <param name="factors">The factors on the strength.</param>
    /// <param name="share">Share of the width that cracks leave [–]; null: cracks are inside the strength.</param>
    internal static Resistance Shear(
        Member member,
        TimberBasis basis,
        CheckClause clause,
        Func<Section, Material, FactorProduct> factors,
        double? share = null)
    {
        Resistance bare = Stress(
            CheckKind.Shear,
            clause,
            1 / ((share ?? 1) * member.Section?.PeakShearArea),
            share is null ? CheckFormula.ShearStress : CheckFormula.CrackedShearStress);
        return WhyNot(member, basis) is NotJudgedReason reason ? bare with { Reason = reason }
            : member.Section!.PeakShearArea is double area ? bare.Limited(
                member.Material!.Timber!.Shear,
                factors(member.Section, member.Material),
                [
                    new CheckTerm(CheckSymbol.PeakShearArea, area, CheckUnit.Area),
                    .. share is double left
                        ? new[] { new CheckTerm(CheckSymbol.CrackShare, left, CheckUnit.Number) }
                        : [],
                ])
            : bare with { Reason = NotJudgedReason.NoShape };
    }

    /// <summary>Tension along the grain, as a force; null where the grade has no such strength.</summary>
    internal static Resistance? Tension(
        Member member, TimberBasis basis, CheckClause clause, Func<Section, Material, FactorProduct> factors)
    {
        Resistance bare = new() { Kind = CheckKind.BendingAndAxial, Clause = clause, Unit = CheckUnit.Force };
        if (WhyNot(member, basis) is NotJudgedReason reason)
        {
            return bare with { Reason = reason };
        }

        if (member.Material!.Timber!.Tension is not double strength)
        {
            return null;
        }

        return member.Section!.Area is not double area ? bare with { Reason = NotJudgedReason.NoArea }
            : Force(
                bare.Limited(strength, factors(member.Section, member.Material), new CheckTerm(CheckSymbol.Area, area, CheckUnit.Area)),
                area);
    }

    private static Resistance Force(Resistance stress, double area) => stress with
    {
        Limit = stress.Limit * area,
        LimitBy = CheckFormula.TensionForce,
        Terms =
        [
            .. stress.Terms,
            .. stress.Limit is double strength
                ? new[] { new CheckTerm(CheckSymbol.TensionStrength, strength, CheckUnit.Stress) }
                : [],
        ],
    };

    /// <summary>Bending limited by sideways buckling; null where it cannot happen: held, or not deeper than wide.</summary>
    /// <param name="member">The member.</param>
    /// <param name="bending">Its bending without that.</param>
    /// <param name="clause">The rule.</param>
    /// <param name="limited">The check with its limit, from the check without, the outline and the unbraced length [m].</param>
    internal static Resistance? Lateral(
        Member member, Resistance bending, CheckClause clause, Func<Resistance, TimberOutline, double, Resistance> limited)
    {
        if (member.Section is null
            || member.Lateral is LateralSupport.Braced
            || !TimberOutline.CanBuckle(member.Section))
        {
            return null;
        }

        Resistance bare = bending with { Kind = CheckKind.LateralStability, Clause = clause, Limit = null };
        return bending.Reason is not null ? bare
            : TimberOutline.Of(member.Section) is not TimberOutline outline
                ? bare with { Reason = NotJudgedReason.NoShape }
            : member.Lateral is not LateralSupport.Unbraced unbraced
                ? bare with { Reason = NotJudgedReason.NoLateralSupport }
            : limited(bare, outline, unbraced.Length);
    }

    /// <summary>A check of a stress; its demand is so much for each unit of the action, where that is known.</summary>
    internal static Resistance Stress(CheckKind kind, CheckClause clause, double? perAction, CheckFormula? by = null) => new()
    {
        Kind = kind,
        Clause = clause,
        Unit = CheckUnit.Stress,
        PerAction = perAction ?? 1,
        DemandBy = by,
    };

    /// <summary>The check with its limit, or with the factor that is missing.</summary>
    internal static Resistance Limited(
        this Resistance bare, double strength, FactorProduct factors, params ImmutableArray<CheckTerm> terms) =>
        bare with
        {
            Limit = strength * factors.Value,
            Reason = factors.Missing is null ? null : NotJudgedReason.NoFactor,
            Missing = factors.Missing,
            Factors = factors.Factors,
            Terms = [new CheckTerm(CheckSymbol.GradeStrength, strength, CheckUnit.Stress), .. terms],
        };

    /// <summary>The check without its limit; a missing factor is told before any other reason.</summary>
    internal static Resistance Without(this Resistance bare, NotJudgedReason reason) =>
        bare with { Limit = null, Reason = bare.Reason ?? reason };

    /// <summary>Why no rule on timber can speak of a member; null: one can.</summary>
    internal static NotJudgedReason? WhyNot(Member member, TimberBasis basis) =>
        member.Section is null ? NotJudgedReason.NoSection
        : !TimberOutline.IsSolid(member.Section) ? NotJudgedReason.ShapeNotInRules
        : member.Material is null ? NotJudgedReason.NoMaterial
        : member.Material.Timber?.Basis != basis ? NotJudgedReason.NoStrength
        : member.Material.Timber.Sizes?.Holds(member.Section) == false ? NotJudgedReason.GradeOfOtherSize
        : null;
}
