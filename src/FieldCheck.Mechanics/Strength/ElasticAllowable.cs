using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Strength;

/// <summary>Shares of the yield stress on the elastic section, for service combinations; common practice, no source.</summary>
/// <remarks>Told in docs/methods.md, "Checks: steel".</remarks>
internal sealed class ElasticAllowable : IStrengthRule
{
    private const double EdgeShare = 0.60;
    private const double ShearShare = 0.40;
    private const double AxialShare = 0.60;

    public CombinationBasis Basis => CombinationBasis.Service;

    public ImmutableArray<Resistance> Of(Member member, MemberActions actions) =>
    [
        Stress(
            member, CheckKind.Bending, CheckClause.ElasticBending, EdgeShare,
            CheckSymbol.SectionModulus, CheckUnit.SectionModulus, member.Section?.SectionModulus,
            NotJudgedReason.NoSectionModulus),
        Stress(
            member, CheckKind.Shear, CheckClause.ElasticShear, ShearShare,
            CheckSymbol.PeakShearArea, CheckUnit.Area, member.Section?.PeakShearArea, NotJudgedReason.NoShape),
        .. Lateral(member),
    ];

    public ImmutableArray<Resistance> At(Member member, Seat seat, SeatPlace place) => [];

    public Resistance? Axial(Member member, bool isTension)
    {
        Resistance blank = new()
        {
            Kind = CheckKind.BendingAndAxial,
            Clause = CheckClause.ElasticAxial,
            Unit = CheckUnit.Force,
        };
        return Missing(member) is NotJudgedReason reason ? blank with { Reason = reason }
            : member is { Material.Yield: double yield, Section.Area: double area } ? blank with
            {
                Limit = AxialShare * yield * area,
                LimitBy = CheckFormula.AxialShareOfYield,
                Terms = [Term.Stress(CheckSymbol.Yield, yield), Term.Area(CheckSymbol.Area, area)],
            }
            : blank with { Reason = NotJudgedReason.NoArea };
    }

    private static Resistance Stress(
        Member member,
        CheckKind kind,
        CheckClause clause,
        double share,
        CheckSymbol symbol,
        CheckUnit unit,
        double? figure,
        NotJudgedReason without)
    {
        Resistance blank = new() { Kind = kind, Clause = clause, Unit = CheckUnit.Stress };
        return Missing(member) is NotJudgedReason reason ? blank with { Reason = reason }
            : member.Material?.Yield is double yield && figure is double size ? blank with
            {
                Limit = share * yield,
                LimitBy = kind == CheckKind.Shear ? CheckFormula.ShearShareOfYield : CheckFormula.EdgeShareOfYield,
                PerAction = 1 / size,
                DemandBy = kind == CheckKind.Shear ? CheckFormula.ShearStress : CheckFormula.EdgeStress,
                Terms = [new CheckTerm(symbol, size, unit), Term.Stress(CheckSymbol.Yield, yield)],
            }
            : blank with { Reason = without };
    }

    /// <summary>Nothing limits sideways buckling here, so a member that may buckle so must be held all along.</summary>
    private static ImmutableArray<Resistance> Lateral(Member member) =>
        member.Section is null || member.Lateral is LateralSupport.Braced || IsStiffSideways(member.Section)
            ? []
            :
            [
                new Resistance
                {
                    Kind = CheckKind.LateralStability,
                    Clause = CheckClause.ElasticBending,
                    Unit = CheckUnit.Stress,
                    Reason = member.Lateral is null
                        ? NotJudgedReason.NoLateralSupport
                        : NotJudgedReason.LateralNotInRules,
                },
            ];

    /// <summary>A tube so deep that it may lean before it yields is at least three times as deep as wide.</summary>
    private static bool IsStiffSideways(Section section) => section.Shape switch
    {
        null => false,
        SectionShape.RectangularTube tube => TubeSides.Of(tube, section.IsFlat) is var sides
            && sides.Depth <= 3 * sides.Width,
        SectionShape shape => !LateralBuckling.IsPossible(shape, section.IsFlat),
    };

    private static NotJudgedReason? Missing(Member member) => member switch
    {
        { Section: null } => NotJudgedReason.NoSection,
        { Material: null } => NotJudgedReason.NoMaterial,
        { Material.Yield: null } => NotJudgedReason.NoYield,
        _ => null,
    };
}
