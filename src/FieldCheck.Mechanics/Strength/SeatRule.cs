using FieldCheck.Mechanics.Envelopes;

namespace FieldCheck.Mechanics.Strength;

/// <summary>What a rule says of the stick over a support.</summary>
internal sealed class SeatRule(StrengthProblem problem, IStrengthRule rule, Bays bays)
{
    /// <summary>A length that meets another but for this share of it is as long [–].</summary>
    private const double Rounding = 1e-9;

    /// <summary>The checks at one support that pushes the beam up.</summary>
    /// <param name="support">Index of the support.</param>
    /// <param name="members">The members over it, each with its span.</param>
    /// <param name="push">The greatest push [N].</param>
    internal IEnumerable<SectionCheck> At(int support, (Member Member, int Span)[] members, double push)
    {
        Seat seat = problem.Seats[support];
        SeatPlace place = SeatPlace.Of(problem.Beam.Model, bays, problem.Beam.Model.Supports[support].Position);
        return
            from one in members
            from resistance in rule.At(one.Member, seat, place)
            select Judge(resistance, push, seat) with { Span = one.Span, Support = support };
    }

    private SectionCheck Judge(Resistance resistance, double push, Seat seat)
    {
        bool isJudged = resistance.Limit is not null && resistance.Reason is null;
        SectionCheck check = RuleChecks.Blank(resistance, rule) with
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

        // What is over stays over; what seems enough is not, where the formula does not hold for so short a bearing.
        bool isTooShort = seat.Length < resistance.LeastLength * (1 - Rounding) && check.Verdict == CheckVerdict.Ok;
        return isTooShort ? check with { Demand = null, Reason = NotJudgedReason.BearingTooShort } : check;
    }
}
