using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Strength;

/// <summary>What the push of each support does to the stick, to what it bears on, and under the pad.</summary>
internal sealed class SeatChecks
{
    /// <summary>A push below this share of the greatest reaction is rounding [–].</summary>
    private const double Rounding = 1e-9;

    private readonly StrengthProblem _problem;
    private readonly BasisDemands _demands;
    private readonly SeatRule? _rule;
    private readonly Bays _bays;
    private readonly double _nothing;

    internal SeatChecks(StrengthProblem problem, BasisDemands demands, IStrengthRule? rule, Bays bays)
    {
        _problem = problem;
        _demands = demands;
        _bays = bays;
        _rule = rule?.Basis == demands.Basis ? new SeatRule(problem, rule, bays) : null;
        _nothing = demands.Obstacle is not null ? 0 : Rounding * demands.Envelope.Reactions
            .Select(one => Math.Max(Math.Abs(one.Vertical.Max.Value), Math.Abs(one.Vertical.Min.Value)))
            .DefaultIfEmpty(0)
            .Max();
    }

    /// <summary>The checks at one support; none where it never pushes the beam up.</summary>
    internal IEnumerable<SectionCheck> At(int support)
    {
        Support place = _problem.Beam.Model.Supports[support];
        if (place.Across is Restraint.None)
        {
            return [];
        }

        (Member Member, int Span)[] members =
            [.. MemberSpans.At(place.Position, _problem.Members, _problem.Beam.Model)];
        if (_demands.Obstacle is NotJudgedReason obstacle)
        {
            return Asked(support, members, 0).Select(check => check with { Demand = null, Reason = obstacle, Terms = [] });
        }

        Governed vertical = _demands.Envelope.Reactions[support].Vertical.Max;
        if (!(vertical.Value > _nothing))
        {
            return [];
        }

        // A sloped surface is pushed square to it, and held by nothing along it.
        double push = vertical.Value / Math.Cos(place.SurfaceSlope);
        SeatPlace stick = SeatPlace.Of(_problem.Beam.Model, _bays, place.Position);
        NotJudgedReason? turned = Turns(support, vertical.Value) ? NotJudgedReason.MomentOnSeat : null;
        NotJudgedReason? shared = stick.HasHingeWithin(_problem.Seats[support].Length) ? NotJudgedReason.HingeOnSeat : null;
        return
            from check in Asked(support, members, push).Concat(_rule?.At(support, members, push) ?? [])
            let uneven = turned ?? (check.Kind == CheckKind.PadPressure ? null : shared)
            select check with
            {
                Position = place.Position,
                Situation = vertical.Situation,
                Certainty = _demands.Envelope.ReactionCertainty,
                Demand = uneven is null ? check.Demand : null,
                Reason = uneven ?? check.Reason,
                Missing = uneven is null ? check.Missing : null,
                // A length is enough only where the push spreads over it evenly, and one stick has it all.
                Terms =
                [
                    .. check.Terms.Where(term => term.Symbol != CheckSymbol.NeededBearingLength
                        || (uneven is null && term.Value > 0 && !stick.HasHingeWithin(term.Value))),
                ],
            };
    }

    /// <summary>Whether a support turns the beam in any situation, beyond rounding.</summary>
    private bool Turns(int support, double push)
    {
        GovernedRange turn = _demands.Envelope.Reactions[support].Moment;
        return _problem.Beam.Model.Supports[support].Rotation is not Restraint.None
            && Math.Max(turn.Max.Value, -turn.Min.Value) > Rounding * push * _problem.Beam.Model.Length;
    }

    private IEnumerable<SectionCheck> Asked(int support, (Member Member, int Span)[] members, double push)
    {
        Seat seat = _problem.Seats[support];
        foreach ((Member member, int span) in members)
        {
            if (GivenStresses.Of(member.Material, _demands.Basis)?.Bearing is double allowed)
            {
                yield return Bearing(support, [member], push, allowed) with { Span = span };
            }
        }

        if (_demands.Basis != CombinationBasis.Service)
        {
            yield break;
        }

        if (seat.Allowable is double ofSeat)
        {
            yield return Bearing(support, [.. members.Select(one => one.Member)], push, ofSeat);
        }

        if (seat.AllowablePressure is double pressure)
        {
            yield return Pad(support, seat, push, pressure);
        }
    }

    /// <summary>The push over the area of bearing; of several sticks the narrowest counts.</summary>
    private SectionCheck Bearing(int support, Member[] members, double push, double allowed)
    {
        Seat seat = _problem.Seats[support];
        double?[] widths = [.. members.Select(one => one.Section is null ? null : BearingWidth.Of(one.Section))];
        double? width = widths.Any(one => one is null) ? null : widths.Min();
        NotJudgedReason? reason = members.Any(one => one.Section is null) ? NotJudgedReason.NoSection
            : width is null ? NotJudgedReason.NoBearingWidth
            : seat.Length is null ? NotJudgedReason.NoBearingLength
            : null;
        return Blank(CheckKind.Bearing, support) with
        {
            Limit = allowed,
            Demand = push / (width * seat.Length),
            DemandBy = CheckFormula.BearingStress,
            Reason = reason,
            Terms =
            [
                new CheckTerm(CheckSymbol.Reaction, push, CheckUnit.Force),
                .. TermOf(CheckSymbol.BearingWidth, width),
                .. TermOf(CheckSymbol.BearingLength, seat.Length),
                .. TermOf(CheckSymbol.NeededBearingLength, push / (width * allowed)),
            ],
        };
    }

    private SectionCheck Pad(int support, Seat seat, double push, double allowed) =>
        Blank(CheckKind.PadPressure, support) with
        {
            Limit = allowed,
            Demand = push / seat.PadArea,
            DemandBy = CheckFormula.PadPressure,
            Reason = seat.PadArea is null ? NotJudgedReason.NoPad : null,
            Terms =
            [
                new CheckTerm(CheckSymbol.Reaction, push, CheckUnit.Force),
                .. seat.PadArea is double area
                    ? [new CheckTerm(CheckSymbol.PadArea, area, CheckUnit.Area)]
                    : Array.Empty<CheckTerm>(),
            ],
        };

    private SectionCheck Blank(CheckKind kind, int support) => new()
    {
        Kind = kind,
        Basis = _demands.Basis,
        Clause = CheckClause.Given,
        Unit = CheckUnit.Stress,
        Support = support,
    };

    /// <summary>A length among the numbers of a check, where it is known.</summary>
    internal static CheckTerm[] TermOf(CheckSymbol symbol, double? length) =>
        length is double known ? [new CheckTerm(symbol, known, CheckUnit.Length)] : [];
}
