using System.Collections.Immutable;

namespace FieldCheck.Mechanics.Strength;

/// <summary>
/// Moment and force along a member, each over what it carries of that alone, as a plain sum. A force that presses is only judged
/// where it is too much: buckling is left out.
/// </summary>
internal static class RuleSum
{
    /// <summary>The check of a member that a force acts along.</summary>
    internal static SectionCheck Of(
        Member member, ImmutableArray<Resistance> resistances, IStrengthRule rule, MemberDemands demands)
    {
        Resistance? tension = demands.HasTension ? rule.Axial(member, isTension: true) : null;
        Resistance? compression = demands.HasCompression ? rule.Axial(member, isTension: false) : null;
        Resistance[] bending =
            [.. resistances.Where(one => one.Kind is CheckKind.Bending or CheckKind.LateralStability)];
        Resistance[] needed = [.. bending, .. new[] { tension, compression }.OfType<Resistance>()];
        bool isWhole = bending.Length > 0
            && (tension is not null || !demands.HasTension)
            && (compression is not null || !demands.HasCompression);
        Resistance? lacking = needed.FirstOrDefault(one => one.Limit is null || one.Reason is not null);
        SectionCheck check = new()
        {
            Kind = CheckKind.BendingAndAxial,
            Basis = rule.Basis,
            Clause = (tension ?? compression ?? bending.FirstOrDefault())?.Clause ?? CheckClause.Given,
            Unit = CheckUnit.Number,
            Limit = 1,
        };
        if (!isWhole || lacking is not null)
        {
            return demands.Axial.Place(check) with
            {
                Reason = lacking?.Reason ?? NotJudgedReason.NoLimit,
                Missing = lacking?.Missing,
                Terms = [new CheckTerm(CheckSymbol.Axial, demands.Axial.Value, CheckUnit.Force)],
            };
        }

        CombinedDemand sum = CombinedDemand.Of(demands, Per(tension), Per(compression), bending.Max(Per));
        Resistance along = (tension ?? compression)!;
        SectionCheck judged = sum.Sum.Judge(check, 1) with
        {
            DemandBy = CheckFormula.SumOfShares,
            Factors = along.Factors,
            Terms =
            [
                Term.Force(CheckSymbol.Axial, sum.Axial),
                .. along.Terms,
                Term.Force(CheckSymbol.AxialAlone, along.Limit!.Value, along.LimitBy),
                Term.Moment(CheckSymbol.Moment, sum.Moment),
                Term.Moment(CheckSymbol.MomentAlone, 1 / bending.Max(Per)),
            ],
        };
        // What is too much without buckling is too much with it; what is within may still buckle.
        return demands.HasCompression && judged.Verdict == CheckVerdict.Ok
            ? demands.Compression.Place(check) with
            {
                Reason = NotJudgedReason.MayBuckle,
                Terms = [new CheckTerm(CheckSymbol.Axial, demands.Compression.Value, CheckUnit.Force)],
            }
            : judged;
    }

    /// <summary>How much of its limit an action of one uses up.</summary>
    private static double Per(Resistance? resistance) => resistance is null ? 0 : resistance.PerAction / resistance.Limit!.Value;
}
