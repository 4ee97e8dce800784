using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Strength;

/// <summary>
/// Bending, shear and the force along a member against stresses given with its material: allowable ones under service
/// combinations, design ones under factored ones, never across.
/// </summary>
internal static class GivenStresses
{
    /// <summary>What of a material's strengths belongs to a basis; null: none is given.</summary>
    internal static Strengths? Of(Material? material, CombinationBasis basis) =>
        basis == CombinationBasis.Service ? material?.Allowable : material?.Design;

    /// <summary>The checks of one member; none where no such strength is given.</summary>
    internal static IEnumerable<SectionCheck> Of(MemberSpans of, BasisDemands demands)
    {
        Strengths? given = Of(of.Member.Material, demands.Basis);
        if (given is null or { Bending: null, Shear: null })
        {
            return [];
        }

        MemberDemands? member = demands.Obstacle is null ? new MemberDemands(demands, of.Spans) : null;
        return
        [
            .. given.Bending is double bending ? Bending(of, demands, member, bending) : [],
            .. given.Shear is double shear ? [Shear(of, demands, member, shear)] : Array.Empty<SectionCheck>(),
        ];
    }

    private static IEnumerable<SectionCheck> Bending(
        MemberSpans of, BasisDemands demands, MemberDemands? member, double allowed)
    {
        Section? section = of.Member.Section;
        SectionCheck check = Blank(CheckKind.Bending, of, demands) with { Limit = allowed };
        if (member is null)
        {
            yield return check with { Reason = demands.Obstacle };
            yield break;
        }

        SectionCheck combined = check with { Kind = CheckKind.BendingAndAxial };
        if (section?.SectionModulus is not double modulus)
        {
            NotJudgedReason missing = section is null ? NotJudgedReason.NoSection : NotJudgedReason.NoSectionModulus;
            yield return member.Moment.Place(member.HasAxial ? combined : check) with { Reason = missing };
            yield break;
        }

        CheckTerm modulusTerm = new(CheckSymbol.SectionModulus, modulus, CheckUnit.SectionModulus);
        if (member.HasAxial && section.Area is double area)
        {
            CombinedDemand sum = CombinedDemand.Of(member, 1 / area, 1 / area, 1 / modulus);
            yield return sum.Sum.Judge(combined, allowed) with
            {
                DemandBy = CheckFormula.AxialAndEdgeStress,
                Terms =
                [
                    new CheckTerm(CheckSymbol.Axial, sum.Axial, CheckUnit.Force),
                    new CheckTerm(CheckSymbol.Area, area, CheckUnit.Area),
                    new CheckTerm(CheckSymbol.Moment, sum.Moment, CheckUnit.Moment),
                    modulusTerm,
                ],
            };
            yield break;
        }

        CheckTerm moment = new(CheckSymbol.Moment, member.Moment.Value, CheckUnit.Moment);
        yield return member.Moment.Judge(check, allowed, 1 / modulus) with
        {
            DemandBy = CheckFormula.EdgeStress,
            Terms = [moment, modulusTerm],
        };
        if (member.HasAxial)
        {
            CheckTerm axial = new(CheckSymbol.Axial, member.Axial.Value, CheckUnit.Force);
            yield return member.Axial.Place(combined) with { Reason = NotJudgedReason.NoArea, Terms = [axial] };
        }
    }

    private static SectionCheck Shear(MemberSpans of, BasisDemands demands, MemberDemands? member, double allowed)
    {
        Section? section = of.Member.Section;
        SectionCheck check = Blank(CheckKind.Shear, of, demands) with { Limit = allowed };
        if (member is null)
        {
            return check with { Reason = demands.Obstacle };
        }

        CheckTerm shear = new(CheckSymbol.Shear, member.Shear.Value, CheckUnit.Force);
        return section?.PeakShearArea is double area
            ? member.Shear.Judge(check, allowed, 1 / area) with
            {
                DemandBy = CheckFormula.ShearStress,
                Terms = [shear, new CheckTerm(CheckSymbol.PeakShearArea, area, CheckUnit.Area)],
            }
            : member.Shear.Place(check) with
            {
                Reason = section is null ? NotJudgedReason.NoSection : NotJudgedReason.NoShape,
                Terms = [shear],
            };
    }

    private static SectionCheck Blank(CheckKind kind, MemberSpans of, BasisDemands demands) => new()
    {
        Kind = kind,
        Basis = demands.Basis,
        Clause = CheckClause.Given,
        Unit = CheckUnit.Stress,
        Span = demands.Obstacle is null ? null : of.Spans[0],
    };
}
