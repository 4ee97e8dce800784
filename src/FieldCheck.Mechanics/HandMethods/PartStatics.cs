using System.Collections.Immutable;
using System.Diagnostics;

namespace FieldCheck.Mechanics.HandMethods;

/// <summary>Works a part with two unknowns: moments about a point, then the vertical sum.</summary>
internal sealed class PartStatics
{
    private readonly BeamPart _part;
    private readonly HandBeam _beam;
    private readonly HandWriter _writer;
    private readonly ImmutableArray<PartAction> _actions;
    private readonly ImmutableArray<PartAction> _unknowns;

    private PartStatics(BeamPart part)
    {
        _part = part;
        _beam = part.Beam;
        _writer = part.Beam.Writer;
        _actions = part.Actions;
        _unknowns = part.Unknowns;
    }

    /// <summary>True: its two unknowns follow from its two equations.</summary>
    internal static bool CanWork(BeamPart part) =>
        part.Unknowns is [PartAction one, PartAction other] && !(one.IsCouple && other.IsCouple);

    /// <summary>Finds the two unknowns.</summary>
    /// <param name="part">The part; <see cref="CanWork"/> holds.</param>
    /// <param name="about">The point asked for [m]; null: the one that leaves fewest unknowns.</param>
    internal static void Work(BeamPart part, double? about) => new PartStatics(part).Work(about);

    private void Work(double? asked)
    {
        bool isWhole = _part.IsFirst && _part.IsLast;
        _writer.Begin(new HandStep.Part(_writer.Place(_part.From), _writer.Place(_part.To), isWhole));
        if (!isWhole)
        {
            _writer.Say(new HandRemark.PartUnknowns([.. _unknowns.Select(unknown => unknown.Name)]));
            SayCarriedOver();
            SayAtHinge();
        }

        bool isAsked = asked is double point && point >= _part.From && point <= _part.To;
        HandNumber about = isAsked ? _writer.Place(asked!.Value) : DefaultPoint();
        PartAction[] left = [.. _unknowns.Where(unknown => unknown.IsCouple || unknown.Place.Value != about.Value)];
        _writer.Say(new HandRemark.MomentsAbout(
            about, isAsked, [.. _unknowns.Except(left).Select(unknown => unknown.Name)]));
        ImmutableArray<HandFormula> terms = MomentSum.Terms(_writer, _actions, about);
        Dictionary<HandName, HandFormula> coefficients = [];
        foreach (PartAction unknown in _unknowns)
        {
            if (MomentSum.Coefficient(_writer, unknown, about) is HandFormula coefficient)
            {
                coefficients.Add(unknown.Name, coefficient);
            }
        }

        HandNumber together = _writer.Find(
            HandFormula.Total(terms, HandUnit.OfMoment), new HandActor.Together());
        if (coefficients.Count == 1)
        {
            PartAction first = left[0];
            Put(first, MomentGives(first.Name, coefficients[first.Name], together));
            VerticalGives(_unknowns.Single(unknown => unknown != first));
        }
        else if (_unknowns.Any(unknown => unknown.IsCouple))
        {
            WithCouple(coefficients, together);
        }
        else
        {
            BothTogether(coefficients, together);
        }
    }

    /// <summary>The support or hinge that most unknowns pass through; of several the leftmost.</summary>
    private HandNumber DefaultPoint() => _unknowns
        .Where(unknown => !unknown.IsCouple)
        .Select(unknown => unknown.Place)
        .MinBy(place => (_unknowns.Count(unknown => unknown.IsCouple || unknown.Place.Value != place.Value), place.Value))!;

    private void SayCarriedOver()
    {
        foreach (PartAction action in _actions)
        {
            if (action is { Actor: HandActor.Named { Name.Role: HandRole.HingeForce }, Number: not null })
            {
                _writer.Say(new HandRemark.CarriesOver(action.Name.Index, action.IsPositive));
            }
        }
    }

    private void SayAtHinge()
    {
        HandActor[] there =
        [
            .. _actions.Where(action => action is { IsCouple: false, Actor: HandActor.OfLoad }
                    && !_part.IsLast && action.Place.Value == _part.To && IsPoint(action))
                .Select(action => action.Actor),
        ];
        if (there.Length > 0)
        {
            _writer.Say(new HandRemark.StandsAtHinge(_part.Index, [.. there]));
        }
    }

    private bool IsPoint(PartAction action) =>
        _beam.Loads.Forces.Any(force => force.Spread is null && force.Actor == action.Actor);

    private HandNumber MomentGives(HandName name, HandFormula coefficient, HandNumber together)
    {
        _writer.Add(new HandLine.Balances([HandTerm.Of(coefficient, name)], together));
        (HandFormula known, HandFormula arm) = coefficient is HandFormula.Minus turned
            ? (together, turned.Formula)
            : (-(HandFormula)together, coefficient);
        return _writer.Find(arm is HandFormula.Known { Number: HandNumber one } && one == HandNumber.One
            ? known
            : known / arm, name);
    }

    private void VerticalGives(PartAction unknown)
    {
        _writer.Say(new HandRemark.VerticalSum(unknown.Name));
        HandFormula known = HandFormula.Total(
            Across(_actions.Where(action => action.Actor != unknown.Actor))
                .Select(term => -term)
                .OrderBy(term => term is HandFormula.Minus),
            HandUnit.OfForce);
        Debug.Assert(unknown.IsPositive, "A force that is not known yet is taken as up.");
        Put(unknown, _writer.Find(known, unknown.Name));
    }

    private IEnumerable<HandFormula> Across(IEnumerable<PartAction> actions) => actions
        .Select(action => _unknowns.Contains(action) ? action with { Number = _beam.Found(action.Name) } : action)
        .Where(action => !action.IsCouple && action.Number is not null)
        .Select(action => action.Signed);

    /// <summary>A force and a couple: the vertical sum has one unknown, and gives it first.</summary>
    private void WithCouple(Dictionary<HandName, HandFormula> coefficients, HandNumber together)
    {
        PartAction couple = _unknowns.Single(unknown => unknown.IsCouple);
        PartAction force = _unknowns.Single(unknown => !unknown.IsCouple);
        VerticalGives(force);
        HandNumber found = _beam.Found(force.Name)!;
        HandFormula turning = coefficients[force.Name] * found;
        Put(couple, _writer.Find(-(HandFormula)together - turning, couple.Name));
    }

    private void BothTogether(Dictionary<HandName, HandFormula> coefficients, HandNumber together)
    {
        _writer.Say(new HandRemark.TwoRows());
        HandNumber down = _writer.Find(
            HandFormula.Total(Across(_actions).Select(term => -term), HandUnit.OfForce), new HandActor.RightSide());
        HandEquation vertical = new([.. _unknowns.Select(unknown => new HandTerm(HandNumber.One, unknown.Name))], down);
        HandEquation moments = new(
            [.. _unknowns.Select(unknown => HandTerm.Of(coefficients[unknown.Name], unknown.Name))],
            new HandNumber(-(HandFormula)together) { IsInline = true });
        _writer.Add(new HandLine.Sets(vertical, 1));
        _writer.Add(new HandLine.Sets(moments, 2));
        Dictionary<HandName, HandNumber> found = Substitution.Solve(_writer, [vertical, moments]);
        foreach (PartAction unknown in _unknowns)
        {
            Put(unknown, found[unknown.Name]);
        }
    }

    private void Put(PartAction unknown, HandNumber number) =>
        _beam.Keep(unknown.Name, number, liftsLeft: unknown.Name.Index == _part.Index);
}
