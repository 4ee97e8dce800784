using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Strength;

/// <summary>What a rule says of the stick over a support.</summary>
internal sealed class SeatRule(StrengthProblem problem, IStrengthRule rule, Bays bays)
{
    /// <summary>The checks at one support that pushes the beam up.</summary>
    /// <param name="support">Index of the support.</param>
    /// <param name="members">The members over it, each with its span.</param>
    /// <param name="push">The greatest push [N].</param>
    internal IEnumerable<SectionCheck> At(int support, (Member Member, int Span)[] members, double push)
    {
        SeatPlace place = PlaceOf(problem.Beam.Model, problem.Beam.Model.Supports[support].Position);
        return
            from one in members
            from resistance in rule.At(one.Member, problem.Seats[support], place)
            select Judge(resistance, push) with { Span = one.Span, Support = support };
    }

    private SectionCheck Judge(Resistance resistance, double push)
    {
        bool isJudged = resistance.Limit is not null && resistance.Reason is null;
        return RuleChecks.Blank(resistance, rule) with
        {
            Demand = isJudged ? push * resistance.PerAction : null,
            Limit = resistance.Limit,
            Reason = isJudged ? null : resistance.Reason ?? NotJudgedReason.NoLimit,
            Terms =
            [
                new CheckTerm(CheckSymbol.Reaction, push, CheckUnit.Force),
                .. resistance.Terms,
                .. SeatChecks.TermOf(CheckSymbol.NeededBearingLength, resistance.LengthFor?.Invoke(push)),
            ],
        };
    }

    private SeatPlace PlaceOf(BeamModel model, double at) => new(
        at,
        Math.Min(at, model.Length - at),
        bays.Between
            .Where(bay => bay.From == at || bay.To == at)
            .Select(bay => bay.To - bay.From)
            .DefaultIfEmpty(double.PositiveInfinity)
            .Min());
}
