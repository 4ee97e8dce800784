using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.HandMethods;

/// <summary>Puts the reactions back: moments of the whole beam about another point, forces across and along.</summary>
internal static class HandProof
{
    /// <summary>Writes the proof.</summary>
    /// <param name="beam">The beam, all reactions found.</param>
    /// <param name="used">The point that moments were taken about [m]; null: the one that left fewest unknowns.</param>
    /// <param name="isAboutUsed">True: nothing was found from moments about that point, so the proof is about it.</param>
    internal static void Write(HandBeam beam, double? used, bool isAboutUsed = false)
    {
        HandWriter writer = beam.Writer;
        HandNumber about = writer.Place(isAboutUsed && used is double asked ? asked : OtherPoint(beam, used));
        PartAction[] actions = [.. Actions(beam)];
        writer.Begin(new HandStep.Proof(about));
        writer.Say(new HandRemark.MomentsClose(about));
        ImmutableArray<HandFormula> terms = MomentSum.Terms(writer, actions, about);
        Close(writer, terms, HandUnit.OfMoment);
        writer.Say(new HandRemark.ForcesClose(IsAlong: false));
        Close(writer, [.. actions.Where(action => !action.IsCouple).Select(action => action.Signed)], HandUnit.OfForce);
        HandFormula[] along =
        [
            .. beam.Horizontal.Where(number => number is { Value: not 0 }).Select(number => (HandFormula)number!),
            .. beam.Loads.Forces.Where(force => !force.IsAcross).Select(force => force.Signed),
        ];
        if (along.Length > 0)
        {
            writer.Say(new HandRemark.ForcesClose(IsAlong: true));
            Close(writer, along, HandUnit.OfForce);
        }
    }

    private static void Close(HandWriter writer, IReadOnlyList<HandFormula> terms, HandUnit unit)
    {
        double scale = terms.Sum(term => Math.Abs(term.Evaluate(number => number.Value)));
        writer.Add(new HandLine.Closes(new HandNumber(HandFormula.Total(terms, unit)), scale));
    }

    private static IEnumerable<PartAction> Actions(HandBeam beam)
    {
        for (int i = 0; i < beam.Model.Supports.Length; i++)
        {
            HandNumber place = beam.Writer.Place(beam.Model.Supports[i].Position);
            if (beam.Vertical[i] is HandNumber vertical)
            {
                yield return PartAction.Force(new HandName(HandRole.Vertical, i), vertical, true, place);
            }

            if (beam.Couple[i] is HandNumber couple)
            {
                yield return PartAction.Turn(new HandName(HandRole.Couple, i), couple, place);
            }
        }

        foreach (HandForce force in beam.Loads.Forces.Where(force => force.IsAcross))
        {
            yield return PartAction.Load(force);
        }

        foreach (HandCouple couple in beam.Loads.Couples)
        {
            yield return PartAction.Load(couple);
        }
    }

    /// <summary>The rightmost support that was not used before; else an end that was not.</summary>
    private static double OtherPoint(HandBeam beam, double? used)
    {
        Support[] supports =
            [.. beam.Model.Supports.Where((support, i) => beam.Touching[i] && support.Across is not Restraint.None)];
        double before = used ?? (supports is [Support first, ..] ? first.Position : 0);
        return supports.Reverse().Select(support => support.Position)
            .Append(beam.Model.Length)
            .Append(0)
            .First(position => position != before);
    }
}
